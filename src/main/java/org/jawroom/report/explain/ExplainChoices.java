package org.jawroom.report.explain;

import java.util.List;
import java.util.Optional;
import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.MissWords;
import org.jawroom.report.wording.WhereWords;

/**
 * The section on the turns and mounts not chosen: the best that each can do, or why it holds
 * nowhere.
 */
record ExplainChoices(PeopleUnit unit, Explanation explanation) {

  void to(ExplainLines lines) {
    Outcome outcome = explanation.advice().outcome();
    List<String> misses =
        new MissWords(unit, outcome.machine(), outcome.vise()).of(explanation.misses());
    if (explanation.others().isEmpty() && misses.isEmpty()) {
      return;
    }
    lines.heading(
        outcome.verdict() == Verdict.NO_MOUNT
            ? "Turns and mounts, the nearest to holding first"
            : "Other turns and mounts");
    explanation
        .others()
        .forEach(other -> lines.item(other(other, outcome.recommended().orElseThrow())));
    misses.forEach(lines::item);
  }

  private String other(Alternative other, Recommendation chosen) {
    return "handle to the "
        + other.turn().word()
        + ", "
        + other.mount()
        + ": "
        + worse(other, chosen);
  }

  /** Why it ranks below the chosen one in the order of preference. */
  private String worse(Alternative other, Recommendation chosen) {
    long margin = margin(other.best().limit());
    long best = margin(chosen.limit());
    String words = marginWords(other.best().limit(), chosen);
    if (margin < 0 && best >= 0) {
      return "it hits something or comes too near; " + words;
    }
    if (other.reachShortfall() > chosen.reachShortfall() && margin >= 0) {
      return "the spindle reaches "
          + unit.brief(other.reachShortfall() - chosen.reachShortfall(), Rounding.UP)
          + " "
          + unit.word()
          + " less of the work; "
          + words;
    }
    return margin < best
        ? "less room; " + words
        : "as much room, but it comes later in the order of preference; " + words;
  }

  private String marginWords(Optional<Limit> limit, Recommendation chosen) {
    Outcome outcome = explanation.advice().outcome();
    WhereWords where = new WhereWords(unit, outcome.machine(), outcome.vise());
    return limit
        .map(
            found ->
                "margin "
                    + unit.fine(found.margin(), Rounding.DOWN)
                    + " "
                    + unit.word()
                    + " ("
                    + WhereWords.pair(found)
                    + ": "
                    + where.of(found, chosen.openings())
                    + ")")
        .orElse("nothing listed can be hit");
  }

  /** Without any guard to hit the margin is unbounded. */
  private static long margin(Optional<Limit> limit) {
    return limit.map(Limit::margin).orElse(Long.MAX_VALUE);
  }
}
