package org.jawroom.clearance;

import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;

/** Between which heights over the table the spindle nose goes, by situation. */
record NoseHeights(Settings settings, Machine machine, long bedHeight, Blanks blanks) {

  /**
   * The heights that a guard which goes with the nose sweeps over; empty if such guards are left
   * out of the situation: no shortest tool is told, or a blank leaves it open.
   */
  Optional<Interval> in(Situation situation) {
    Dimension max = machine.noseMax();
    if (situation == Situation.LOADING) {
      return blanks.given(max, Column.NOSE_MAX)
          ? Optional.of(Interval.of(max.length(), max.length()))
          : Optional.empty();
    }
    if (settings.shortestTool().isEmpty()) {
      return Optional.empty();
    }
    Dimension min = machine.noseMin();
    if (!(blanks.given(min, Column.NOSE_MIN) & blanks.given(max, Column.NOSE_MAX))) {
      return Optional.empty();
    }
    long touchingBed = bedHeight + settings.shortestTool().getAsLong();
    long lowest = Math.max(min.length(), touchingBed);
    // A tool too short to reach down to where the nose can go: the nose is taken to stand at its
    // highest.
    return Optional.of(Interval.of(Math.min(lowest, max.length()), max.length()));
  }
}
