package org.jawroom.placement.search;

import java.util.List;
import org.jawroom.placement.space.Place;

/** A measure of a place of which the least, at best 0, is preferred. */
enum Preference {
  /** How far the work area sticks out of the spindle's reach. */
  SHORTFALL {
    @Override
    long of(Candidate seat, Place place) {
      return seat.shortfall(place);
    }

    @Override
    Bounds bounded(Bounds bounds, long most) {
      return new Bounds(most, bounds.offX(), bounds.offY());
    }
  },
  /** How far the work area's centre is off mid-travel, along x or y, whichever is more. */
  OFF {
    @Override
    long of(Candidate seat, Place place) {
      return Math.max(OFF_X.of(seat, place), OFF_Y.of(seat, place));
    }

    @Override
    Bounds bounded(Bounds bounds, long most) {
      return new Bounds(bounds.shortfall(), most, most);
    }
  },
  OFF_Y {
    @Override
    long of(Candidate seat, Place place) {
      return Math.abs(place.y() - seat.midY());
    }

    @Override
    Bounds bounded(Bounds bounds, long most) {
      return new Bounds(bounds.shortfall(), bounds.offX(), most);
    }
  },
  OFF_X {
    @Override
    long of(Candidate seat, Place place) {
      return Math.abs(place.x() - seat.midX());
    }

    @Override
    Bounds bounded(Bounds bounds, long most) {
      return new Bounds(bounds.shortfall(), most, bounds.offY());
    }
  };

  /** The order in which the nearest to mid-travel is chosen. */
  static final List<Preference> NEARNESS = List.of(OFF, OFF_Y, OFF_X);

  /** The measure of a place. */
  abstract long of(Candidate seat, Place place);

  /** The same bounds, this measure being at most {@code most}. */
  abstract Bounds bounded(Bounds bounds, long most);
}
