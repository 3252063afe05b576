package org.jawroom.plan;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.concurrent.atomic.AtomicLong;
import org.ojalgo.netio.BasicLogger;

/**
 * What the solver writes to the error output when its arithmetic has gone astray ("obviously
 * infeasible value"): kept from the screen and counted, for then its word is no proof.
 */
final class Complaints {

  private static final AtomicLong WRITTEN = new AtomicLong();

  static {
    PrintStream screen = System.err;
    System.setErr(new PrintStream(new Counter(), true));
    try {
      BasicLogger.error(); // it takes over the error output when first touched, and keeps it
    } finally {
      System.setErr(screen);
    }
  }

  private Complaints() {}

  /** How much has been written so far. */
  static long written() {
    return WRITTEN.get();
  }

  private static final class Counter extends OutputStream {
    @Override
    public void write(int one) {
      WRITTEN.incrementAndGet();
    }
  }
}
