package org.jawroom.placement.bolting.slot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.Certainty;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;

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
  private final Interval[] centres;
  private final Interval reach;
  private final Certainty certainty;

  private Slotted(Axis along, Interval[] centres, Interval reach, Certainty certainty) {
    this.along = along;
    this.centres = centres;
    this.reach = reach;
    this.certainty = certainty;
  }

  /** The slots of a machine, whose pitch must be known if it is needed. */
  public static Slotted of(Machine machine) {
    return of(machine, Certainty.AT_WORST);
  }

  /**
   * The slots of a machine, whose pitch may be open.
   *
   * @param certainty whether a slot must serve for all values of the open readings or for some
   */
  public static Slotted of(Machine machine, Certainty certainty) {
    Slots slots = machine.slots();
    boolean alongX = slots.direction() == Axis.X;
    long tableAcross = alongX ? machine.tableWidth() : machine.tableLength();
    return new Slotted(
        slots.direction(),
        centres(slots, tableAcross),
        Interval.around(0, length(machine) / 2),
        certainty);
  }

  /** The length of a machine's slots. */
  public static long length(Machine machine) {
    boolean alongX = machine.slots().direction() == Axis.X;
    return machine.slots().length().orElse(alongX ? machine.tableLength() : machine.tableWidth());
  }

  SlotLines lines() {
    return new SlotLines(along, centres(), reach);
  }

  /** Where each centre line may lie across the table, from its middle. */
  private static Interval[] centres(Slots slots, long tableAcross) {
    List<Interval> centres = new ArrayList<>(slots.count());
    Interval pitch = slots.needsPitch() ? Certainty.sizes(slots.pitch()) : Interval.of(0, 0);
    for (int j = 0; j < slots.count(); j++) {
      if (!slots.positions().isEmpty()) {
        long at = slots.positions().get(j) - tableAcross / 2;
        centres.add(Interval.of(at, at));
      } else if (slots.first().isPresent()) {
        long first = slots.first().getAsLong() - tableAcross / 2;
        centres.add(Interval.of(first + j * pitch.lo(), first + j * pitch.hi()));
      } else {
        // Symmetric about the middle. A pitch is whole nanometres, so half of it is exact.
        long halves = 2L * j - (slots.count() - 1);
        long one = halves * (pitch.lo() / 2);
        long other = halves * (pitch.hi() / 2);
        centres.add(Interval.of(Math.min(one, other), Math.max(one, other)));
      }
    }
    return centres.toArray(Interval[]::new);
  }

  /** All places of the vise frame's origin at which the anchors hold; empty if there are none. */
  public Optional<Strips> places(Anchors anchors, Orientation turn) {
    IntervalSet across = null;
    Ends before = null;
    for (Anchor anchor : anchors.all()) {
      Ends ends = anchor.across(turn, along);
      if (across == null) {
        across = heldAcross(ends);
      } else if (!ends.equals(before)) {
        across = across.meet(heldAcross(ends));
      }
      before = ends;
    }
    IntervalSet held = across;
    return alongPlaces(anchors, turn)
        .filter(places -> !held.isEmpty())
        .map(places -> Strips.of(along, places.lo(), places.hi(), held));
  }

  private IntervalSet heldAcross(Ends anchor) {
    List<Interval> held = new ArrayList<>(centres.length);
    for (Interval centre : centres) {
      Ends places = acrossIn(centre, anchor);
      if (!places.isReversed()) {
        held.add(Interval.of(places.lo(), places.hi()));
      }
    }
    return IntervalSet.union(held);
  }

  /**
   * The positions across the slots at which the slot with that centre line serves an anchor;
   * reversed if there are none.
   */
  private Ends acrossIn(Interval centre, Ends anchor) {
    return certainty == Certainty.AT_WORST
        ? new Ends(centre.hi() - anchor.hi(), centre.lo() - anchor.lo())
        : new Ends(centre.lo() - anchor.hi(), centre.hi() - anchor.lo());
  }

  /**
   * The places at which a vise can be tapped square: along x and along y it can be moved by {@code
   * tap} either way with every anchor in the same slot, or, where the anchors leave less than twice
   * that in all, it stands in the middle of what they leave (between two half-nanometres: on either
   * of them).
   *
   * @param within what else holds the vise, such as the table top for strap clamps
   */
  public Optional<Strips> settable(Anchors anchors, Orientation turn, long tap, Rectangle within) {
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

  /**
   * The slot of each anchor, 1 the first: of those that serve it there the one with the nearest
   * centre line, ties to the lower number; of all where none serves. A slot whose place is open may
   * lie nearest on the average and yet not serve for all of its values.
   */
  public List<Integer> slots(Anchors anchors, Orientation turn, Place place) {
    long across = along == Axis.X ? place.y() : place.x();
    List<Integer> slots = new ArrayList<>();
    for (Anchor anchor : anchors.all()) {
      Ends ends = anchor.across(turn, along);
      int nearest = 0;
      for (int j = 1; j < centres.length; j++) {
        if (isNearer(centres[j], centres[nearest], ends, across)) {
          nearest = j;
        }
      }
      slots.add(nearest + 1);
    }
    return slots;
  }

  private boolean isNearer(Interval centre, Interval other, Ends anchor, long across) {
    boolean serves = serves(centre, anchor, across);
    return serves == serves(other, anchor, across)
        ? twiceOff(centre, anchor, across) < twiceOff(other, anchor, across)
        : serves;
  }

  private boolean serves(Interval centre, Ends anchor, long across) {
    Ends places = acrossIn(centre, anchor);
    return places.lo() <= across && across <= places.hi();
  }

  /** Twice the distance of a centre line from the middle of an anchor. */
  private static long twiceOff(Interval centre, Ends anchor, long across) {
    return Math.abs(centre.lo() + centre.hi() - anchor.lo() - anchor.hi() - 2 * across);
  }

  /** The centre line of each slot, across the slots from the table's middle. */
  public List<Long> centres() {
    return Arrays.stream(centres).map(Slotted::middle).toList();
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
      Ends ends = anchors.all().get(i).along(turn, along);
      long hole = (ends.lo() + ends.hi()) / 2 + (along == Axis.X ? place.x() : place.y());
      long at = Math.max(nuts.lo(), Math.min(nuts.hi(), hole));
      long centre = middle(centres[slots.get(i) - 1]);
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
  private List<Interval> acrossInSlots(Anchors anchors, Orientation turn) {
    List<Interval> held = List.of(Interval.ALL);
    for (Anchor anchor : anchors.all()) {
      Ends ends = anchor.across(turn, along);
      List<Interval> narrower = new ArrayList<>(centres.length);
      for (Interval before : held) {
        for (Interval centre : centres) {
          Ends its = acrossIn(centre, ends);
          long lo = Math.max(before.lo(), its.lo());
          long hi = Math.min(before.hi(), its.hi());
          Interval both = lo <= hi ? Interval.of(lo, hi) : null;
          if (both != null && !narrower.contains(both)) {
            narrower.add(both);
          }
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
      Ends ends = anchors.all().get(i).across(turn, along);
      Ends its = acrossIn(centres[slots.get(i) - 1], ends);
      held = held.flatMap(before -> meet(before, its));
    }
    return held;
  }

  private static Optional<Interval> meet(Interval one, Ends other) {
    return other.isReversed() ? Optional.empty() : one.meet(Interval.of(other.lo(), other.hi()));
  }

  private static long middle(Interval centre) {
    return centre.lo() + (centre.hi() - centre.lo()) / 2;
  }

  /** The least position along the slots at which an anchor holds. */
  long leastAlong(Anchors anchors, Anchor anchor, Orientation turn) {
    return -reachOfNuts(anchors) - anchor.along(turn, along).hi();
  }

  /** The greatest; it may be below the least. */
  long mostAlong(Anchors anchors, Anchor anchor, Orientation turn) {
    return reachOfNuts(anchors) - anchor.along(turn, along).lo();
  }

  /**
   * The positions across the slots at which each slot in turn serves an anchor, all of them known.
   */
  List<Interval> acrossInEach(Anchor anchor, Orientation turn) {
    Ends ends = anchor.across(turn, along);
    return Arrays.stream(centres)
        .map(centre -> acrossIn(centre, ends))
        .map(places -> Interval.of(places.lo(), places.hi()))
        .toList();
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
