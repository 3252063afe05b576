package org.jawroom.placement.search;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;

/**
 * A region with its free space over one opening range and the fit of its positions to the spindle's
 * reach.
 *
 * @param reaching the positions at which the whole work area is within the spindle's reach; empty,
 *     with reversed limits, if the work area is larger than the reach
 */
public record Candidate(Region region, FreeSpace space, Window reaching) {

  /**
   * A candidate for a work area.
   *
   * @param workArea of the vise standing at the origin
   * @param reach of the spindle over the table
   */
  public static Candidate of(Region region, FreeSpace space, Rectangle workArea, Rectangle reach) {
    Interval x = reach.x();
    Interval y = reach.y();
    return new Candidate(
        region,
        space,
        new Window(
            x.lo() - workArea.x().lo(),
            x.hi() - workArea.x().hi(),
            y.lo() - workArea.y().lo(),
            y.hi() - workArea.y().hi()));
  }

  public static Candidate of(
      Region region, PreparedMachine machine, PreparedVise vise, Interval openings) {
    return of(region, region.space(openings), vise.workArea(region.turn()), machine.reach());
  }

  /** The same, valid for decisions at or below 0 only; see {@link FreeSpace#belowZero}. */
  static Candidate belowZero(
      Region region, PreparedMachine machine, PreparedVise vise, Interval openings) {
    FreeSpace space = region.spaceBelowZero(openings);
    return of(region, space, vise.workArea(region.turn()), machine.reach());
  }

  /** This candidate without the restriction of {@link #belowZero}. */
  Candidate aboveZero() {
    return new Candidate(region, space.aboveZero(), reaching);
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
  Window reaching(long most) {
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
