package org.jawroom.report.card;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The paper format of a card, in portrait orientation. */
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

  /** The width in points. */
  double width() {
    return sheet.getWidth();
  }

  double height() {
    return sheet.getHeight();
  }
}
