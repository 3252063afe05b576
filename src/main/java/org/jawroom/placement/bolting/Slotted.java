package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Slots;

/**
 * The positions at which the bolts of a mount line up with the slots of a table, computed along and
 * across the slots so that slots along y need no special case.
 *
 * <p>A bolt may stand off its hole's centre by (hole − d)/2 either way. The mount holds where every
 * bolt is that near to the centre line of some slot across, and that near to the reach of the slots
 * along. Both limits are closed.
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
    long tableAlong = alongX ? machine.tableLength() : machine.tableWidth();
    long tableAcross = alongX ? machine.tableWidth() : machine.tableLength();
    long length = slots.length().orElse(tableAlong);
    return new Slotted(
        slots.direction(), centres(slots, tableAcross), Interval.around(0, length / 2));
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

  /**
   * All places of the vise frame's origin at which {@code mount} holds; empty if it has none.
   *
   * @param mount without a blank
   * @param thread d, at most as wide as any of its holes
   */
  public Optional<Strips> places(Mount mount, Orientation turn, long thread) {
    long lo = -Length.ENDLESS;
    long hi = Length.ENDLESS;
    IntervalSet across = null;
    long offBefore = 0;
    long playBefore = 0;
    for (Bolt bolt : mount.bolts()) {
      Turned turned = turned(bolt, turn, thread);
      lo = Math.max(lo, leastAlong(turned));
      hi = Math.min(hi, mostAlong(turned));
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
    return lo > hi || across.isEmpty()
        ? Optional.empty()
        : Optional.of(Strips.of(along, lo, hi, across));
  }

  /** The slot of each bolt, 1 the first: the nearest centre line, ties to the lower number. */
  public List<Integer> slots(Mount mount, Orientation turn, long thread, Place place) {
    long across = along == Axis.X ? place.y() : place.x();
    List<Integer> slots = new ArrayList<>();
    for (Bolt bolt : mount.bolts()) {
      long at = across + turned(bolt, turn, thread).across();
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
   * The position of each bolt in its slot: under its hole's centre, clamped to the reach of the
   * slot.
   */
  public List<Place> bolts(Mount mount, Orientation turn, long thread, Place place) {
    List<Integer> slots = slots(mount, turn, thread, place);
    List<Place> bolts = new ArrayList<>();
    for (int i = 0; i < slots.size(); i++) {
      long hole =
          turned(mount.bolts().get(i), turn, thread).along()
              + (along == Axis.X ? place.x() : place.y());
      long at = Math.max(reach.lo(), Math.min(reach.hi(), hole));
      long centre = centres[slots.get(i) - 1];
      bolts.add(along == Axis.X ? new Place(at, centre) : new Place(centre, at));
    }
    return bolts;
  }

  /** The positions at which every bolt stands in the slot listed for it (1 the first). */
  public Optional<Rectangle> placesIn(
      List<Integer> slots, Mount mount, Orientation turn, long thread) {
    Interval alongPlaces = alongPlaces(mount, turn, thread);
    return acrossIn(slots, mount, turn, thread)
        .map(places -> Rectangle.of(along, alongPlaces, places));
  }

  /**
   * Every combination of slots, one per bolt in the mount's order, that the bolts can occupy at the
   * same time.
   */
  public List<List<Integer>> slotSets(Mount mount, Orientation turn, long thread) {
    List<List<Integer>> sets = List.of(List.of());
    for (int bolt = 0; bolt < mount.bolts().size(); bolt++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> set : sets) {
        for (int slot = 1; slot <= centres.length; slot++) {
          List<Integer> next = new ArrayList<>(set);
          next.add(slot);
          if (acrossIn(next, mount, turn, thread).isPresent()) {
            longer.add(next);
          }
        }
      }
      sets = longer;
    }
    return sets;
  }

  /**
   * The positions across the slots at which the first bolts of a mount stand in the slots listed.
   */
  private Optional<Interval> acrossIn(
      List<Integer> slots, Mount mount, Orientation turn, long thread) {
    long lo = -Length.ENDLESS;
    long hi = Length.ENDLESS;
    for (int i = 0; i < slots.size(); i++) {
      Turned bolt = turned(mount.bolts().get(i), turn, thread);
      long held = centres[slots.get(i) - 1] - bolt.across();
      lo = Math.max(lo, held - bolt.playAcross());
      hi = Math.min(hi, held + bolt.playAcross());
    }
    return lo <= hi ? Optional.of(Interval.of(lo, hi)) : Optional.empty();
  }

  /**
   * How far a mount that holds nowhere is from holding.
   *
   * @param along whether the reach of the slots is missed rather than their centre lines
   * @param bolt index of the bolt that fails
   * @param by the additional play it needs, half-nanometres
   */
  record Shortage(boolean along, int bolt, long by) {}

  /** The least shortage over all combinations of slots; empty if the bolts line up. */
  Optional<Shortage> shortage(Mount mount, Orientation turn, long thread) {
    List<Interval> ends = new ArrayList<>();
    for (Bolt bolt : mount.bolts()) {
      Turned turned = turned(bolt, turn, thread);
      ends.add(reach.grown(turned.playAlong(), turned.playAlong()).plus(-turned.along()));
    }
    Shortage along = shortage(true, ends);
    if (along.by() > 0) {
      return Optional.of(along);
    }
    // At a given position each bolt chooses its slot independently. At an optimal position some
    // bolt is at the end of its play in some slot, so trying those positions finds the least
    // shortage.
    Shortage least = null;
    for (Bolt first : mount.bolts()) {
      for (long slot : centres) {
        Interval held = turned(first, turn, thread).acrossIn(slot);
        for (long at : new long[] {held.lo(), held.hi()}) {
          Shortage here = shortageAt(at, mount, turn, thread);
          if (least == null || here.by() < least.by()) {
            least = here;
          }
        }
      }
    }
    return Optional.ofNullable(least).filter(shortage -> shortage.by() > 0);
  }

  private Shortage shortageAt(long at, Mount mount, Orientation turn, long thread) {
    Shortage worst = new Shortage(false, 0, 0);
    for (int i = 0; i < mount.bolts().size(); i++) {
      Turned turned = turned(mount.bolts().get(i), turn, thread);
      long by = Long.MAX_VALUE;
      for (long slot : centres) {
        Interval held = turned.acrossIn(slot);
        by = Math.min(by, Math.max(0, held.gapTo(Interval.of(at, at))));
      }
      if (by > worst.by()) {
        worst = new Shortage(false, i, by);
      }
    }
    return worst;
  }

  private static Shortage shortage(boolean along, List<Interval> held) {
    int highest = 0;
    int lowest = 0;
    for (int i = 1; i < held.size(); i++) {
      highest = held.get(i).lo() > held.get(highest).lo() ? i : highest;
      lowest = held.get(i).hi() < held.get(lowest).hi() ? i : lowest;
    }
    return new Shortage(along, highest, held.get(highest).lo() - held.get(lowest).hi());
  }

  private Interval alongPlaces(Mount mount, Orientation turn, long thread) {
    long lo = -Length.ENDLESS;
    long hi = Length.ENDLESS;
    for (Bolt bolt : mount.bolts()) {
      Turned turned = turned(bolt, turn, thread);
      lo = Math.max(lo, leastAlong(turned));
      hi = Math.min(hi, mostAlong(turned));
    }
    return lo <= hi ? Interval.of(lo, hi) : null;
  }

  private long leastAlong(Turned bolt) {
    return reach.lo() - bolt.playAlong() - bolt.along();
  }

  private long mostAlong(Turned bolt) {
    return reach.hi() + bolt.playAlong() - bolt.along();
  }

  /** A bolt's hole after turning, and how far the bolt may stand off its centre. */
  private record Turned(long along, long across, long playAlong, long playAcross) {
    Interval acrossIn(long slot) {
      return Interval.around(slot - across, playAcross);
    }
  }

  private Turned turned(Bolt bolt, Orientation turn, long thread) {
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
}
