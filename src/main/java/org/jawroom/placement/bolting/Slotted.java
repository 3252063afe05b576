package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Slots;

/**
 * The positions at which the anchors of a mount line up with the slots of a table, computed along
 * and across the slots so that slots along y need no special case.
 *
 * <p>The mount holds where every anchor is as near as its play allows to the centre line of some
 * slot across, and to the reach of the nuts along, which ends d from the ends of the slots. Both
 * limits are closed.
 */
public final class Slotted {
  private final Axis along;
  private final long[] centres;
  private final Interval reach;

  private Slotted(Axis along, long[] centres, Interval reach) {
    this.along = along;
    this.centres = centres;
    this.reach = reach;
  }

  /** The slots of a machine, whose pitch must be known if it is needed. */
  public static Slotted of(Machine machine) {
    Slots slots = machine.slots();
    boolean alongX = slots.direction() == Axis.X;
    long tableAcross = alongX ? machine.tableWidth() : machine.tableLength();
    return new Slotted(
        slots.direction(), centres(slots, tableAcross), Interval.around(0, length(machine) / 2));
  }

  /** The length of a machine's slots. */
  static long length(Machine machine) {
    boolean alongX = machine.slots().direction() == Axis.X;
    return machine.slots().length().orElse(alongX ? machine.tableLength() : machine.tableWidth());
  }

  SlotLines lines() {
    return new SlotLines(along, centres(), reach);
  }

  /** Centre lines across the table, from its middle. */
  private static long[] centres(Slots slots, long tableAcross) {
    long[] centres = new long[slots.count()];
    for (int j = 0; j < slots.count(); j++) {
      if (!slots.positions().isEmpty()) {
        centres[j] = slots.positions().get(j) - tableAcross / 2;
      } else if (slots.first().isPresent()) {
        long fromFirst = j == 0 ? 0 : j * slots.pitch().length();
        centres[j] = slots.first().getAsLong() + fromFirst - tableAcross / 2;
      } else {
        // Symmetric about the middle. A pitch is whole nanometres, so half of it is exact.
        centres[j] =
            slots.count() == 1 ? 0 : (2L * j - (slots.count() - 1)) * (slots.pitch().length() / 2);
      }
    }
    return centres;
  }

  /** All places of the vise frame's origin at which the anchors hold; empty if there are none. */
  public Optional<Strips> places(Anchors anchors, Orientation turn) {
    IntervalSet across = null;
    long offBefore = 0;
    long playBefore = 0;
    for (Anchor anchor : anchors.all()) {
      Anchor.Turned turned = anchor.turned(turn, along);
      long off = turned.across();
      long play = turned.playAcross();
      if (across == null) {
        across = IntervalSet.around(centres, -off, play);
      } else if (off != offBefore || play != playBefore) {
        across = across.meet(IntervalSet.around(centres, -off, play));
      }
      offBefore = off;
      playBefore = play;
    }
    IntervalSet held = across;
    return alongPlaces(anchors, turn)
        .filter(places -> !held.isEmpty())
        .map(places -> Strips.of(along, places.lo(), places.hi(), held));
  }

  /**
   * The places at which a vise can be tapped square: along x and along y it can be moved by {@code
   * tap} either way with every anchor in the same slot, or, where the anchors leave less than twice
   * that in all, it stands in the middle of what they leave (between two half-nanometres: on either
   * of them).
   *
   * @param within what else holds the vise, such as the table top for strap clamps
   */
  Optional<Strips> settable(Anchors anchors, Orientation turn, long tap, Rectangle within) {
    Optional<Interval> alongPlaces =
        alongPlaces(anchors, turn)
            .flatMap(places -> places.meet(within.along(along)))
            .map(places -> tapped(places, tap));
    List<Interval> across = new ArrayList<>();
    for (Interval held : acrossInSlots(anchors, turn)) {
      held.meet(within.along(along.across())).ifPresent(places -> across.add(tapped(places, tap)));
    }
    return alongPlaces
        .filter(places -> !across.isEmpty())
        .map(places -> Strips.of(along, places.lo(), places.hi(), IntervalSet.union(across)));
  }

  private static Interval tapped(Interval held, long tap) {
    if (held.length() >= 2 * tap) {
      return Interval.of(held.lo() + tap, held.hi() - tap);
    }
    long middle = Math.floorDiv(held.lo() + held.hi(), 2);
    return Interval.of(middle, held.lo() + held.hi() - middle);
  }

  /** The slot of each anchor, 1 the first: the nearest centre line, ties to the lower number. */
  public List<Integer> slots(Anchors anchors, Orientation turn, Place place) {
    long across = along == Axis.X ? place.y() : place.x();
    List<Integer> slots = new ArrayList<>();
    for (Anchor anchor : anchors.all()) {
      long at = across + anchor.turned(turn, along).across();
      int nearest = 0;
      for (int j = 1; j < centres.length; j++) {
        if (Math.abs(centres[j] - at) < Math.abs(centres[nearest] - at)) {
          nearest = j;
        }
      }
      slots.add(nearest + 1);
    }
    return slots;
  }

