package org.jawroom.geometry;

import java.util.OptionalLong;
import java.util.function.LongPredicate;

/** Bisects a monotone predicate over whole multiples of 0.01 mm. */
public final class MonotoneSearch {

  /** Amounts are reported in steps of 0.01 mm. */
  public static final long GRAIN = Length.MM / 100;

  private MonotoneSearch() {}

  /**
   * The least multiple in ({@code lo}, {@code hi}] that serves; empty if not even the greatest
   * does.
   *
   * @param serves false up to some amount and true from there on
   */
  public static OptionalLong from(long lo, long hi, LongPredicate serves) {
    long below = Length.floorTo(lo, GRAIN) / GRAIN;
    long above = Length.floorTo(hi, GRAIN) / GRAIN;
    if (above <= below || !serves.test(above * GRAIN)) {
      return OptionalLong.empty();
    }
    while (above - below > 1) {
      long middle = below + (above - below) / 2;
      if (serves.test(middle * GRAIN)) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return OptionalLong.of(above * GRAIN);
  }

  /**
   * The greatest multiple in [{@code lo}, {@code hi}) that serves; empty if not even {@code lo}
   * does.
   *
   * @param serves true up to some amount and false from there on
   */
  public static OptionalLong downFrom(long hi, long lo, LongPredicate serves) {
    OptionalLong least = from(-hi, -lo, amount -> serves.test(-amount));
    return least.isPresent() ? OptionalLong.of(-least.getAsLong()) : OptionalLong.empty();
  }
}
