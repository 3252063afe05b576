package org.jawroom.plan.program;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.concurrent.atomic.AtomicLong;
import org.ojalgo.netio.BasicLogger;

/**
 * Counts what the solver writes to the error output when its arithmetic fails ("obviously
 * infeasible value"), and keeps it off the screen. An answer given with such a complaint proves
 * nothing.
 */
final class Complaints {

  private static final AtomicLong WRITTEN = new AtomicLong();

  static {
    PrintStream screen = System.err;
    System.setErr(new PrintStream(new Counter(), true));
    try {
      BasicLogger.error(); // captures the error output on first use and keeps it
    } finally {
      System.setErr(screen);
    }
  }

  private Complaints() {}

  /** The number of bytes written so far. */
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
