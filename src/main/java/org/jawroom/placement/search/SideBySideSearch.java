package org.jawroom.placement.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.clearance.gap.PairBounds;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Anchors;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;

/**
 * Finds the largest number of vises of one kind on one table: in one turn and mount, on the same
 * slots side by side along them, each with margin ≥ 0 and no larger a reach shortfall than given,
 * the swept parts of neighbours at least the spacing apart along the slots (two handles excepted:
 * one handle serves all).
 *
 * <p>The positions along the slots at which a vise can stand, for some position across within the
 * bolts' play, form a union of closed intervals. Greedy placement from the first position on, each
 * next vise as early as the spacing allows, is optimal.
 */
public final class SideBySideSearch {
  private final PreparedMachine machine;
  private final PreparedVise vise;
  private final Axis along;

  public SideBySideSearch(PreparedMachine machine, PreparedVise vise) {
    this.machine = machine;
    this.vise = vise;
    this.along = machine.machine().slots().direction();
  }

  /**
   * The largest number; ties go to the first region, then to the first slots.
   *
   * @param shortfall the greatest reach shortfall that each may have
   */
  public SideBySide most(List<Region> regions, long shortfall) {
    SideBySide most = SideBySide.NONE;
    Interval openings = vise.vise().opening();
    for (Region region : regions) {
      MarginField field = region.field(openings);
      FreeSpace space = region.space(openings);
      Window reached = Candidate.of(region, machine, vise, openings).reaching(shortfall);
      long apart = apart(region);
      for (Rectangle held : bands(region)) {
        Optional<Rectangle> band = within(held, reached);
        if (band.isPresent()) {
          List<Long> positions = spread(free(space, field, band.get()), apart);
          if (positions.size() > most.count()) {
            most =
                new SideBySide(
                    positions,
                    positions.stream().map(at -> place(space, band.get(), at)).toList(),
                    Optional.of(region.turn()),
                    region.fastening().name());
          }
        }
      }
    }
    return most;
  }

  private static Optional<Rectangle> within(Rectangle band, Window window) {
    long xLo = Math.max(band.x().lo(), window.xLo());
    long xHi = Math.min(band.x().hi(), window.xHi());
    long yLo = Math.max(band.y().lo(), window.yLo());
    long yHi = Math.min(band.y().hi(), window.yHi());
    return xLo <= xHi && yLo <= yHi
        ? Optional.of(new Rectangle(Interval.of(xLo, xHi), Interval.of(yLo, yHi)))
        : Optional.empty();
  }

  /** The positions at which the anchors stand in one combination of slots, for each combination. */
  private List<Rectangle> bands(Region region) {
    Anchors anchors = region.fastening().anchors().orElseThrow();
    return machine.slotted().slotSets(anchors, region.turn()).stream()
        .flatMap(slots -> region.placesIn(slots, machine).stream())
        .toList();
  }

  /**
   * The least distance between the origins of two neighbours: the maximum over all pairs of parts.
   */
  private long apart(Region region) {
    long apart = 0;
    for (Part one : region.parts()) {
      for (Part other : region.parts()) {
        if (!(one.handle() && other.handle())) {
          Interval first = one.over(vise.vise().opening(), region.turn()).along(along);
          Interval second = other.over(vise.vise().opening(), region.turn()).along(along);
          apart = Math.max(apart, first.hi() - second.lo() + machine.settings().spacing());
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
    return space.isClear(0, across(band, at));
  }

  /** A place across the slots with as much margin as climbing from a clear one gives. */
  private Place place(FreeSpace space, Rectangle band, long at) {
    Window line = across(band, at);
    return space.climbed(space.find(0, line), line).place();
  }

  /** The line across the slots at a position along them. */
  private Window across(Rectangle band, long at) {
    Interval across = band.along(along.across());
    return along == Axis.X
        ? new Window(at, at, across.lo(), across.hi())
        : new Window(across.lo(), across.hi(), at, at);
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
