package org.jawroom.tables.row;

import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Numerals;
import org.jawroom.tables.source.grid.Cell;

/**
 * The decimal sign of an input. Numeric cells of a workbook have a point, whatever the setting.
 *
 * @param comma whether text has a decimal comma
 */
record DecimalSign(boolean comma) {

  boolean isCommaIn(Cell cell) {
    return comma && cell.kind() != Cell.Kind.NUMBER;
  }

  /**
   * The text of a cell.
   *
   * @throws BadCell if its point could be a thousands separator
   */
  String unambiguous(Cell cell, boolean price) throws BadCell {
    if (cell.kind() != Cell.Kind.NUMBER && !comma) {
      Numerals.refuseThousands(cell.text(), price);
    }
    return cell.text();
  }
}
