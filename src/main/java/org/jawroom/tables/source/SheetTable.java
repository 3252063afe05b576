package org.jawroom.tables.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Sheet;
import org.jawroom.tables.schema.TableSpec;

/** One sheet of a workbook; its header is the first row that is not blank. */
final class SheetTable {
  private SheetTable() {}

  /** The grid; empty, with a fault, if the sheet is blank. */
  static Optional<Grid> read(TableSpec table, Sheet sheet, FaultList faults) {
    String origin = "sheet " + sheet.getSheetName();
    List<Grid.Row> rows = new ArrayList<>();
    for (org.apache.poi.ss.usermodel.Row row : sheet) {
      if (rows.size() > Grid.MOST_ROWS) {
        faults.add(table, origin, row.getRowNum() + 1, "", "", Grid.TOO_MANY_ROWS);
        break;
      }
      SortedMap<Integer, Cell> filled = new TreeMap<>();
      for (org.apache.poi.ss.usermodel.Cell cell : row) {
        Cell read = SheetCell.read(cell);
        if (!read.isBlank()) {
          filled.put(cell.getColumnIndex(), read);
        }
      }
      if (!filled.isEmpty()) {
        rows.add(new Grid.Row(row.getRowNum() + 1, filled.lastKey() + 1, filled));
      }
    }
    if (rows.isEmpty()) {
      faults.add(table, origin, "", "is empty; give it a header row, or take it away");
      return Optional.empty();
    }
    return Optional.of(new Grid(table, origin, rows.get(0), rows.subList(1, rows.size())));
  }
}
