package org.jawroom.tables.fill;

import org.jawroom.tables.schema.TableSpec;

/**
 * A cell and what is to stand in it.
 *
 * @param origin the file or sheet
 * @param row as the file shows it; {@code column} from 0
 */
record FilledCell(TableSpec table, String origin, int row, int column, String text) {

  /** The same for two figures of one cell. */
  String place() {
    return table + " " + row + " " + column;
  }
}
