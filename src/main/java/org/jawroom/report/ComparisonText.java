package org.jawroom.report;

import java.util.ArrayList;
import java.util.List;

/** What changed, for people at a terminal of 80 columns: how many, then which. */
public final class ComparisonText {

  /** The changes whose pairings are listed, in this order. */
  static final List<Change> LISTED =
      List.of(Change.WORSE, Change.BETTER, Change.NOW_KNOWN, Change.OTHERWISE);

  private static final int COLUMNS = 80;

  /** Blanks before what is told of a pairing, and before every line that goes on. */
  private static final int DETAIL = 6;

  private static final int COUNT_WIDTH = 7;

  private final Comparison comparison;
  private final ComparisonWords words;
  private final List<String> lines = new ArrayList<>();

  private ComparisonText(Comparison comparison, PeopleUnit unit) {
    this.comparison = comparison;
    this.words = new ComparisonWords(unit);
  }

  /**
   * The lines, without line ends and without anything that could steer a terminal.
   *
   * @param old what the old is, for the heading; {@code now} likewise
   */
  public static List<String> lines(String old, String now, Comparison comparison, PeopleUnit unit) {
    ComparisonText text = new ComparisonText(comparison, unit);
    // Not broken, so that a path can be copied.
    text.lines.add(PlainText.forTerminal("Old: " + old));
    text.lines.add(PlainText.forTerminal("New: " + now));
    text.counts();
    LISTED.forEach(text::changed);
    text.only(Change.ONLY_OLD);
    text.only(Change.ONLY_NEW);
    return text.lines;
  }

  private void counts() {
    count(comparison.pairs(Change.WORSE).size(), "got worse");
    count(comparison.pairs(Change.BETTER).size(), "got better");
    countIfAny(comparison.pairs(Change.NOW_KNOWN).size(), "now known");
    countIfAny(comparison.pairs(Change.OTHERWISE).size(), "changed otherwise");
    count(comparison.pairs(Change.UNCHANGED).size(), "unchanged");
    countIfAny(comparison.only(Change.ONLY_OLD).size(), "only in the old");
    countIfAny(comparison.only(Change.ONLY_NEW).size(), "only in the new");
  }

  private void countIfAny(int number, String what) {
    if (number > 0) {
      count(number, what);
    }
  }

  private void count(int number, String what) {
    String digits = String.valueOf(number);
    lines.add(" ".repeat(Math.max(0, COUNT_WIDTH - digits.length())) + digits + "  " + what);
  }

  private void changed(Change change) {
    List<ComparedPair> pairs = comparison.pairs(change);
    if (pairs.isEmpty()) {
      return;
    }
    add(0, change.heading() + ":");
    for (ComparedPair pair : pairs) {
      add(2, name(pair.now()) + ": " + ComparisonWords.verdicts(pair));
      String facts = words.facts(pair);
      if (!facts.isEmpty()) {
        add(DETAIL, facts);
      }
    }
  }

  private void only(Change side) {
    List<PairingRow> rows = comparison.only(side);
    if (rows.isEmpty()) {
      return;
    }
    add(0, side.heading() + ":");
    List<String> machines = comparison.machinesOnly(side);
    List<String> vises = comparison.visesOnly(side);
    machines.forEach(machine -> add(2, "machine " + machine));
    vises.forEach(vise -> add(2, "vise " + vise));
    rows.stream()
        .filter(row -> !machines.contains(row.machine()) && !vises.contains(row.vise()))
        .forEach(row -> add(2, name(row)));
  }

  private static String name(PairingRow row) {
    return row.machine() + " x " + row.vise();
  }

  private void add(int indent, String text) {
    lines.addAll(WrappedLines.wrapped(PlainText.forTerminal(text), indent, DETAIL, COLUMNS));
  }
}
