package org.jawroom.placement.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.gap.PairBounds;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Region;
import org.jawroom.shop.machine.Guard;

/**
 * Candidate amounts for changes that need not help more the larger they are: raising a vise, moving
 * a box.
 *
 * <p>Every bound of a pair moves by the full amount or not at all, and all bounds are closed. The
 * amounts that serve therefore form closed intervals, and each begins where a moving bound meets a
 * fixed one. These meetings are the only candidates.
 */
public final class AmountCandidates {
  private AmountCandidates() {}

  /** The riser heights at which a vise comes clear over a guard, or of the table. */
  public static TreeSet<Long> risers(List<Region> regions) {
    TreeSet<Long> heights = new TreeSet<>();
    for (Region region : regions) {
      for (Pair pair : region.pairs()) {
        long need = pair.required() + pair.tolerance();
        addBounded(heights, pair.guard().box().z().hi() + need - pair.part().w().lo());
        // A part that no longer reaches below the table top is no longer checked against the table.
        heights.add(-pair.part().w().lo());
      }
    }
    return positive(heights);
  }

  /**
   * How far {@code guard} must move along {@code axis}, up or down it, to make room on the side
   * that it leaves.
   */
  public static TreeSet<Long> moves(
      List<Region> regions, Interval openings, Guard guard, Axis axis, boolean up) {
    TreeSet<Long> amounts = new TreeSet<>();
    for (Region region : regions) {
      List<PairBounds> bounds = region.field(openings).bounds();
      List<Long> moving = new ArrayList<>();
      List<Long> still = new ArrayList<>();
      for (Rectangle places : region.places().rectangles()) {
        still.add(up ? places.along(axis).lo() : -places.along(axis).hi());
      }
      List<Pair> pairs = region.pairs();
      for (int i = 0; i < bounds.size(); i++) {
        PairBounds pair = bounds.get(i);
        long near = axis == Axis.X ? pair.a() : pair.c();
        long far = axis == Axis.X ? pair.b() : pair.d();
        if (isOf(pairs.get(i), guard)) {
          // Moving up the axis frees room below its near side; moving down, above its far side.
          moving.add(up ? near : -far);
        } else if (pair.f() < 0) {
          still.add(up ? far : -near);
        }
      }
      for (long edge : moving) {
        for (long other : still) {
          addBounded(amounts, other - edge);
        }
      }
    }
    return positive(amounts);
  }

  /** How far {@code guard} must move up to come clear over a part. */
  public static TreeSet<Long> lifts(List<Region> regions, Guard guard) {
    TreeSet<Long> amounts = new TreeSet<>();
    for (Region region : regions) {
      for (Pair pair : region.pairs()) {
        if (isOf(pair, guard)) {
          long need = pair.required() + pair.tolerance();
          addBounded(amounts, pair.part().w().hi() + need - pair.guard().box().z().lo());
        }
      }
    }
    return positive(amounts);
  }

  private static boolean isOf(Pair pair, Guard guard) {
    return pair.guard().guard().filter(guard::equals).isPresent();
  }

  private static void addBounded(Collection<Long> amounts, long amount) {
    if (Length.isBounded(amount)) {
      amounts.add(amount);
    }
  }

  private static TreeSet<Long> positive(TreeSet<Long> amounts) {
    return new TreeSet<>(amounts.tailSet(1L));
  }
}
