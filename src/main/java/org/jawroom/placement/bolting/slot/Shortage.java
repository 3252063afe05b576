package org.jawroom.placement.bolting.slot;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;

/**
 * How far a mount that holds nowhere is from holding.
 *
 * @param along whether the reach of the slots is missed rather than their centre lines
 * @param anchor index of the anchor that fails
 * @param by the additional play it needs, half-nanometres
 */
public record Shortage(boolean along, int anchor, long by) {

  /** The least shortage over all combinations of slots; empty if the anchors line up. */
  public static Optional<Shortage> of(Slotted slotted, Anchors anchors, Orientation turn) {
    Shortage along = along(slotted, anchors, turn);
    if (along.by > 0) {
      return Optional.of(along);
    }
    // At a given position each anchor chooses its slot independently. At an optimal position some
    // anchor is at the end of its play in some slot, so trying those positions finds the least
    // shortage.
    Shortage least = null;
    for (Anchor first : anchors.all()) {
      for (Interval held : slotted.acrossInEach(first, turn)) {
        for (long at : new long[] {held.lo(), held.hi()}) {
          Shortage here = across(at, slotted, anchors, turn);
          if (least == null || here.by < least.by) {
            least = here;
          }
        }
      }
    }
    return Optional.ofNullable(least).filter(shortage -> shortage.by > 0);
  }

  private static Shortage across(long at, Slotted slotted, Anchors anchors, Orientation turn) {
    Shortage worst = new Shortage(false, 0, 0);
    List<Anchor> all = anchors.all();
    for (int i = 0; i < all.size(); i++) {
      long by = Long.MAX_VALUE;
      for (Interval held : slotted.acrossInEach(all.get(i), turn)) {
        by = Math.min(by, Math.max(0, held.gapTo(Interval.of(at, at))));
      }
      if (by > worst.by) {
        worst = new Shortage(false, i, by);
      }
    }
    return worst;
  }

  private static Shortage along(Slotted slotted, Anchors anchors, Orientation turn) {
    List<Anchor> all = anchors.all();
    int highest = 0;
    long lo = slotted.leastAlong(anchors, all.get(0), turn);
    long hi = slotted.mostAlong(anchors, all.get(0), turn);
    for (int i = 1; i < all.size(); i++) {
      long its = slotted.leastAlong(anchors, all.get(i), turn);
      if (its > lo) {
        highest = i;
        lo = its;
      }
      hi = Math.min(hi, slotted.mostAlong(anchors, all.get(i), turn));
    }
    return new Shortage(true, highest, lo - hi);
  }
}
