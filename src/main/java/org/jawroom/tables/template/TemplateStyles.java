package org.jawroom.tables.template;

import java.awt.Color;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.Need;

/** The cell styles of a template, created once for each workbook. */
final class TemplateStyles {
  private static final Color PAPER = Color.WHITE;
  private static final Color INK = new Color(0x2B, 0x37, 0x3D);
  private static final Color GREY = new Color(0x8A, 0x94, 0x9A);
  private static final Color LINE = new Color(0xC9, 0xD0, 0xD4);
  private static final Color REQUIRED = new Color(0x1F, 0x4E, 0x5F);
  private static final Color UNKNOWN = new Color(0xE9, 0xC4, 0x6A);
  private static final Color OPTIONAL = new Color(0xE3, 0xE8, 0xEB);

  private final XSSFWorkbook workbook;
  private final XSSFCellStyle required;
  private final XSSFCellStyle unknown;
  private final XSSFCellStyle optional;
  private final XSSFCellStyle text;
  private final XSSFCellStyle number;
  private final XSSFCellStyle worked;
  private final XSSFCellStyle title;
  private final XSSFCellStyle words;
  private final XSSFCellStyle listed;

  TemplateStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    required = heading(REQUIRED, PAPER);
    unknown = heading(UNKNOWN, INK);
    optional = heading(OPTIONAL, INK);
    number = style(font(10, INK));
    number.setAlignment(HorizontalAlignment.LEFT);
    text = style(font(10, INK));
    text.setDataFormat(workbook.createDataFormat().getFormat("@"));
    XSSFFont italic = font(10, GREY);
    italic.setItalic(true);
    worked = style(italic);
    worked.setDataFormat(workbook.createDataFormat().getFormat("@"));
    XSSFFont large = font(16, INK);
    large.setBold(true);
    title = style(large);
    words = style(font(10, INK));
    words.setWrapText(true);
    listed = style(font(10, INK));
    listed.setWrapText(true);
    listed.setVerticalAlignment(VerticalAlignment.TOP);
    listed.setBorderBottom(BorderStyle.HAIR);
    listed.setBottomBorderColor(new XSSFColor(LINE, null));
  }

  /** For a heading; the colour shows how a blank below it is treated. */
  XSSFCellStyle heading(Need need) {
    return switch (need) {
      case REQUIRED -> required;
      case UNKNOWN_IF_BLANK -> unknown;
      case OPTIONAL -> optional;
    };
  }

  /**
   * For an empty cell: text format, so that 1/4 stays 1/4 and no name turns into a date; the
   * general format only where nothing but a number is allowed.
   */
  XSSFCellStyle entry(CellKind kind) {
    return kind.isPlainNumber() ? number : text;
  }

  /** For a worked row: grey. */
  XSSFCellStyle worked() {
    return worked;
  }

  XSSFCellStyle title() {
    return title;
  }

  /** For running text, wrapped. */
  XSSFCellStyle words() {
    return words;
  }

  /** For a cell of the legend's list of columns. */
  XSSFCellStyle listed() {
    return listed;
  }

  private XSSFCellStyle heading(Color fill, Color ink) {
    XSSFFont font = font(10, ink);
    font.setBold(true);
    XSSFCellStyle style = style(font);
    style.setFillForegroundColor(new XSSFColor(fill, null));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setWrapText(true);
    style.setAlignment(HorizontalAlignment.CENTER);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setBorderRight(BorderStyle.THIN);
    style.setRightBorderColor(new XSSFColor(PAPER, null));
    return style;
  }

  private XSSFCellStyle style(XSSFFont font) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    return style;
  }

  private XSSFFont font(int points, Color colour) {
    XSSFFont font = workbook.createFont();
    font.setFontName("Calibri");
    font.setFontHeightInPoints((short) points);
    font.setColor(
        new XSSFColor(
            new byte[] {(byte) colour.getRed(), (byte) colour.getGreen(), (byte) colour.getBlue()},
            null));
    return font;
  }
}
