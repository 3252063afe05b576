package org.jawroom.placement.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jawroom.clearance.MarginField;
import org.jawroom.clearance.PairBounds;
import org.jawroom.clearance.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Overhang;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.bolting.Slotted;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * Finds the largest number of vises of one kind on one table: in one turn and mount, bolted on the
 * same slots side by side along them, each with margin ≥ 0, the swept parts of neighbours at least
 * the spacing apart along the slots (two handles excepted: one handle serves all).
 *
 * <p>The positions along the slots at which a vise can stand, for some position across within the
 * bolts' play, form a union of closed intervals. Greedy placement from the first position on, each
 * next vise as early as the spacing allows, is optimal.
 */
public final class SideBySideSearch {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Axis along;

  public SideBySideSearch(Settings settings, Machine machine, Vise vise) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.along = machine.slots().direction();
  }

  /** The largest number; ties go to the first region, then to the first slots. */
  public SideBySide most(List<Region> regions) {
    SideBySide most = SideBySide.NONE;
    for (Region region : regions) {
      MarginField field = region.field(vise.opening());
      FreeSpace space = region.space(vise.opening());
      long apart = apart(region);
      for (Rectangle band : bands(region)) {
        List<Long> positions = spread(free(space, field, band), apart);
        if (positions.size() > most.count()) {
          most =
              new SideBySide(
                  positions, Optional.of(region.turn()), region.mount().orElseThrow().name());
        }
      }
    }
    return most;
  }

  /** The positions at which the bolts stand in one combination of slots, for each combination. */
  private List<Rectangle> bands(Region region) {
    Slotted slotted = Slotted.of(machine);
    List<Rectangle> bands = new ArrayList<>();
    long thread = region.thread().orElseThrow();
    for (List<Integer> slots :
        slotted.slotSets(region.mount().orElseThrow(), region.turn(), thread)) {
      slotted
          .placesIn(slots, region.mount().orElseThrow(), region.turn(), thread)
          .flatMap(
              held -> Overhang.allowed(settings, machine, vise, region.turn()).flatMap(held::meet))
          .ifPresent(bands::add);
    }
    return bands;
  }

  /**
   * The least distance between the origins of two neighbours: the maximum over all pairs of parts.
   */
  private long apart(Region region) {
    long apart = 0;
    for (Part one : region.parts()) {
      for (Part other : region.parts()) {
        if (!(one.handle() && other.handle())) {
          Interval first = one.over(vise.opening(), region.turn()).along(along);
          Interval second = other.over(vise.opening(), region.turn()).along(along);
          apart = Math.max(apart, first.hi() - second.lo() + settings.spacing());
        }
      }
    }
    return apart;
  }

  /**
   * The positions along the slots for which some position across them within {@code band} is clear.
   */
  private List<Interval> free(FreeSpace space, MarginField field, Rectangle band) {
    Interval reach = band.along(along);
    TreeSet<Long> changes = new TreeSet<>(List.of(reach.lo(), reach.hi()));
    for (PairBounds pair : field.bounds()) {
      for (long edge :
          new long[] {
            along == Axis.X ? pair.a() : pair.c(), along == Axis.X ? pair.b() : pair.d()
          }) {
        if (reach.contains(edge)) {
          changes.add(edge);
        }
      }
    }
    List<Interval> free = new ArrayList<>();
    Long before = null;
    for (long change : changes) {
      // Clearness is constant between two changes, and the free set is closed.
      if (before != null && change - before > 1 && isFree(space, band, before + 1)) {
        add(free, Interval.of(before, change));
      } else if (isFree(space, band, change)) {
        add(free, Interval.of(change, change));
      }
      before = change;
    }
    return free;
  }

  private static void add(List<Interval> free, Interval next) {
    int last = free.size() - 1;
    if (last >= 0 && free.get(last).hi() == next.lo()) {
      free.set(last, free.get(last).hull(next));
    } else {
      free.add(next);
    }
  }

  private boolean isFree(FreeSpace space, Rectangle band, long at) {
    Interval across = band.along(along.across());
    Window line =
        along == Axis.X
            ? new Window(at, at, across.lo(), across.hi())
            : new Window(across.lo(), across.hi(), at, at);
    return space.isClear(0, line);
  }

  /**
   * The largest number of positions at least {@code apart}; spread evenly if all evenly spaced
   * positions are free.
   */
  private static List<Long> spread(List<Interval> free, long apart) {
    List<Long> first = packed(free, apart);
    if (first.isEmpty()) {
      return first;
    }
    long lo = free.get(0).lo();
    long hi = free.get(free.size() - 1).hi();
    List<Long> even = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      even.add(first.size() == 1 ? lo + (hi - lo) / 2 : lo + (hi - lo) / (first.size() - 1) * i);
    }
    boolean allFree =
        even.stream().allMatch(at -> free.stream().anyMatch(interval -> interval.contains(at)));
    return allFree ? even : first;
  }

  private static List<Long> packed(List<Interval> free, long apart) {
    List<Long> positions = new ArrayList<>();
    long next = Long.MIN_VALUE;
    for (Interval interval : free) {
      long at = Math.max(next, interval.lo());
      while (at <= interval.hi()) {
        positions.add(at);
        next = at + apart;
        at = next;
      }
    }
    return positions;
  }
}