  /** The centre line of each slot, across the slots from the table's middle. */
  public List<Long> centres() {
    return Arrays.stream(centres).boxed().toList();
  }

  /**
   * The position of each bolt or stud in its slot: under its anchor, as far as the reach of the
   * nuts allows.
   */
  public List<Place> bolts(Anchors anchors, Orientation turn, Place place) {
    List<Integer> slots = slots(anchors, turn, place);
    Interval nuts = nuts(anchors);
    List<Place> bolts = new ArrayList<>();
    for (int i = 0; i < slots.size(); i++) {
      long hole =
          anchors.all().get(i).turned(turn, along).along()
              + (along == Axis.X ? place.x() : place.y());
      long at = Math.max(nuts.lo(), Math.min(nuts.hi(), hole));
      long centre = centres[slots.get(i) - 1];
      bolts.add(along == Axis.X ? new Place(at, centre) : new Place(centre, at));
    }
    return bolts;
  }

  /** The positions at which every anchor stands in the slot listed for it (1 the first). */
  public Optional<Rectangle> placesIn(List<Integer> slots, Anchors anchors, Orientation turn) {
    return alongPlaces(anchors, turn)
        .flatMap(
            places ->
                acrossIn(slots, anchors, turn).map(across -> Rectangle.of(along, places, across)));
  }

  /**
   * Every combination of slots, one per anchor in order, that the anchors can occupy at the same
   * time.
   */
  public List<List<Integer>> slotSets(Anchors anchors, Orientation turn) {
    List<List<Integer>> sets = List.of(List.of());
    for (int anchor = 0; anchor < anchors.all().size(); anchor++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> set : sets) {
        for (int slot = 1; slot <= centres.length; slot++) {
          List<Integer> next = new ArrayList<>(set);
          next.add(slot);
          if (acrossIn(next, anchors, turn).isPresent()) {
            longer.add(next);
          }
        }
      }
      sets = longer;
    }
    return sets;
  }

  /** The positions across the slots in each combination of slots, without duplicates. */
  private Set<Interval> acrossInSlots(Anchors anchors, Orientation turn) {
    Set<Interval> held = Set.of(Interval.ALL);
    for (Anchor anchor : anchors.all()) {
      Anchor.Turned turned = anchor.turned(turn, along);
      Set<Interval> narrower = new LinkedHashSet<>();
      for (Interval before : held) {
        for (long centre : centres) {
          before.meet(turned.acrossIn(centre)).ifPresent(narrower::add);
        }
      }
      held = narrower;
    }
    return held;
  }

  /**
   * The positions across the slots at which the first anchors of a mount stand in the slots listed.
   */
  private Optional<Interval> acrossIn(List<Integer> slots, Anchors anchors, Orientation turn) {
    Optional<Interval> held = Optional.of(Interval.ALL);
    for (int i = 0; i < slots.size(); i++) {
      Interval its = anchors.all().get(i).turned(turn, along).acrossIn(centres[slots.get(i) - 1]);
      held = held.flatMap(before -> before.meet(its));
    }
    return held;
  }

  /** The least position along the slots at which an anchor holds. */
  long leastAlong(Anchors anchors, Anchor anchor, Orientation turn) {
    Anchor.Turned turned = anchor.turned(turn, along);
    return -reachOfNuts(anchors) - turned.playAlong() - turned.along();
  }

  /** The greatest; it may be below the least. */
  long mostAlong(Anchors anchors, Anchor anchor, Orientation turn) {
    Anchor.Turned turned = anchor.turned(turn, along);
    return reachOfNuts(anchors) + turned.playAlong() - turned.along();
  }

  /** The positions across the slots at which an anchor stands over each slot in turn. */
  List<Interval> acrossInEach(Anchor anchor, Orientation turn) {
    Anchor.Turned turned = anchor.turned(turn, along);
    return Arrays.stream(centres).mapToObj(turned::acrossIn).toList();
  }

  private Optional<Interval> alongPlaces(Anchors anchors, Orientation turn) {
    long lo = -Length.ENDLESS;
    long hi = Length.ENDLESS;
    for (Anchor anchor : anchors.all()) {
      lo = Math.max(lo, leastAlong(anchors, anchor, turn));
      hi = Math.min(hi, mostAlong(anchors, anchor, turn));
    }
    return lo <= hi ? Optional.of(Interval.of(lo, hi)) : Optional.empty();
  }

  /** How far from the middle of a slot the middle of a nut may stand; negative if nowhere. */
  private long reachOfNuts(Anchors anchors) {
    return reach.hi() - anchors.nutRoom();
  }

  private Interval nuts(Anchors anchors) {
    return Interval.around(0, Math.max(0, reachOfNuts(anchors)));
  }
}
