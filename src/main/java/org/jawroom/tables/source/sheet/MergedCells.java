package org.jawroom.tables.source.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.jawroom.tables.source.grid.Grid;

/**
 * The merged cells of a sheet. All but the first of a range are blank in the file, though it is
 * displayed as one cell for all of them.
 */
final class MergedCells {

  /** Far more than anybody merges by hand. */
  private static final int MOST = 10_000;

  /** Both corners are included. */
  record Range(String written, CellPlace first, CellPlace last) {
    private boolean isOneCell() {
      return first.equals(last);
    }
  }

  private final List<Range> ranges = new ArrayList<>();
  private boolean tooMany;

  /** Adds a range written as {@code A2:B5}; ignores any other text. */
  void add(String written) {
    int colon = written.indexOf(':');
    if (colon < 0) {
      return;
    }
    if (ranges.size() == MOST) {
      tooMany = true;
      return;
    }
    Optional<CellPlace> first = CellPlace.of(written.substring(0, colon));
    Optional<CellPlace> last = CellPlace.of(written.substring(colon + 1));
    if (first.isPresent() && last.isPresent()) {
      ranges.add(new Range(written, first.get(), last.get()));
    }
  }

  /** Whether the limit on their number is exceeded. */
  boolean areTooMany() {
    return tooMany;
  }

  /** Those that overlap the filled rows and columns from the header row on. */
  List<Range> in(NavigableMap<Integer, Grid.Row> rows) {
    if (rows.isEmpty()) {
      return List.of();
    }
    int left = Integer.MAX_VALUE;
    int right = 0;
    for (Grid.Row row : rows.values()) {
      left = Math.min(left, row.cells().firstKey());
      right = Math.max(right, row.cells().lastKey());
    }
    int from = left;
    int to = right;
    return ranges.stream()
        .filter(range -> !range.isOneCell())
        .filter(range -> range.first.row() <= rows.lastKey() && range.last.row() >= rows.firstKey())
        .filter(range -> range.first.column() <= to && range.last.column() >= from)
        .toList();
  }
}
