package org.jawroom.report;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.Outcome;

/** The section that lists every guard and part, two lines each: the figures, and where it happens. */
record ExplainPairs(PeopleUnit unit, Explanation explanation) {
  private static final int[] WIDTHS = {9, 10, 10, 11};

  private record Line(String figures, String pair, String where) {}

  void to(ExplainLines lines) {
    if (explanation.pairs().isEmpty()) {
      return;
    }
    Outcome outcome = explanation.advice().outcome();
    Interval openings = outcome.recommended().orElseThrow().openings();
    WhereWords where = new WhereWords(unit, outcome.machine(), outcome.vise());
    lines.heading("Every part and guard there, tightest first");
    lines.item("(" + unit.word() + "; margin = gap - required - tolerance, each rounded by itself toward less"
        + " room)");
    lines.row(figures("margin", "gap", "required", "tolerance"), "from part to guard");
    // The bolts of a mount are several boxes of one name; as far as they say the same, once is enough.
    Set<Line> told = new LinkedHashSet<>();
    explanation.pairs().forEach(
        limit -> told.add(new Line(figures(limit), WhereWords.pair(limit), where.of(limit, openings))));
    for (Line line : told) {
      lines.row(line.figures, line.pair);
      lines.under(line.where);
    }
  }

  private String figures(Limit limit) {
    return figures(
        unit.fineText(limit.margin(), Rounding.DOWN), unit.fineText(limit.gap(), Rounding.DOWN),
        unit.fineText(limit.required(), Rounding.UP), unit.fineText(limit.tolerance(), Rounding.UP));
  }

  /** Set to the right; by hand, since formats write digits as the locale likes them. */
  private static String figures(String... cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.length; i++) {
      line.append(" ".repeat(Math.max(1, WIDTHS[i] - cells[i].length()))).append(cells[i]);
    }
    return line.append("  ").toString();
  }
}
