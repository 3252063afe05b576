package org.jawroom.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jawroom.placement.Outcome;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;

/**
 * Pairings counted in groups.
 *
 * @param counts how many there are of each finding
 * @param leastMargin of the best margins in the group, {@code greatestMargin} likewise;
 *     half-nanometres, empty where no pairing has one
 */
record Tally(Map<Finding, Integer> counts, OptionalLong leastMargin, OptionalLong greatestMargin) {

  private static final String PAIRING = "pairing";

  /** Not "group", which the library takes for itself. */
  private static final String GROUP = "whose";

  private static final String FINDING = "finding";
  private static final String MARGIN = "margin";

  Tally {
    counts = Map.copyOf(counts);
  }

  int count(Finding finding) {
    return counts.getOrDefault(finding, 0);
  }

  int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** All tallies, by group; {@code groups} has the group of each outcome. */
  static Map<Integer, Tally> of(List<Outcome> outcomes, List<Integer> groups) {
    Map<Integer, Tally> tallies = new TreeMap<>();
    if (outcomes.isEmpty()) {
      return tallies;
    }
    Table table = table(outcomes, groups);
    Map<Integer, Map<Finding, Integer>> counts = counts(table);
    String least = AggregateFunctions.min.functionName() + " [" + MARGIN + "]";
    String greatest = AggregateFunctions.max.functionName() + " [" + MARGIN + "]";
    for (Row row :
        table.summarize(MARGIN, AggregateFunctions.min, AggregateFunctions.max).by(GROUP)) {
      int group = row.getInt(GROUP);
      tallies.put(group, new Tally(counts.get(group), margin(row, least), margin(row, greatest)));
    }
    return tallies;
  }

  /**
   * Margins are below 2^53 half-nanometres (4 500 km), so doubles hold them exactly; groups are
   * numbers, since names may hold anything.
   */
  private static Table table(List<Outcome> outcomes, List<Integer> groups) {
    IntColumn group =
        IntColumn.create(GROUP, groups.stream().mapToInt(Integer::intValue).toArray());
    IntColumn findings = IntColumn.create(FINDING);
    DoubleColumn margins = DoubleColumn.create(MARGIN);
    for (Outcome outcome : outcomes) {
      findings.append(Finding.of(outcome).ordinal());
      if (outcome.bestMargin().isPresent()) {
        // Of a long the column would make a float, which is too coarse for half-nanometres.
        margins.append((double) outcome.bestMargin().getAsLong());
      } else {
        margins.appendMissing();
      }
    }
    return Table.create(
        IntColumn.indexColumn(PAIRING, outcomes.size(), 0), group, findings, margins);
  }

  private static Map<Integer, Map<Finding, Integer>> counts(Table table) {
    Map<Integer, Map<Finding, Integer>> counts = new TreeMap<>();
    Table counted = table.summarize(PAIRING, AggregateFunctions.count).by(GROUP, FINDING);
    String number = AggregateFunctions.count.functionName() + " [" + PAIRING + "]";
    for (Row row : counted) {
      counts
          .computeIfAbsent(row.getInt(GROUP), group -> new EnumMap<>(Finding.class))
          .put(Finding.values()[row.getInt(FINDING)], (int) row.getNumber(number));
    }
    return counts;
  }

  private static OptionalLong margin(Row row, String column) {
    double margin = row.getNumber(column);
    return Double.isFinite(margin) ? OptionalLong.of((long) margin) : OptionalLong.empty();
  }
}
