package org.jawroom.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.Turn;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Slots;

/**
 * Where the bolts of a mount line up with the slots of a table, told along the slots and across them,
 * so that slots along y are no special case.
 *
 * <p>A bolt may stand off its hole's centre by (hole − d)/2 either way. The mount holds where every bolt
 * has a slot that near across, and the ends of the slots that near along; both limits count as holding.
 */
final class Slotted {
  private final Axis along;
  private final List<Long> centres;
  private final Interval reach;

  private Slotted(Axis along, List<Long> centres, Interval reach) {
    this.along = along;
    this.centres = centres;
    this.reach = reach;
  }

  /** The slots of a machine whose pitch is known if it is needed. */
  static Slotted of(Machine machine) {
    Slots slots = machine.slots();
    boolean alongX = slots.direction() == Axis.X;
    long tableAlong = alongX ? machine.tableLength() : machine.tableWidth();
    long tableAcross = alongX ? machine.tableWidth() : machine.tableLength();
    long length = slots.length().orElse(tableAlong);
    return new Slotted(
        slots.direction(), centres(slots, tableAcross), Interval.around(0, length / 2));
  }

  /** Centre lines across the table, from its middle. */
  private static List<Long> centres(Slots slots, long tableAcross) {
    List<Long> centres = new ArrayList<>();
    for (int j = 0; j < slots.count(); j++) {
      if (!slots.positions().isEmpty()) {
        centres.add(slots.positions().get(j) - tableAcross / 2);
      } else if (slots.first().isPresent()) {
        long fromFirst = j == 0 ? 0 : j * slots.pitch().length();
        centres.add(slots.first().getAsLong() + fromFirst - tableAcross / 2);
      } else {
        // Symmetric about the middle; a pitch is whole nanometres, so half of it is exact.
        centres.add(slots.count() == 1 ? 0 : (2L * j - (slots.count() - 1)) * (slots.pitch().length() / 2));
      }
    }
    return centres;
  }

  /** All places of the vise frame's origin at which {@code mount} holds, as disjoint rectangles. */
  List<Rectangle> places(Mount mount, Turn turn, long thread) {
    Interval alongPlaces = alongPlaces(mount, turn, thread);
    if (alongPlaces == null) {
      return List.of();
    }
    List<Interval> across = null;
    for (Bolt bolt : mount.bolts()) {
      Turned turned = turned(bolt, turn, thread);
      List<Interval> held = merged(centres.stream().map(turned::acrossIn).toList());
      across = across == null ? held : common(across, held);
    }
    return across.stream().map(places -> Rectangle.of(along, alongPlaces, places)).toList();
  }

  /** For each bolt its slot, 1 the first, of two within reach the nearer, then the lower number. */
  List<Integer> slots(Mount mount, Turn turn, long thread, Place place) {
    long across = along == Axis.X ? place.y() : place.x();
    List<Integer> slots = new ArrayList<>();
    for (Bolt bolt : mount.bolts()) {
      long at = across + turned(bolt, turn, thread).across();
      int nearest = 0;
      for (int j = 1; j < centres.size(); j++) {
        if (Math.abs(centres.get(j) - at) < Math.abs(centres.get(nearest) - at)) {
          nearest = j;
        }
      }
      slots.add(nearest + 1);
    }
    return slots;
  }

  /** The places at which every bolt stands in the slot listed for it (1 the first). */
  Optional<Rectangle> placesIn(List<Integer> slots, Mount mount, Turn turn, long thread) {
    Interval alongPlaces = alongPlaces(mount, turn, thread);
    Optional<Interval> across = Optional.of(Interval.ALL);
    for (int i = 0; i < slots.size(); i++) {
      Interval held =
          turned(mount.bolts().get(i), turn, thread).acrossIn(centres.get(slots.get(i) - 1));
      across = across.flatMap(places -> places.meet(held));
    }
    return across.map(places -> Rectangle.of(along, alongPlaces, places));
  }

  private Interval alongPlaces(Mount mount, Turn turn, long thread) {
    Optional<Interval> common = Optional.of(Interval.ALL);
    for (Bolt bolt : mount.bolts()) {
      Turned turned = turned(bolt, turn, thread);
      Interval held = reach.grown(turned.playAlong(), turned.playAlong()).plus(-turned.along());
      common = common.flatMap(places -> places.meet(held));
    }
    return common.orElse(null);
  }

  /** A bolt's hole after turning, and how far the bolt may stand off its centre. */
  private record Turned(long along, long across, long playAlong, long playAcross) {
    Interval acrossIn(long slot) {
      return Interval.around(slot - across, playAcross);
    }
  }

  private Turned turned(Bolt bolt, Turn turn, long thread) {
    long x = turn.x(bolt.u().length(), bolt.v().length());
    long y = turn.y(bolt.u().length(), bolt.v().length());
    long playU = (bolt.holeU().length() - thread) / 2;
    long playV = (bolt.holeV().length() - thread) / 2;
    boolean uAlong = turn.uAxis() == along;
    return new Turned(
        along == Axis.X ? x : y,
        along == Axis.X ? y : x,
        uAlong ? playU : playV,
        uAlong ? playV : playU);
  }

  /** The union of intervals whose ends rise, as disjoint intervals that do not touch. */
  private static List<Interval> merged(List<Interval> rising) {
    List<Interval> merged = new ArrayList<>();
    for (Interval next : rising) {
      int last = merged.size() - 1;
      if (last >= 0 && merged.get(last).meets(next)) {
        merged.set(last, merged.get(last).hull(next));
      } else {
        merged.add(next);
      }
    }
    return merged;
  }

  private static List<Interval> common(List<Interval> some, List<Interval> others) {
    List<Interval> common = new ArrayList<>();
    for (Interval one : some) {
      for (Interval other : others) {
        one.meet(other).ifPresent(common::add);
      }
    }
    return common;
  }
}
