package org.jawroom.cli;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** How much of the time given is left. */
final class Deadline {
  private Deadline() {}

  /** Milliseconds left of {@code seconds} from now on; without them, all the time in the world. */
  static LongSupplier in(Optional<Long> seconds) {
    if (seconds.isEmpty()) {
      return () -> Long.MAX_VALUE;
    }
    long start = System.nanoTime();
    long all = TimeUnit.SECONDS.toMillis(seconds.get());
    return () -> all - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }
}
