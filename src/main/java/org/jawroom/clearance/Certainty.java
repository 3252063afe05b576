package org.jawroom.clearance;

import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Dimension;

/**
 * How readings that are known within bounds, or not at all, are taken; see section 9 of the model.
 * Where every reading is known, both come to the same.
 */
public enum Certainty {
  /**
   * Everything reaches as far as any value of the open readings takes it, so that what is clear is
   * clear for every value.
   */
  AT_WORST,
  /**
   * Everything reaches only as far as all values take it, and what needs a blank is left out, so
   * that what is not clear is not clear for any value.
   */
  AT_BEST;

  /**
   * Farther than anything on a machine can be, yet far from {@link Length#ENDLESS}: a part that
   * reaches without end is still a part.
   */
  public static final long FAR = 1_000 * Length.LARGEST;

  /**
   * The values of a reading that is 0 or more, ends beyond all machines drawn in to {@link #FAR}.
   */
  public static Interval sizes(Dimension dimension) {
    return bounded(dimension.values(0));
  }

  /** The values of a reading that may be negative. */
  public static Interval positions(Dimension dimension) {
    return bounded(dimension.values(-Length.ENDLESS));
  }

  /** Whether a length has an end, rather than that of a reading that has none. */
  public static boolean hasEnd(long length) {
    return Math.abs(length) < FAR / 4;
  }

  private static Interval bounded(Interval values) {
    return Interval.of(Math.max(-FAR, values.lo()), Math.min(FAR, values.hi()));
  }

  /** A box's ends along one axis, each somewhere in an interval. */
  public Ends ends(Interval low, Interval high) {
    return this == AT_WORST ? new Ends(low.lo(), high.hi()) : new Ends(low.hi(), high.lo());
  }

  /** The size to take of something that needs to be small, as a bolt's box. */
  public long size(Interval values) {
    return this == AT_WORST ? values.hi() : values.lo();
  }
}
