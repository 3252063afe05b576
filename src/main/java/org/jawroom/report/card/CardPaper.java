package org.jawroom.report.card;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** What a card is printed on, upright. */
public enum CardPaper {
  A4(PDRectangle.A4),
  LETTER(PDRectangle.LETTER);

  private final PDRectangle sheet;

  CardPaper(PDRectangle sheet) {
    this.sheet = sheet;
  }

  PDRectangle sheet() {
    return sheet;
  }

  /** Points. */
  double width() {
    return sheet.getWidth();
  }

  double height() {
    return sheet.getHeight();
  }
}
