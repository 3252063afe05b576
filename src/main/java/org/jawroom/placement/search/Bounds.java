package org.jawroom.placement.search;

import org.jawroom.geometry.Length;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;

/**
 * Upper bounds on each measure of a position; see {@link Preference}. Together they define one
 * window of a candidate's positions.
 */
record Bounds(long shortfall, long offX, long offY) {
  static final Bounds NONE = new Bounds(Length.ENDLESS, Length.ENDLESS, Length.ENDLESS);

  Window window(Candidate seat) {
    return seat.near(offX, offY).meet(seat.reaching(shortfall));
  }

  boolean hold(Candidate seat, Place place) {
    return Preference.SHORTFALL.of(seat, place) <= shortfall
        && Preference.OFF_X.of(seat, place) <= offX
        && Preference.OFF_Y.of(seat, place) <= offY;
  }

  /**
   * The position nearest to mid-travel, along x and along y, within the free rectangle around
   * {@code place} and within these bounds. No position of that rectangle is better by any measure.
   */
  Place nearest(Candidate seat, Place place, long margin) {
    return seat.nearest(seat.space().around(place, margin, window(seat)));
  }
}
