package org.jawroom.clearance.guard;

import java.util.Optional;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;

/** The heights of the spindle nose above the table, by situation. */
record NoseHeights(
    Settings settings, Machine machine, long bedHeight, Certainty certainty, Blanks blanks) {

  /** The heights of a machine whose readings are known. */
  NoseHeights(Settings settings, Machine machine, long bedHeight, Blanks blanks) {
    this(settings, machine, bedHeight, Certainty.AT_BEST, blanks);
  }

  /**
   * The z limits of a guard that follows the nose, swept over the heights at which the nose stands.
   * Empty if such guards are left out of the situation: no shortest tool is set, at best a column
   * is blank, or what all heights have in common is nothing.
   *
   * @param fromNose the limits from the nose
   */
  Optional<Interval> swept(Situation situation, Interval fromNose) {
    return in(situation)
        .map(nose -> new Ends(fromNose.lo() + nose.lo(), fromNose.hi() + nose.hi()))
        .filter(swept -> !swept.isReversed())
        .map(swept -> Interval.of(swept.lo(), swept.hi()));
  }

  /**
   * The ends of the nose heights over which a guard that follows the nose is swept; at best those
   * that all values of the readings have in common, which may be reversed. Empty if such guards are
   * left out.
   */
  Optional<Ends> in(Situation situation) {
    Dimension max = machine.noseMax();
    if (situation == Situation.LOADING) {
      return needs(max, Column.NOSE_MAX)
          ? Optional.of(certainty.ends(Certainty.sizes(max), Certainty.sizes(max)))
          : Optional.empty();
    }
    if (settings.shortestTool().isEmpty()) {
      return Optional.empty();
    }
    Dimension min = machine.noseMin();
    if (!(needs(min, Column.NOSE_MIN) & needs(max, Column.NOSE_MAX))) {
      return Optional.empty();
    }
    Interval highest = Certainty.sizes(max);
    long touchingBed = bedHeight + settings.shortestTool().getAsLong();
    // If even the highest nose puts the shortest tool into the bed, the nose is taken to stand at
    // its highest; a warning reports it.
    Interval lowest =
        Interval.of(
            Math.min(Math.max(Certainty.sizes(min).lo(), touchingBed), highest.lo()),
            Math.min(Math.max(Certainty.sizes(min).hi(), touchingBed), highest.hi()));
    return Optional.of(certainty.ends(lowest, highest));
  }

  private boolean needs(Dimension dimension, Column column) {
    return blanks.given(dimension, column) || certainty == Certainty.AT_WORST;
  }
}
