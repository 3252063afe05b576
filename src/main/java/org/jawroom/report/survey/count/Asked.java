package org.jawroom.report.survey.count;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a survey is asked for.
 *
 * @param by the columns by whose cells pairings are counted together; at least one
 * @param where all of them choose a pairing
 * @param comfort the least margin of a comfortable vise, in half-nanometres
 */
public record Asked(List<String> by, List<Condition> where, long comfort) {
  public Asked {
    by = by.stream().distinct().toList();
    where = List.copyOf(where);
    if (by.isEmpty()) {
      throw new IllegalArgumentException("no columns to count by");
    }
  }

  /** The columns that must be kept for it. */
  public Set<String> columns() {
    Set<String> columns = new LinkedHashSet<>(by);
    where.forEach(condition -> columns.add(condition.column()));
    return columns;
  }
}
