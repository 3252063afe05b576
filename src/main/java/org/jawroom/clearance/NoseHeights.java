package org.jawroom.clearance;

import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;

/** The heights of the spindle nose above the table, by situation. */
record NoseHeights(Settings settings, Machine machine, long bedHeight, Blanks blanks) {

  /**
   * The closed interval of nose heights over which a guard that follows the nose is swept. Empty if
   * such guards are left out of the situation: no shortest tool is set, or a column is blank.
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
    // If even the highest nose puts the shortest tool into the bed, the nose is taken to stand at
    // its highest; a warning reports it.
    return Optional.of(Interval.of(Math.min(lowest, max.length()), max.length()));
  }
}
