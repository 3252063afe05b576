package org.jawroom.report.explain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.WhereWords;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/**
 * The section that lists every pair of guard and part in two lines: the figures, and where it
 * happens.
 *
 * @param openings the range of openings that the pairs cover; empty if there are none
 */
record ExplainPairs(
    PeopleUnit unit, Machine machine, Vise vise, List<Limit> pairs, Optional<Interval> openings) {
  private static final int[] WIDTHS = {9, 10, 10, 11};

  private record Line(String figures, String pair, String where) {}

  static ExplainPairs of(PeopleUnit unit, Explanation explanation) {
    Outcome outcome = explanation.advice().outcome();
    return new ExplainPairs(
        unit,
        outcome.machine(),
        outcome.vise(),
        explanation.pairs(),
        outcome.recommended().map(Recommendation::openings));
  }

  static ExplainPairs of(PeopleUnit unit, JobExplanation explanation) {
    JobOutcome outcome = explanation.outcome();
    return new ExplainPairs(
        unit,
        outcome.machine(),
        outcome.vise(),
        explanation.pairs(),
        outcome.place().map(Recommendation::openings));
  }

  void to(ExplainLines lines) {
    if (pairs.isEmpty()) {
      return;
    }
    WhereWords where = new WhereWords(unit, machine, vise);
    lines.heading("Every part and guard there, tightest first");
    lines.item(
        "("
            + unit.word()
            + "; margin = gap - required - tolerance, each rounded by itself toward less"
            + " room)");
    lines.row(figures("margin", "gap", "required", "tolerance"), "from part to guard");
    // The bolts of a mount are several boxes with one name; equal lines are printed once.
    Set<Line> distinct = new LinkedHashSet<>();
    pairs.forEach(
        limit ->
            distinct.add(
                new Line(
                    figures(limit),
                    WhereWords.pair(limit),
                    where.of(limit, openings.orElseThrow()))));
    for (Line line : distinct) {
      lines.row(line.figures, line.pair);
      lines.under(line.where);
    }
  }

  private String figures(Limit limit) {
    return figures(
        unit.fineText(limit.margin(), Rounding.DOWN), unit.fineText(limit.gap(), Rounding.DOWN),
        unit.fineText(limit.required(), Rounding.UP),
            unit.fineText(limit.tolerance(), Rounding.UP));
  }

  /** Right-aligns by hand, because format strings write digits as the locale does. */
  private static String figures(String... cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.length; i++) {
      line.append(" ".repeat(Math.max(1, WIDTHS[i] - cells[i].length()))).append(cells[i]);
    }
    return line.append("  ").toString();
  }
}
