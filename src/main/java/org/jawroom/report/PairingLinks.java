package org.jawroom.report;

import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** Links from the cells of one sheet to the rows of <i>Pairings</i>, as many as a sheet holds. */
final class PairingLinks {
  private final SXSSFWorkbook book;
  private final SheetLimits limits;
  private int made;

  PairingLinks(SXSSFWorkbook book, SheetLimits limits) {
    this.book = book;
    this.limits = limits;
  }

  /** Links {@code cell} to the pairing of that index, if it has a row. */
  void add(Cell cell, int pairing) {
    if (made >= limits.links() || pairing >= PairingsSheet.room(limits)) {
      return;
    }
    Hyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(PairingsSheet.NAME + "!" + PairingsSheet.address(pairing));
    cell.setHyperlink(link);
    made++;
  }
}
