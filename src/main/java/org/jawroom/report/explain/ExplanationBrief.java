package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.wording.CaveatWords;

/**
 * The explanation of one pairing that is read in a minute: at most {@value #MOST} lines. Sections
 * that only help are left out, the least important first, where all together would be longer.
 */
public final class ExplanationBrief {
  static final int MOST = 40;

  /** Also how many lines a single one may take. */
  private static final int MOST_WARNINGS = 2;

  /**
   * One section.
   *
   * @param rank those of the highest rank are left out first; 0 stays
   */
  private record Section(int rank, ExplainLines lines) {}

  private final ExplainFacts facts;
  private final int columns;
  private final List<Section> sections = new ArrayList<>();

  private ExplanationBrief(ExplainFacts facts, int columns) {
    this.facts = facts;
    this.columns = columns;
  }

  /**
   * Returns the lines, without line ends.
   *
   * @param columns the most characters in a line
   */
  public static List<String> lines(ExplainFacts facts, int columns) {
    ExplanationBrief brief = new ExplanationBrief(facts, columns);
    ExplainPlace place = new ExplainPlace(facts);
    ExplainRemedies remedies = new ExplainRemedies(facts);
    brief.add(0, brief::verdict);
    brief.add(0, place::brief);
    brief.add(0, remedies::brief);
    brief.add(2, remedies::briefInstead);
    brief.add(0, ExplainPairs.of(facts)::brief);
    brief.add(1, new ExplainChoices(facts)::brief);
    brief.add(0, brief::cautions);
    return brief.fitted().all();
  }

  private void add(int rank, Consumer<ExplainLines> writer) {
    ExplainLines lines = new ExplainLines(columns);
    writer.accept(lines);
    sections.add(new Section(rank, lines));
  }

  private void verdict(ExplainLines lines) {
    Outcome outcome = facts.outcome();
    ExplainVerdict verdict = new ExplainVerdict(facts);
    lines.add(outcome.machine().name() + " x " + outcome.vise().name(), 1);
    lines.add(verdict.sentence(), 3);
    verdict.margin().ifPresent(margin -> lines.add(margin, 2));
    verdict.bounds().ifPresent(bounds -> lines.add(bounds, 2));
    verdict.cautions().forEach(caution -> lines.add("! " + caution, 2));
    CaveatWords.checked(outcome).ifPresent(who -> lines.add(who, 1));
  }

  private void cautions(ExplainLines lines) {
    lines.blank();
    Outcome outcome = facts.outcome();
    List<String> warnings = facts.warnings();
    int each = warnings.size() == 1 ? MOST_WARNINGS : 1;
    warnings.stream()
        .limit(MOST_WARNINGS)
        .forEach(warning -> lines.add("Looks wrong: " + warning, each));
    ExplanationText.cautions(outcome.machine(), outcome.vise())
        .forEach(caution -> lines.add(caution, 2));
    int more = warnings.size() - MOST_WARNINGS;
    lines.add(
        "--all prints every gap, remedy and mount"
            + (more > 0
                ? ", and " + more + " more that look" + (more == 1 ? "s" : "") + " wrong"
                : "")
            + ".",
        1);
  }

  private ExplainLines fitted() {
    int rank = sections.stream().mapToInt(Section::rank).max().orElse(0);
    while (rank > 0 && upTo(rank).count() > MOST) {
      rank--;
    }
    return upTo(rank);
  }

  private ExplainLines upTo(int rank) {
    ExplainLines all = new ExplainLines(columns);
    sections.stream()
        .filter(section -> section.rank <= rank)
        .forEach(section -> all.addAll(section.lines));
    return all;
  }
}
