package org.jawroom.placement.bolting.slot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
  private final SlotsAcross across;

  private Slotted(Axis along, Interval[] centres, Interval reach, Certainty certainty) {
    this.along = along;
    this.centres = centres;
    this.reach = reach;
    this.across = new SlotsAcross(centres, certainty);
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
    TurnedAnchors turned = anchors.in(turn, along);
    long lo = leastAlong(anchors, turned);
    long hi = mostAlong(anchors, turned);
    if (lo > hi) {
      return Optional.empty();
    }
    IntervalSet held = across.held(turned.across());
    return held.isEmpty() ? Optional.empty() : Optional.of(Strips.of(along, lo, hi, held));
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
    TurnedAnchors turned = anchors.in(turn, along);
    long lo = Math.max(leastAlong(anchors, turned), within.along(along).lo());
    long hi = Math.min(mostAlong(anchors, turned), within.along(along).hi());
    if (lo > hi) {
      return Optional.empty();
    }
    Interval crosswise = within.along(along.across());
    long[] held = across.inEachCombination(turned.across());
    int count = 0;
    for (int i = 0; i < held.length; i += 2) {
      long least = Math.max(held[i], crosswise.lo());
      long most = Math.min(held[i + 1], crosswise.hi());
      if (least <= most) {
        held[count++] = leastTapped(least, most, tap);
        held[count++] = mostTapped(least, most, tap);
      }
    }
    return count == 0
        ? Optional.empty()
        : Optional.of(
            Strips.of(
                along,
                leastTapped(lo, hi, tap),
                mostTapped(lo, hi, tap),
                IntervalSet.union(held, count)));
  }

  private static long leastTapped(long lo, long hi, long tap) {
    return hi - lo >= 2 * tap ? lo + tap : Math.floorDiv(lo + hi, 2);
  }

  private static long mostTapped(long lo, long hi, long tap) {
    return lo + hi - leastTapped(lo, hi, tap);
  }

  /**
   * The slot of each anchor, 1 the first: of those that serve it there the one with the nearest
   * centre line, ties to the lower number; of all where none serves. A slot whose place is open may
   * lie nearest on the average and yet not serve for all of its values.
   */
  public List<Integer> slots(Anchors anchors, Orientation turn, Place place) {
    long at = along == Axis.X ? place.y() : place.x();
    long[] ends = anchors.in(turn, along).across();
    List<Integer> slots = new ArrayList<>(ends.length / 2);
    for (int i = 0; i < ends.length; i += 2) {
      int nearest = 0;
      for (int slot = 1; slot < centres.length; slot++) {
        if (isNearer(slot, nearest, ends[i], ends[i + 1], at)) {
          nearest = slot;
        }
      }
      slots.add(nearest + 1);
    }
    return slots;
  }

  /** Whether a slot serves an anchor better than another does. */
  private boolean isNearer(int slot, int other, long anchorLo, long anchorHi, long at) {
    boolean serves = serves(slot, anchorLo, anchorHi, at);
    return serves == serves(other, anchorLo, anchorHi, at)
        ? twiceOff(slot, anchorLo, anchorHi, at) < twiceOff(other, anchorLo, anchorHi, at)
        : serves;
  }

  private boolean serves(int slot, long anchorLo, long anchorHi, long at) {
    return across.least(slot, anchorHi) <= at && at <= across.most(slot, anchorLo);
  }

  /** Twice the distance of a centre line from the middle of an anchor. */
  private long twiceOff(int slot, long anchorLo, long anchorHi, long at) {
    return Math.abs(centres[slot].lo() + centres[slot].hi() - anchorLo - anchorHi - 2 * at);
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
    TurnedAnchors turned = anchors.in(turn, along);
    long lo = leastAlong(anchors, turned);
    long hi = mostAlong(anchors, turned);
    return lo > hi
        ? Optional.empty()
        : acrossIn(slots, turned).map(held -> Rectangle.of(along, Interval.of(lo, hi), held));
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
          if (acrossIn(next, anchors.in(turn, along)).isPresent()) {
            longer.add(next);
          }
        }
      }
      sets = longer;
    }
    return sets;
  }

  /**
   * The positions across the slots at which the first anchors of a mount stand in the slots listed.
   */
  private Optional<Interval> acrossIn(List<Integer> slots, TurnedAnchors anchors) {
    long lo = Interval.ALL.lo();
    long hi = Interval.ALL.hi();
    for (int i = 0; i < slots.size(); i++) {
      int slot = slots.get(i) - 1;
      lo = Math.max(lo, across.least(slot, anchors.across()[2 * i + 1]));
      hi = Math.min(hi, across.most(slot, anchors.across()[2 * i]));
    }
    return lo <= hi ? Optional.of(Interval.of(lo, hi)) : Optional.empty();
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
    return IntStream.range(0, across.count())
        .mapToObj(slot -> Interval.of(across.least(slot, ends.hi()), across.most(slot, ends.lo())))
        .toList();
  }

  /** The least position along the slots at which all anchors hold. */
  private long leastAlong(Anchors anchors, TurnedAnchors turned) {
    return Math.max(-Length.ENDLESS, -reachOfNuts(anchors) - turned.leastHigh());
  }

  /** The greatest; it may be below the least. */
  private long mostAlong(Anchors anchors, TurnedAnchors turned) {
    return Math.min(Length.ENDLESS, reachOfNuts(anchors) - turned.greatestLow());
  }

  /** How far from the middle of a slot the middle of a nut may stand; negative if nowhere. */
  private long reachOfNuts(Anchors anchors) {
    return reach.hi() - anchors.nutRoom();
  }

  private Interval nuts(Anchors anchors) {
    return Interval.around(0, Math.max(0, reachOfNuts(anchors)));
  }
}
