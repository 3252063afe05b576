package org.jawroom.placement.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.bolting.slot.Anchors;
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
    for (int index = 0; index < regions.size(); index++) {
      Region region = regions.get(index);
      FreeSpace space = region.space(openings);
      Window reached = Candidate.of(region, machine, vise, openings).reaching(shortfall);
      long apart = apart(region);
      for (Rectangle held : bands(region)) {
        Optional<Rectangle> band = within(held, reached);
        if (band.isPresent()) {
          IntervalSet free = space.along(0, window(band.get()));
          List<Long> positions = spread(free, apart);
          if (positions.size() > most.count()) {
            most =
                new SideBySide(
                    positions,
                    positions.stream().map(at -> place(space, band.get(), at)).toList(),
                    Optional.of(region.turn()),
                    region.fastening().name(),
                    index);
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

  private static Window window(Rectangle band) {
    return new Window(band.x().lo(), band.x().hi(), band.y().lo(), band.y().hi());
  }

  /**
   * The largest number of positions at least {@code apart}; spread evenly if all evenly spaced
   * positions are free.
   */
  private static List<Long> spread(IntervalSet free, long apart) {
    List<Long> first = packed(free, apart);
    if (first.isEmpty()) {
      return first;
    }
    long lo = free.ends()[0];
    long hi = free.ends()[free.ends().length - 1];
    List<Long> even = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      even.add(first.size() == 1 ? lo + (hi - lo) / 2 : lo + (hi - lo) / (first.size() - 1) * i);
    }
    return even.stream().allMatch(free::contains) ? even : first;
  }

  private static List<Long> packed(IntervalSet free, long apart) {
    List<Long> positions = new ArrayList<>();
    long next = Long.MIN_VALUE;
    for (int i = 0; i < free.ends().length; i += 2) {
      long at = Math.max(next, free.ends()[i]);
      while (at <= free.ends()[i + 1]) {
        positions.add(at);
        at += apart;
        next = at;
      }
    }
    return positions;
  }
}
