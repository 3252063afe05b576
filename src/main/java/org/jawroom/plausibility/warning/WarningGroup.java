package org.jawroom.plausibility.warning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Warnings about the same rows of one table. Equal warnings about several rows count as one.
 *
 * @param rows in input order
 * @param warnings each about all of these rows, named for the first of them, most serious first
 */
public record WarningGroup(String table, List<String> rows, List<Warning> warnings) {

  /** How many rows are named. */
  private static final int NAMED = 20;

  private static final Comparator<Warning> MOST_SERIOUS =
      Comparator.comparing(Warning::seriousness);

  /** What makes warnings about different rows equal. */
  private record Matter(Seriousness seriousness, String table, String column, String text) {}

  private record Rows(String table, List<String> names) {}

  public WarningGroup {
    rows = List.copyOf(rows);
    warnings = List.copyOf(warnings);
  }

  /** Groups warnings; the group with the most serious one comes first, else the first in order. */
  public static List<WarningGroup> of(List<Warning> warnings) {
    Map<Matter, List<Warning>> equal = new LinkedHashMap<>();
    for (Warning one : warnings) {
      Matter matter = new Matter(one.seriousness(), one.table(), one.column(), one.text());
      equal.computeIfAbsent(matter, first -> new ArrayList<>()).add(one);
    }
    Map<Rows, List<Warning>> byRows = new LinkedHashMap<>();
    for (List<Warning> same : equal.values()) {
      Rows rows = new Rows(same.get(0).table(), same.stream().map(Warning::row).toList());
      byRows.computeIfAbsent(rows, first -> new ArrayList<>()).add(same.get(0));
    }
    return byRows.entrySet().stream()
        .map(
            entry ->
                new WarningGroup(
                    entry.getKey().table,
                    entry.getKey().names,
                    entry.getValue().stream().sorted(MOST_SERIOUS).toList()))
        .sorted(Comparator.comparing(group -> group.warnings.get(0), MOST_SERIOUS))
        .toList();
  }

  /** {@code machines knee mill, bed mill}; of very many rows the first. */
  public String heading() {
    return table + " " + names(", ");
  }

  /** Each warning in one line: {@code machines, knee mill; bed mill, rear_gap: …}. */
  public List<String> lines() {
    return warnings.stream()
        .map(one -> table + ", " + names("; ") + ", " + one.column() + ": " + one.text())
        .toList();
  }

  private String names(String between) {
    int more = rows.size() - NAMED;
    return more <= 0
        ? String.join(between, rows)
        : String.join(between, rows.subList(0, NAMED)) + " and " + more + " more";
  }
}
