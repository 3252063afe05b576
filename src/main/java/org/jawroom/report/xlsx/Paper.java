package org.jawroom.report.xlsx;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.jawroom.report.format.PeopleUnit;

/**
 * How sheets are printed: landscape, fitted wide, headings on every page; A4, or Letter with
 * inches.
 */
public final class Paper {

  /** Characters of 10 points across a page that is still read without a glass. */
  private static final int WIDEST = 215;

  /** Points across a page between its margins, and down it with something to spare. */
  private static final double A4_ACROSS = 784;

  private static final double A4_DOWN = 495;
  private static final double LETTER_ACROSS = 734;
  private static final double LETTER_DOWN = 510;

  /** Points across a character of 10 points. */
  private static final double CHARACTER = 5.25;

  private Paper() {}

  /** How many pages a sheet of that many characters is fitted to, side by side. */
  public static int across(int width) {
    return Math.min(Short.MAX_VALUE, 1 + (width - 1) / WIDEST);
  }

  /** Points of rows that a page holds which shows {@code width} characters side by side. */
  public static double down(PeopleUnit unit, int width) {
    boolean letter = unit == PeopleUnit.INCH;
    double scale = Math.min(1, (letter ? LETTER_ACROSS : A4_ACROSS) / (width * CHARACTER));
    return (letter ? LETTER_DOWN : A4_DOWN) / scale;
  }

  /**
   * Sets the sheet up.
   *
   * @param first row to repeat, down to {@code last}; none if negative
   * @param headColumns how many columns on the left to repeat
   * @param width characters across the whole sheet
   */
  public static void set(
      Sheet sheet, PeopleUnit unit, int first, int last, int headColumns, int width) {
    PrintSetup setup = sheet.getPrintSetup();
    setup.setLandscape(true);
    setup.setPaperSize(
        unit == PeopleUnit.INCH ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
    sheet.setFitToPage(true);
    setup.setFitWidth((short) across(width));
    setup.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setMargin(PageMargin.TOP, 0.5);
    sheet.setMargin(PageMargin.BOTTOM, 0.6);
    sheet.getFooter().setLeft("&8Does not replace the check on the machine: see Cautions");
    sheet.getFooter().setRight("&8&A, page &P of &N");
    if (first >= 0) {
      sheet.setRepeatingRows(new CellRangeAddress(first, last, -1, -1));
    }
    if (headColumns > 0) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, headColumns - 1));
    }
  }
}
