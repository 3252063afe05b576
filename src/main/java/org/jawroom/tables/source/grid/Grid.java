package org.jawroom.tables.source.grid;

import java.util.List;
import java.util.NavigableMap;
import org.jawroom.tables.schema.TableSpec;

/**
 * One table as its file or sheet has it.
 *
 * @param origin for people: {@code machines.csv}, {@code sheet machines}
 * @param header the first row that is not blank
 * @param rows the other rows that are not blank, in file order
 */
public record Grid(TableSpec table, String origin, Row header, List<Row> rows) {

  /** The limits on columns of a table and characters of a cell: those of a workbook's sheet. */
  public static final int MOST_COLUMNS = 16_384;

  public static final int LONGEST_CELL = 32_767;

  /** Far more than any shop needs; further rows are not read. */
  public static final int MOST_ROWS = 100_000;

  public static final String TOO_MANY_COLUMNS = "has more than 16384 cells";

  public static final String TOO_LONG_A_CELL = "has a cell of more than 32767 characters";

  public static final String TOO_MANY_ROWS =
      "is beyond the 100000 rows that a table may have; split it off";

  public Grid {
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param number as shown in the file: in a workbook the sheet's row, in CSV the line on which the
   *     record starts, the first being 1
   * @param width the number of cells, including blank ones
   * @param cells those that are not blank, by column, the first being 0
   */
  public record Row(int number, int width, NavigableMap<Integer, Cell> cells) {}
}
