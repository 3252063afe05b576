package org.jawroom.report.compare;

import java.io.IOException;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.WrappedLines;
import org.jawroom.report.rows.PairingRow;

/** The changes, for a terminal of 80 columns: counts, then pairings. */
public final class ComparisonText implements Comparison.Reader {
  private static final int COLUMNS = 80;

  /** The indent of details and continuation lines. */
  private static final int DETAIL = 6;

  private static final int COUNT_WIDTH = 7;

  private final Comparison comparison;
  private final ComparisonWords words;
  private final Consumer<String> lines;
  private final Set<Change> begun = EnumSet.noneOf(Change.class);

  /** Of the side being listed, the machines listed as a whole. */
  private Set<String> machines = Set.of();

  private Set<String> vises = Set.of();

  private ComparisonText(Comparison comparison, PeopleUnit unit, Consumer<String> lines) {
    this.comparison = comparison;
    this.words = new ComparisonWords(unit);
    this.lines = lines;
  }

  /**
   * Writes the lines one by one, without line ends and without characters that could control a
   * terminal.
   *
   * @param old the name of the old run, for the heading
   * @param now the name of the new run, for the heading
   */
  public static void write(
      String old, String now, Comparison comparison, PeopleUnit unit, Consumer<String> lines)
      throws IOException {
    ComparisonText text = new ComparisonText(comparison, unit, lines);
    // Not wrapped, so that a path can be copied.
    lines.accept(PlainText.forTerminal("Old: " + old));
    lines.accept(PlainText.forTerminal("New: " + now));
    text.counts();
    comparison.read(text);
  }

  private void counts() {
    count(Change.WORSE, "got worse");
    count(Change.BETTER, "got better");
    countIfAny(Change.NOW_KNOWN, "now known");
    countIfAny(Change.OTHERWISE, "changed otherwise");
    count(Change.UNCHANGED, "unchanged");
    countIfAny(Change.ONLY_OLD, "only in the old");
    countIfAny(Change.ONLY_NEW, "only in the new");
  }

  private void countIfAny(Change change, String what) {
    if (comparison.count(change) > 0) {
      count(change, what);
    }
  }

  private void count(Change change, String what) {
    String digits = String.valueOf(comparison.count(change));
    lines.accept(" ".repeat(Math.max(0, COUNT_WIDTH - digits.length())) + digits + "  " + what);
  }

  @Override
  public void pair(Change change, ComparedPair pair) {
    begin(change);
    add(2, name(pair.now()) + ": " + ComparisonWords.verdicts(pair));
    String facts = words.facts(pair);
    if (!facts.isEmpty()) {
      add(DETAIL, facts);
    }
  }

  @Override
  public void only(Change side, PairingRow pairing) {
    if (begin(side)) {
      machines = new LinkedHashSet<>(comparison.machinesOnly(side));
      vises = new LinkedHashSet<>(comparison.visesOnly(side));
      machines.forEach(machine -> add(2, "machine " + machine));
      vises.forEach(vise -> add(2, "vise " + vise));
    }
    if (!machines.contains(pairing.machine()) && !vises.contains(pairing.vise())) {
      add(2, name(pairing));
    }
  }

  /** Writes the heading before the first pairing of a change. */
  private boolean begin(Change change) {
    boolean first = begun.add(change);
    if (first) {
      add(0, change.heading() + ":");
    }
    return first;
  }

  private static String name(PairingRow row) {
    return row.machine() + " x " + row.vise();
  }

  private void add(int indent, String text) {
    WrappedLines.wrapped(PlainText.forTerminal(text), indent, DETAIL, COLUMNS).forEach(lines);
  }
}
