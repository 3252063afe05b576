package org.jawroom.shop.vise;

import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * A named set of bolts, all of which must be used.
 *
 * @param own whether it is the row's own pair, the mount {@link #BASE_BOLTS}, whose blanks are
 *     columns of {@code vises}; else it comes from rows of {@code mounts}
 */
public record Mount(String name, boolean own, List<Bolt> bolts) {

  /** The name of the mount built from a vise row's own columns. */
  public static final String BASE_BOLTS = "base bolts";

  /** The name of the mount of strap clamps. */
  public static final String CLAMPS = "clamps";

  public Mount {
    Require.named("mount", name);
    bolts = List.copyOf(bolts);
    if (bolts.isEmpty()) {
      throw new IllegalArgumentException("mount " + name + " has no bolts");
    }
  }

  /** Whether the place or the size of one of its holes is open. */
  public boolean isOpen() {
    return bolts.stream()
        .anyMatch(
            bolt ->
                bolt.u().isOpen()
                    || bolt.v().isOpen()
                    || bolt.holeU().isOpen()
                    || bolt.holeV().isOpen());
  }

  /** Whether a blank leaves the place or the size of one of its holes open. */
  public boolean hasBlank() {
    for (Bolt bolt : bolts) {
      if (bolt.u().isBlank()
          || bolt.v().isBlank()
          || bolt.holeU().isBlank()
          || bolt.holeV().isBlank()) {
        return true;
      }
    }
    return false;
  }

  /**
   * A vise's own pair of bolts, half of {@code spacing} to either side of its middle; any of these
   * may be blank.
   *
   * @param u of both centres
   * @param spacing between the centres, across the vise
   * @param holeU each hole over all along u, {@code holeV} along v
   */
  public static Mount baseBolts(Dimension u, Dimension spacing, Dimension holeU, Dimension holeV) {
    return new Mount(
        BASE_BOLTS,
        true,
        List.of(
            new Bolt(u, half(spacing, -1), holeU, holeV),
            new Bolt(u, half(spacing, 1), holeU, holeV)));
  }

  /** A spacing is whole nanometres, so half of it is whole half-nanometres. */
  private static Dimension half(Dimension spacing, int sign) {
    if (spacing.isBlank()) {
      return Dimension.BLANK;
    }
    Interval whole = spacing.values(0);
    long lo = Math.min(sign * whole.lo() / 2, sign * whole.hi() / 2);
    long hi = Math.max(sign * whole.lo() / 2, sign * whole.hi() / 2);
    return Dimension.within(lo, hi);
  }

  /** The same mount under another name. */
  public Mount withName(String name) {
    return new Mount(name, own, bolts);
  }
}
