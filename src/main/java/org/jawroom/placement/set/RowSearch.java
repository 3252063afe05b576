package org.jawroom.placement.set;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;

/**
 * Finds where given numbers of kinds of vises stand in a row along the slots with the largest least
 * of their margins and of the gaps between neighbours less the spacing.
 *
 * <p>As that least grows, the existence of a row changes from yes to no once, and all bounds are
 * whole numbers: bisection is exact.
 */
final class RowSearch {
  private final List<Footing> footings;
  private final int[] counts;
  private final long spacing;

  /**
   * A search.
   *
   * @param footings in order of preference
   * @param counts of each kind, in the order of the rows
   */
  RowSearch(List<Footing> footings, int[] counts, long spacing) {
    this.footings = List.copyOf(footings);
    this.counts = counts.clone();
    this.spacing = spacing;
  }

  /** A vise of a row and the position of its origin along the slots. */
  record Stand(Footing footing, long position) {}

  /**
   * A row from left to right (front to back for slots along y).
   *
   * @param least of the margins and of the gaps less the spacing; {@link Length#ENDLESS} for a
   *     single vise for which nothing listed can be hit
   */
  record Row(long least, List<Stand> stands) {
    Row {
      stands = List.copyOf(stands);
    }
  }

  /** Whether the vises stand in a row at all. */
  boolean exists() {
    return rows(0).exist();
  }

  /** The best row; of equally good ones the one whose kinds come first in the order of the rows. */
  Optional<Row> best() {
    if (!exists()) {
      return Optional.empty();
    }
    long yes = 0;
    long no = most() + 1;
    while (no - yes > 1) {
      long middle = yes + (no - yes) / 2;
      if (rows(middle).exist()) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return Optional.of(new Row(yes, rows(yes).first()));
  }

  private RowsOfLeast rows(long least) {
    return new RowsOfLeast(footings, counts, spacing, least);
  }

  /** An upper bound on the least margin of a row. */
  private long most() {
    long most = Length.ENDLESS;
    for (int kind = 0; kind < counts.length; kind++) {
      long roomiest = 0;
      for (Footing footing : footings) {
        if (footing.kind() == kind) {
          roomiest = Math.max(roomiest, footing.space().bound());
        }
      }
      most = Math.min(most, roomiest);
    }
    return most;
  }
}
