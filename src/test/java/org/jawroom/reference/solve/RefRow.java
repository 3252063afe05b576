package org.jawroom.reference.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.FreeCells;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;

/**
 * The vises of a set in a row along the slots of a machine (section 11 of the model), open readings
 * taken one way.
 *
 * <p>For a threshold t, the positions along the slots at which a vise has margin ≥ t in a turn and
 * mount are intervals ({@link FreeCells}). In a row of given order, turns and mounts each vise
 * stands best as far to the left as those before it let it, since nothing else depends on where it
 * stands; every order, turn and mount is tried. The set of thresholds that serve has a greatest
 * one, found by bisection.
 */
public final class RefRow {
  /** Nothing has less than no place at all. */
  private static final long NOWHERE = Long.MAX_VALUE;

  private final Settings settings;
  private final boolean alongX;
  private final List<RefModel> models = new ArrayList<>();
  private final List<List<Footing>> footings = new ArrayList<>();
  private final List<Integer> counts = new ArrayList<>();

  /**
   * A turn and mount of a kind.
   *
   * @param extents what its parts cover along the slots with the vise at the origin
   */
  record Footing(RefModel model, RefRegion region, List<Extent> extents) {}

  /** What a part sweeps along the slots, in either situation. */
  private record Extent(boolean handle, Span along) {}

  private record Placed(Footing footing, long at) {}

  RefRow(RefLevel level, Settings settings, Machine machine, ViseSet set) {
    this.settings = ReferencePairing.withoutHandRoom(settings);
    this.alongX = machine.slots().direction() == Axis.X;
    for (ViseSet.Member member : set.members()) {
      RefModel model = RefModel.at(level, this.settings, machine, member.vise(), false);
      models.add(model);
      footings.add(
          model.regions.stream()
              .map(region -> new Footing(model, region, extents(model, region)))
              .toList());
      counts.add(member.count());
    }
  }

  private List<Extent> extents(RefModel model, RefRegion region) {
    Facing facing = Facing.of(region.turn());
    List<RefPart> parts = new ArrayList<>(model.body);
    parts.addAll(region.mount().parts());
    List<Extent> extents = new ArrayList<>();
    for (RefPart part : parts) {
      Span u = model.u(part, model.wholeOpening());
      boolean somewhere = isThere(part.cutting()) || isThere(part.loading());
      if (somewhere && !u.isEmpty() && !part.v().isEmpty()) {
        Span along = alongX ? facing.x(u, part.v()) : facing.y(u, part.v());
        extents.add(new Extent(part.isHandle(), along));
      }
    }
    return extents;
  }

  private static boolean isThere(Span w) {
    return w != null && !w.isEmpty();
  }

  /** The model of a kind, by its number in the order of the rows. */
  public RefModel model(int kind) {
    return models.get(kind);
  }

  boolean hasMount(int kind) {
    return !footings.get(kind).isEmpty();
  }

  /** Whether a vise of the kind has a place by itself. */
  boolean hasPlace(int kind) {
    return footings.get(kind).stream().anyMatch(footing -> !positions(footing, 0).isEmpty());
  }

  /** The turn and mount of that name, if the mount holds anywhere. */
  Optional<Footing> footing(int kind, RefStand stand) {
    return footings.get(kind).stream()
        .filter(footing -> footing.region().turn() == stand.turn())
        .filter(footing -> footing.region().mount().name().equals(stand.mount()))
        .findFirst();
  }

  /**
   * The least gap along the slots from the parts of one vise to those of another to its right, two
   * handles excepted; {@link Length#ENDLESS} if nothing counts.
   */
  static long gap(Footing left, long leftAt, Footing right, long rightAt) {
    return rightAt - leftAt - apart(left, right);
  }

  private static long apart(Footing left, Footing right) {
    long apart = -Length.ENDLESS;
    for (Extent one : left.extents) {
      for (Extent other : right.extents) {
        if (one.handle && other.handle) {
          continue;
        }
        if (!Length.isBounded(one.along.hi()) || !Length.isBounded(other.along.lo())) {
          return Length.ENDLESS;
        }
        apart = Math.max(apart, one.along.hi() - other.along.lo());
      }
    }
    return apart;
  }

  /** The greatest threshold that serves; empty if not even 0 does, or if there is no limit. */
  public OptionalLong least() {
    if (!serves(0) || serves(RefMargin.ENDLESS_ROOM)) {
      return OptionalLong.empty();
    }
    long low = 0;
    long high = RefMargin.ENDLESS_ROOM;
    while (high - low > 1) {
      long middle = low + (high - low) / 2;
      if (serves(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalLong.of(low);
  }

  /** Whether some row has every margin, and every gap between neighbours less spacing, ≥ t. */
  public boolean serves(long t) {
    return firstOrder(t).isPresent();
  }

  /** The first order, by the rows of the set, in which some row does. */
  public Optional<List<Integer>> firstOrder(long t) {
    Map<Footing, List<Span>> free = new HashMap<>();
    footings.forEach(all -> all.forEach(one -> free.put(one, positions(one, t))));
    List<List<Integer>> orders = new ArrayList<>();
    orders(new ArrayList<>(), orders);
    return orders.stream().filter(order -> serves(order, new ArrayList<>(), free, t)).findFirst();
  }

  /** Every order of the kinds, ascending. */
  private void orders(List<Integer> begun, List<List<Integer>> all) {
    if (begun.size() == counts.stream().mapToInt(Integer::intValue).sum()) {
      all.add(List.copyOf(begun));
      return;
    }
    for (int kind = 0; kind < counts.size(); kind++) {
      int number = kind;
      if (begun.stream().filter(other -> other == number).count() < counts.get(kind)) {
        begun.add(kind);
        orders(begun, all);
        begun.remove(begun.size() - 1);
      }
    }
  }

  private boolean serves(
      List<Integer> order, List<Placed> placed, Map<Footing, List<Span>> free, long t) {
    int next = placed.size();
    if (next == order.size()) {
      return true;
    }
    for (Footing footing : footings.get(order.get(next))) {
      long from = -Length.ENDLESS;
      for (int i = 0; i < next; i++) {
        Placed before = placed.get(i);
        long asked = settings.spacing() + (i == next - 1 ? t : 0);
        from = Math.max(from, before.at + apart(before.footing, footing) + asked);
      }
      long at = leftmost(free.get(footing), from);
      if (at != NOWHERE) {
        placed.add(new Placed(footing, at));
        boolean serves = serves(order, placed, free, t);
        placed.remove(next);
        if (serves) {
          return true;
        }
      }
    }
    return false;
  }

  private static long leftmost(List<Span> free, long from) {
    for (Span span : free) {
      if (span.hi() >= from) {
        return Math.max(span.lo(), from);
      }
    }
    return NOWHERE;
  }

  /** The positions along the slots with margin ≥ t somewhere across them, ascending. */
  private List<Span> positions(Footing footing, long t) {
    RefModel model = footing.model;
    List<Rect> forbidden = model.forbidden(footing.region, model.wholeOpening(), t);
    List<Span> free = new ArrayList<>();
    for (Rect cell : FreeCells.of(footing.region.xs(), footing.region.ys(), forbidden)) {
      free.add(alongX ? new Span(cell.xLo(), cell.xHi()) : new Span(cell.yLo(), cell.yHi()));
    }
    return RefRegion.merged(free);
  }
}
