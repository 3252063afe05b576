package org.jawroom.report.explain;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The section that lists every pair of guard and part in two lines: the figures, and where it
 * happens, or the tightest few in one line each.
 *
 * @param openings the range of openings that the pairs cover; empty if there are none
 */
record ExplainPairs(
    PeopleUnit unit, Machine machine, Vise vise, List<Limit> pairs, Optional<Interval> openings) {
  private static final int[] WIDTHS = {9, 10, 10, 11};
  private static final int[] BRIEF_WIDTHS = {8, 8};
  private static final int TIGHTEST = 6;

  /** In one line only an end of the opening needs saying. */
  private static final String ANY_OPENING = "at any opening, ";

  private record Line(String figures, String pair, String where) {}

  static ExplainPairs of(ExplainFacts facts) {
    Outcome outcome = facts.outcome();
    return new ExplainPairs(
        facts.unit(),
        outcome.machine(),
        outcome.vise(),
        facts.explanation().pairs(),
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
    lines.heading("Every part and guard there, tightest first");
    lines.item(
        "("
            + unit.word()
            + "; margin = gap - required - tolerance, each rounded by itself toward less"
            + " room)");
    lines.row(figures(WIDTHS, "margin", "gap", "required", "tolerance"), "from part to guard");
    for (Line line : distinct(this::figures)) {
      lines.row(line.figures, line.pair);
      lines.under(line.where);
    }
  }

  /** Adds the tightest pairs, a line each. */
  void brief(ExplainLines lines) {
    if (pairs.isEmpty()) {
      return;
    }
    lines.briefHeading("Tightest gaps (" + unit.word() + "; margin, then gap): from part to guard");
    distinct(limit -> figures(BRIEF_WIDTHS, known(limit.margin()), known(limit.gap()))).stream()
        .limit(TIGHTEST)
        .forEach(
            line ->
                lines.briefRow(
                    line.figures, line.pair + ": " + line.where.replace(ANY_OPENING, "")));
  }

  /** A length, or {@code ?} where a reading that nobody has measured leaves it without an end. */
  private String known(long length) {
    return Certainty.hasEnd(length) ? unit.fineText(length, Rounding.DOWN) : "?";
  }

  /** The strips of a turned part are one thing: the tightest of them stands for all. */
  private List<Limit> tightest() {
    Set<List<Object>> seen = new HashSet<>();
    return pairs.stream()
        .filter(
            limit ->
                limit.part().outline().isEmpty()
                    || seen.add(
                        List.of(
                            limit.part().role(),
                            limit.part().row(),
                            limit.situation(),
                            limit.guard().rank())))
        .toList();
  }

  /** The bolts of a mount are several boxes with one name; equal lines are printed once. */
  private Set<Line> distinct(Function<Limit, String> figures) {
    WhereWords where = new WhereWords(unit, machine, vise);
    Set<Line> distinct = new LinkedHashSet<>();
    tightest()
        .forEach(
            limit ->
                distinct.add(
                    new Line(
                        figures.apply(limit),
                        WhereWords.pair(limit),
                        where.of(limit, openings.orElseThrow()))));
    return distinct;
  }

  private String figures(Limit limit) {
    return figures(
        WIDTHS,
        known(limit.margin()),
        known(limit.gap()),
        unit.fineText(limit.required(), Rounding.UP),
        unit.fineText(limit.tolerance(), Rounding.UP));
  }

  /** Right-aligns by hand, because format strings write digits as the locale does. */
  private static String figures(int[] widths, String... cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.length; i++) {
      line.append(" ".repeat(Math.max(1, widths[i] - cells[i].length()))).append(cells[i]);
    }
    return line.append("  ").toString();
  }
}
