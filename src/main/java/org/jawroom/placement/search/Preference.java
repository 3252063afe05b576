package org.jawroom.placement.search;

import java.util.List;
import org.jawroom.placement.space.Place;

/** A measure of a position to be minimized; its lower bound is 0. */
enum Preference {
  /** How far the work area protrudes from the spindle's reach. */
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
  /** Offset of the work area's centre from mid-travel, the larger of x and y. */
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

  /** The lexicographic order that selects the position nearest to mid-travel. */
  static final List<Preference> NEARNESS = List.of(OFF, OFF_Y, OFF_X);

  /** The value of this measure at a position. */
  abstract long of(Candidate seat, Place place);

  /** The same bounds with this measure at most {@code most}. */
  abstract Bounds bounded(Bounds bounds, long most);
}
