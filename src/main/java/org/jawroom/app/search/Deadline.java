package org.jawroom.app.search;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * The time limit of a run.
 *
 * @param left milliseconds left, 0 or less after the limit; {@link Long#MAX_VALUE}: no limit
 * @param reserve milliseconds before the limit at which a solver stops by itself, so that its best
 *     result so far is not lost
 */
public record Deadline(LongSupplier left, long reserve) {
  private static final long MOST_RESERVE = 3_000;
  private static final int PARTS = 10;

  /** {@code seconds} from now; no limit if empty. */
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

  /** Milliseconds left for a solver. */
  long toSolve() {
    return left.getAsLong() - reserve;
  }
}
