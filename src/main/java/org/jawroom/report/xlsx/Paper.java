package org.jawroom.report.xlsx;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.jawroom.report.format.PeopleUnit;

/**
 * The page setup of sheets: landscape, fitted to width, header rows on every page; A4, or Letter
 * with inches.
 */
public final class Paper {

  /** The largest number of characters of 10 points across a page that is still legible. */
  private static final int WIDEST = 215;

  /** The printable width of a page in points, and its height with a reserve. */
  private static final double A4_ACROSS = 784;

  private static final double A4_DOWN = 495;
  private static final double LETTER_ACROSS = 734;
  private static final double LETTER_DOWN = 510;

  /** The average width of a character of 10 points, in points. */
  private static final double CHARACTER = 5.25;

  private Paper() {}

  /** The number of pages side by side for a sheet of that many characters. */
  public static int across(int width) {
    return Math.min(Short.MAX_VALUE, 1 + (width - 1) / WIDEST);
  }

  /** The height of rows, in points, on a page that shows {@code width} characters side by side. */
  public static double down(PeopleUnit unit, int width) {
    boolean letter = unit == PeopleUnit.INCH;
    double scale = Math.min(1, (letter ? LETTER_ACROSS : A4_ACROSS) / (width * CHARACTER));
    return (letter ? LETTER_DOWN : A4_DOWN) / scale;
  }

  /**
   * Sets up the pages of the sheet.
   *
   * @param first row to repeat, through {@code last}; none if negative
   * @param headColumns the number of columns on the left to repeat
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
