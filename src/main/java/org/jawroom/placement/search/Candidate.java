package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.placement.space.Window;

/**
 * A region with its free space over one opening range and the fit of its positions to the spindle's
 * reach.
 *
 * @param within the positions considered, of those of the region
 * @param space the free ones of these: all of them, or the settable ones
 * @param isSettable whether the vise can be tapped square at every free position of the space
 * @param reaching the positions at which the whole work area is within the spindle's reach; empty,
 *     with reversed limits, if the work area is larger than the reach
 */
public record Candidate(
    Region region,
    PreparedMachine machine,
    Interval openings,
    Rectangle within,
    FreeSpace space,
    boolean isSettable,
    Window reaching) {

  /**
   * A candidate for a work area.
   *
   * @param workArea of the vise standing at the origin
   */
  public static Candidate of(
      Region region, PreparedMachine machine, Interval openings, Rectangle workArea) {
    return of(region, machine, openings, region.space(openings), workArea);
  }

  public static Candidate of(
      Region region, PreparedMachine machine, PreparedVise vise, Interval openings) {
    return of(region, machine, openings, vise.workArea(region.turn()));
  }

  /** The same, valid for decisions at or below 0 only; see {@link FreeSpace#belowZero}. */
  static Candidate belowZero(
      Region region, PreparedMachine machine, PreparedVise vise, Interval openings) {
    FreeSpace space = region.spaceBelowZero(openings);
    return of(region, machine, openings, space, vise.workArea(region.turn()));
  }

  private static Candidate of(
      Region region,
      PreparedMachine machine,
      Interval openings,
      FreeSpace space,
      Rectangle workArea) {
    Interval x = machine.reach().x();
    Interval y = machine.reach().y();
    return new Candidate(
        region,
        machine,
        openings,
        Region.EVERYWHERE,
        space,
        machine.settings().tapRoom() == 0,
        new Window(
            x.lo() - workArea.x().lo(),
            x.hi() - workArea.x().hi(),
            y.lo() - workArea.y().lo(),
            y.hi() - workArea.y().hi()));
  }

  /** This candidate without the restriction of {@link #belowZero}. */
  Candidate aboveZero() {
    return new Candidate(
        region, machine, openings, within, space.aboveZero(), isSettable, reaching);
  }

  /** Its settable positions alone; empty if bolts or clamps leave none. */
  Optional<Candidate> settable() {
    if (isSettable) {
      return Optional.of(this);
    }
    Optional<Strips> settable = region.settable(machine);
    return (within.equals(Region.EVERYWHERE)
            ? settable
            : settable.flatMap(held -> held.meet(within)))
        .map(held -> space.tapped(held, machine.settings().tapRoom()))
        .map(tapped -> new Candidate(region, machine, openings, within, tapped, true, reaching));
  }

  /** Whether some position has at least that margin. */
  boolean hasMargin(long least) {
    return space.isClear(least, Window.EVERYWHERE);
  }

  /** Whether some position has at least that margin and at most that reach shortfall. */
  boolean hasMargin(long least, long shortfall) {
    return space.isClear(least, reaching(shortfall));
  }

  /** The free space of all positions of its region, whatever this candidate is limited to. */
  FreeSpace whole() {
    return space.whole();
  }

  /** Its positions in a rectangle; empty if there are none. */
  public Optional<Candidate> within(Rectangle only) {
    return within.meet(only).flatMap(this::of);
  }

  private Optional<Candidate> of(Rectangle both) {
    return space
        .within(both)
        .map(left -> new Candidate(region, machine, openings, both, left, isSettable, reaching));
  }

  /** The slot of each anchor at a position, 1 the first. */
  List<Integer> slots(Place place) {
    return machine
        .slotted()
        .slots(region.fastening().anchors().orElseThrow(), region.turn(), place);
  }

  /** The position nearest to mid-travel, along x and along y, in a non-empty window. */
  Place nearest(Window window) {
    return new Place(
        nearest(window.xLo(), window.xHi(), midX()), nearest(window.yLo(), window.yHi(), midY()));
  }

  private static long nearest(long lo, long hi, long to) {
    return Math.max(lo, Math.min(hi, to));
  }

  /** How far the work area protrudes from the spindle's reach; 0 if it does not. */
  public long shortfall(long x, long y) {
    long inX = Math.max(reaching.xLo() - x, x - reaching.xHi());
    long inY = Math.max(reaching.yLo() - y, y - reaching.yHi());
    return Math.max(0, Math.max(inX, inY));
  }

  public long shortfall(Place place) {
    return shortfall(place.x(), place.y());
  }

  /** The positions whose reach shortfall is at most {@code most}. */
  public Window reaching(long most) {
    return new Window(
        reaching.xLo() - most, reaching.xHi() + most, reaching.yLo() - most, reaching.yHi() + most);
  }

  /** The positions at most that far off mid-travel. */
  Window near(long offX, long offY) {
    return new Window(midX() - offX, midX() + offX, midY() - offY, midY() + offY);
  }

  /**
   * The x that centres the work area on mid-travel; exact, since half of an opening as read is
   * whole half-nanometres.
   */
  long midX() {
    return (reaching.xLo() + reaching.xHi()) / 2;
  }

  long midY() {
    return (reaching.yLo() + reaching.yHi()) / 2;
  }
}
