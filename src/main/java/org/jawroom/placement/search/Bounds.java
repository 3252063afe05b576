package org.jawroom.placement.search;

import org.jawroom.geometry.Length;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;

/**
 * The most that is allowed of each measure of a place; see {@link Preference}. Together they allow
 * one window of places of a seat.
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
   * The place nearest to mid-travel, along x and along y, of the free rectangle around a place that
   * they allow. No place of it is better by any measure.
   */
  Place nearest(Candidate seat, Place place, long margin) {
    return seat.nearest(seat.space().around(place, margin, window(seat)));
  }
}
