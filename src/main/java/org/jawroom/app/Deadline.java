package org.jawroom.app;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * When the work must be over.
 *
 * @param left milliseconds until then, 0 or less from then on; {@link Long#MAX_VALUE}: no limit
 * @param reserve milliseconds before it at which a solver is to stop by itself, so that what it has
 *     found by then is not lost
 */
public record Deadline(LongSupplier left, long reserve) {
  private static final long MOST_RESERVE = 3_000;
  private static final int PARTS = 10;

  /** {@code seconds} from now on; without them, never. */
  public static Deadline in(Optional<Long> seconds) {
    if (seconds.isEmpty()) {
      return new Deadline(() -> Long.MAX_VALUE, 0);
    }
    long start = System.nanoTime();
    long all = TimeUnit.SECONDS.toMillis(seconds.get());
    return new Deadline(
        () -> all - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start),
        Math.min(all / PARTS, MOST_RESERVE));
  }

  boolean isLimit() {
    return left.getAsLong() != Long.MAX_VALUE;
  }

  /** Milliseconds left to a solver. */
  long toSolve() {
    return left.getAsLong() - reserve;
  }
}
