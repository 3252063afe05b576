package org.jawroom.placement;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;

/**
 * A region with its free space over one opening range, and how well its places suit the spindle.
 *
 * @param workArea of the vise standing at the origin
 * @param reach of the spindle over the table
 */
record Seat(Region region, FreeSpace space, Rectangle workArea, Rectangle reach) {

  static Seat of(Region region, PreparedMachine machine, PreparedVise vise, Interval openings) {
    return of(region, machine, vise.workArea(region.turn()), openings);
  }

  /** The same for questions decided below 0; see {@link FreeSpace#belowZero}. */
  static Seat belowZero(
      Region region, PreparedMachine machine, PreparedVise vise, Interval openings) {
    return new Seat(
        region, region.spaceBelowZero(openings), vise.workArea(region.turn()), machine.reach());
  }

  /** What was made for questions decided below 0, made for all. */
  Seat aboveZero() {
    return new Seat(region, space.aboveZero(), workArea, reach);
  }

  /** The same with another work area, that of a job. */
  static Seat of(Region region, PreparedMachine machine, Rectangle workArea, Interval openings) {
    return new Seat(region, region.space(openings), workArea, machine.reach());
  }

  /** The least shortfall of a place in a window that is not empty. */
  long leastShortfall(Window window) {
    return shortfall(
        new Place(
            nearest(window.xLo(), window.xHi(), midX()),
            nearest(window.yLo(), window.yHi(), midY())));
  }

  /** The least that a place in a window that is not empty is off mid-travel along x. */
  long leastOffX(Window window) {
    return Math.abs(nearest(window.xLo(), window.xHi(), midX()) - midX());
  }

  long leastOffY(Window window) {
    return Math.abs(nearest(window.yLo(), window.yHi(), midY()) - midY());
  }

  private static long nearest(long lo, long hi, long to) {
    return Math.max(lo, Math.min(hi, to));
  }

  long shortfall(Place place) {
    return reach.shortfall(workArea, place.x(), place.y());
  }

  /** The places whose reach shortfall is at most {@code most}. */
  Window reaching(long most) {
    return new Window(
        reach.x().lo() - most - workArea.x().lo(),
        reach.x().hi() + most - workArea.x().hi(),
        reach.y().lo() - most - workArea.y().lo(),
        reach.y().hi() + most - workArea.y().hi());
  }

  /** How far along x the centre of the work area stands from the spindle's mid position. */
  long offX(Place place) {
    return place.x() - midX();
  }

  long offY(Place place) {
    return place.y() - midY();
  }

  /** The places at most so far off mid-travel. */
  Window near(long offX, long offY) {
    return new Window(midX() - offX, midX() + offX, midY() - offY, midY() + offY);
  }

  /**
   * The x that puts the work area's centre at mid-travel; whole, as is half of an opening as read.
   */
  long midX() {
    return middle(reach.x()) - middle(workArea.x());
  }

  long midY() {
    return middle(reach.y()) - middle(workArea.y());
  }

  private static long middle(Interval interval) {
    return (interval.lo() + interval.hi()) / 2;
  }
}
