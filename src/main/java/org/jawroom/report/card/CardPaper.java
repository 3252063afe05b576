package org.jawroom.report.card;

import java.util.Arrays;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jawroom.report.format.PeopleUnit;

/** The paper format of a card, in portrait orientation. */
public enum CardPaper {
  A4(PDRectangle.A4),
  LETTER(PDRectangle.LETTER);

  private final PDRectangle sheet;

  CardPaper(PDRectangle sheet) {
    this.sheet = sheet;
  }

  /** The usual one where people read a unit. */
  public static CardPaper of(PeopleUnit unit) {
    return unit == PeopleUnit.INCH ? LETTER : A4;
  }

  /** The one of a name, whatever its case; empty if there is none. */
  public static Optional<CardPaper> named(String name) {
    return Arrays.stream(values()).filter(paper -> paper.name().equalsIgnoreCase(name)).findFirst();
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
