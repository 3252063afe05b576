package org.jawroom.report.card.measure;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;

/** The openings that a limited pairing must keep to. */
public record OpeningLimits(PeopleUnit unit, Outcome outcome) {

  /** {@code Do not close below 76 mm: tag the vise.}; empty unless the opening is limited. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    if (outcome.verdict() == Verdict.LIMITED) {
      Interval usable = outcome.usableOpening().orElseThrow();
      Interval full = outcome.vise().opening();
      if (usable.lo() > full.lo()) {
        words.add("Do not close below " + unit.brief(usable.lo(), Rounding.UP) + tag());
      }
      if (usable.hi() < full.hi()) {
        words.add("Do not open beyond " + unit.brief(usable.hi(), Rounding.DOWN) + tag());
      }
    }
    return words;
  }

  private String tag() {
    return " " + unit.word() + ": tag the vise.";
  }
}
