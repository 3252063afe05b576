package org.jawroom.report.survey.count;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.limits.Margins;
import tech.tablesaw.selection.Selection;

/**
 * Rows counted together where all the columns asked for have the same cells; blank cells are alike,
 * too. The group with the most rows comes first, of equals the one that starts first.
 */
public final class RowGroups {
  private final SurveyRows rows;
  private final List<String> by;

  /** The rows group by group. */
  private final int[] sorted;

  /** Where each group starts in {@link #sorted}, and the end of the last. */
  private final int[] starts;

  /** The groups in their order, each in the lower half of its number. */
  private final long[] order;

  /** A row's group by the columns so far, and its cell in the next one. */
  private record Key(int group, Object cell) {}

  private RowGroups(SurveyRows rows, List<String> by, int[] chosen, int[] groupOf, int count) {
    this.rows = rows;
    this.by = by;
    starts = new int[count + 1];
    for (int group : groupOf) {
      starts[group + 1]++;
    }
    for (int group = 0; group < count; group++) {
      starts[group + 1] += starts[group];
    }
    int[] next = Arrays.copyOf(starts, count);
    sorted = new int[chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      sorted[next[groupOf[i]]++] = chosen[i];
    }
    order = new long[count];
    for (int group = 0; group < count; group++) {
      order[group] = (long) -(starts[group + 1] - starts[group]) << Integer.SIZE | group;
    }
    Arrays.sort(order);
  }

  static RowGroups of(SurveyRows rows, Selection chosen, List<String> by) {
    int[] all = chosen.toArray();
    int[] groupOf = new int[all.length];
    int count = all.length == 0 ? 0 : 1;
    for (String column : by) {
      Map<Key, Integer> groups = new HashMap<>();
      for (int i = 0; i < all.length; i++) {
        Object cell =
            rows.isLength(column) ? rows.length(column, all[i]) : rows.text(column, all[i]);
        Integer fresh = groups.size();
        Integer known = groups.putIfAbsent(new Key(groupOf[i], cell), fresh);
        groupOf[i] = known == null ? fresh : known;
      }
      count = groups.size();
    }
    return new RowGroups(rows, by, all, groupOf, count);
  }

  public int size() {
    return order.length;
  }

  /**
   * One group.
   *
   * @param words the cells that its rows share; lengths in millimetres
   * @param margins without those that are blank
   */
  public record Group(List<String> words, int pairings, int comfortable, Margins margins) {}

  /** The group of that rank, from 0. */
  public Group group(int rank) {
    int group = (int) order[rank];
    Margins margins = new Margins();
    int comfortable = 0;
    for (int i = starts[group]; i < starts[group + 1]; i++) {
      rows.margin(sorted[i]).ifPresent(margins::add);
      comfortable += rows.comfortable().contains(sorted[i]) ? 1 : 0;
    }
    int first = sorted[starts[group]];
    return new Group(
        by.stream().map(column -> word(column, first)).toList(),
        starts[group + 1] - starts[group],
        comfortable,
        margins);
  }

  private String word(String column, int row) {
    if (!rows.isLength(column)) {
      return rows.text(column, row);
    }
    OptionalLong length = rows.length(column, row);
    return length.isPresent() ? Figures.millimetres(length.getAsLong(), Rounding.DOWN) : "";
  }
}
