package org.jawroom.report.matrix;

import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.SheetLimits;

/**
 * Links from cells of one sheet to the rows of <i>Pairings</i>, or to the drawing if there is one,
 * up to the limit of a sheet.
 */
final class PairingLinks {
  private final SXSSFWorkbook book;
  private final SheetLimits limits;
  private final DrawnPairings drawn;
  private int made;

  PairingLinks(SXSSFWorkbook book, SheetLimits limits, DrawnPairings drawn) {
    this.book = book;
    this.limits = limits;
    this.drawn = drawn;
  }

  /** Links {@code cell} to the pairing with that index if it has a drawing or a row. */
  void add(Cell cell, int pairing) {
    Integer drawing = drawn.order().get(pairing);
    if (made >= limits.links() || (drawing == null && pairing >= ListSheet.room(limits))) {
      return;
    }
    Hyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(
        drawing != null
            ? DrawingsSheet.NAME + "!" + DrawingsSheet.address(drawing)
            : PairingsSheet.NAME + "!" + PairingsSheet.address(pairing));
    cell.setHyperlink(link);
    made++;
  }
}
