package org.jawroom.report.xlsx;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.wording.Finding;

/** The cell styles of the workbook, each created once. */
public final class Styles {
  public static final String INK = "1A1A1A";
  static final String FAINT = "666666";
  private static final String LINE = "8C8C8C";
  private static final String HAIR = "D0D0D0";
  private static final String HEADING = "E6E6E6";

  /** The ratio of line height to type size, in the sizes below. */
  private static final float LEADING = 1.42f;

  /** Spreadsheets refuse rows of more than 409 points. */
  private static final float TALLEST = 400;

  private final XSSFWorkbook book;
  private final PeopleUnit unit;
  private final Map<String, XSSFCellStyle> made = new HashMap<>();
  private final Map<String, XSSFFont> fonts = new HashMap<>();

  public Styles(XSSFWorkbook book, PeopleUnit unit) {
    this.book = book;
    this.unit = unit;
    XSSFFont first = book.getFontAt(0);
    first.setFontName("Arial");
    first.setFontHeightInPoints((short) 10);
  }

  /** The height of a row with {@code lines} lines of {@code points}, up to the permitted height. */
  public static float height(int lines, int points) {
    return Math.min(TALLEST, lines * points * LEADING + 7);
  }

  public PeopleUnit unit() {
    return unit;
  }

  public XSSFCellStyle title() {
    return made.computeIfAbsent("title", key -> text(16, true, INK, false));
  }

  public XSSFCellStyle section() {
    return made.computeIfAbsent("section", key -> text(12, true, INK, false));
  }

  /** A remark above a table, wrapped. */
  XSSFCellStyle remark() {
    return made.computeIfAbsent(
        "remark",
        key -> {
          XSSFCellStyle style = text(9, false, FAINT, true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
          return style;
        });
  }

  /** A few faint words; overflow over the cells to their right. */
  public XSSFCellStyle note() {
    return made.computeIfAbsent("note", key -> text(9, false, FAINT, false));
  }

  public XSSFCellStyle label() {
    return made.computeIfAbsent("label", key -> text(10, true, INK, false));
  }

  /** Running text. */
  public XSSFCellStyle prose() {
    return made.computeIfAbsent("prose", key -> text(10, false, INK, true));
  }

  XSSFCellStyle heading() {
    return made.computeIfAbsent(
        "heading",
        key -> {
          XSSFCellStyle style = text(9, true, INK, true);
          fill(style, HEADING, FillPatternType.SOLID_FOREGROUND, HEADING);
          frame(style, BorderStyle.THIN, LINE);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setIndention((short) 1);
          return style;
        });
  }

  /** Text in a long table. */
  public XSSFCellStyle entry() {
    return made.computeIfAbsent("entry", key -> entryText());
  }

  /** Text in a long table, on the colour of a finding. */
  public XSSFCellStyle entry(Finding finding) {
    return made.computeIfAbsent(
        "entry " + finding,
        key -> {
          XSSFCellStyle style = entryText();
          fill(style, finding);
          return style;
        });
  }

  /** Text that repeats the row above. */
  public XSSFCellStyle repeated() {
    return made.computeIfAbsent("repeated", key -> entryText(FAINT));
  }

  /** Text that is set apart from the other entries. */
  public XSSFCellStyle apart() {
    return made.computeIfAbsent(
        "apart",
        key -> {
          XSSFCellStyle style = entryText();
          fill(style, Palette.CLOSE, FillPatternType.SOLID_FOREGROUND, Palette.CLOSE);
          return style;
        });
  }

  public XSSFCellStyle apartLength() {
    return made.computeIfAbsent(
        "apart length",
        key -> {
          XSSFCellStyle style = figure(unit.numberFormat());
          fill(style, Palette.CLOSE, FillPatternType.SOLID_FOREGROUND, Palette.CLOSE);
          return style;
        });
  }

  private XSSFCellStyle entryText() {
    return entryText(INK);
  }

  private XSSFCellStyle entryText(String colour) {
    XSSFCellStyle style = ruled(text(9, false, colour, true));
    style.setAlignment(HorizontalAlignment.LEFT);
    style.setIndention((short) 1);
    return style;
  }

  /** A number in a long table; {@code format} as a spreadsheet number format. */
  public XSSFCellStyle number(String format) {
    return made.computeIfAbsent("number " + format, key -> figure(format));
  }

  private XSSFCellStyle figure(String format) {
    XSSFCellStyle style = ruled(text(9, false, INK, false));
    style.setQuotePrefixed(false);
    style.setAlignment(HorizontalAlignment.RIGHT);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setDataFormat(book.createDataFormat().getFormat(format));
    return style;
  }

  public XSSFCellStyle length() {
    return number(unit.numberFormat());
  }

  /** A length ten times finer. */
  XSSFCellStyle fineLength() {
    return number(unit.numberFormat() + "0");
  }

  /** The one input cell. */
  public XSSFCellStyle input() {
    return made.computeIfAbsent(
        "input",
        key -> {
          XSSFCellStyle style = text(12, true, INK, false);
          style.setQuotePrefixed(false);
          fill(style, "FFFFFF", FillPatternType.SOLID_FOREGROUND, "FFFFFF");
          frame(style, BorderStyle.THICK, INK);
          style.setAlignment(HorizontalAlignment.CENTER);
          style.setDataFormat(book.createDataFormat().getFormat(unit.numberFormat()));
          return style;
        });
  }

  public XSSFCellStyle count() {
    return made.computeIfAbsent(
        "count",
        key -> {
          XSSFCellStyle style = text(12, true, INK, false);
          style.setQuotePrefixed(false);
          style.setAlignment(HorizontalAlignment.CENTER);
          style.setDataFormat(book.createDataFormat().getFormat("0"));
          return style;
        });
  }

  /** A heading of a row or column of the matrix; {@code small} for the facts below the name. */
  public XSSFCellStyle matrixHeading(boolean small, boolean column) {
    return made.computeIfAbsent(
        "head " + small + column,
        key -> {
          XSSFCellStyle style = text(small ? 8 : 10, !small, small ? "404040" : INK, true);
          fill(style, HEADING, FillPatternType.SOLID_FOREGROUND, HEADING);
          frame(style, BorderStyle.THIN, LINE);
          if (small) {
            style.setBorderTop(BorderStyle.NONE);
          } else {
            style.setBorderBottom(BorderStyle.NONE);
            style.setVerticalAlignment(
                column ? VerticalAlignment.BOTTOM : VerticalAlignment.CENTER);
          }
          if (column) {
            style.setAlignment(HorizontalAlignment.CENTER);
          }
          return style;
        });
  }

  /** The upper cell of a pairing: its margin after the sign of the finding. */
  public XSSFCellStyle margin(Finding finding, boolean best) {
    return made.computeIfAbsent(
        "margin " + finding + best,
        key -> {
          XSSFCellStyle style = text(12, true, INK, false);
          style.setQuotePrefixed(false);
          style.setAlignment(HorizontalAlignment.CENTER);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
          style.setDataFormat(book.createDataFormat().getFormat(signedFormat(finding.sign(), "")));
          fill(style, finding);
          pairing(style, best);
          style.setBorderBottom(BorderStyle.NONE);
          return style;
        });
  }

  /** The lower cell of a pairing: what limits it. */
  public XSSFCellStyle reason(Finding finding, boolean best) {
    return made.computeIfAbsent(
        "reason " + finding + best,
        key -> {
          XSSFCellStyle style = text(8, false, INK, true);
          style.setAlignment(HorizontalAlignment.CENTER);
          fill(style, finding);
          pairing(style, best);
          style.setBorderTop(BorderStyle.NONE);
          return style;
        });
  }

  /** One entry of the key to the signs. */
  public XSSFCellStyle key(Finding finding) {
    return made.computeIfAbsent(
        "key " + finding,
        key -> {
          XSSFCellStyle style = key();
          fill(style, finding);
          return style;
        });
  }

  public XSSFCellStyle key(String colour) {
    return made.computeIfAbsent(
        "key " + colour,
        key -> {
          XSSFCellStyle style = key();
          fill(style, colour, FillPatternType.SOLID_FOREGROUND, colour);
          return style;
        });
  }

  /** The key entry for the best of a row: framed in the same way. */
  public XSSFCellStyle keyBest() {
    return made.computeIfAbsent(
        "key best",
        key -> {
          XSSFCellStyle style = key();
          frame(style, BorderStyle.THICK, INK);
          return style;
        });
  }

  private XSSFCellStyle key() {
    XSSFCellStyle style = text(8, false, INK, true);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setAlignment(HorizontalAlignment.CENTER);
    frame(style, BorderStyle.THIN, LINE);
    return style;
  }

  /** A number format that puts {@code sign} before a length and {@code word} after it. */
  public String signedFormat(String sign, String word) {
    String before = "\"" + sign + " \"";
    String after = word.isEmpty() ? "" : "\" " + word + "\"";
    String figure = unit.numberFormat();
    return before + figure + after + ";" + before + "-" + figure + after;
  }

  /** Text, never a formula, even when it is edited in the spreadsheet. */
  private XSSFCellStyle text(int points, boolean bold, String colour, boolean wrap) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font(points, bold, colour));
    style.setQuotePrefixed(true);
    style.setVerticalAlignment(wrap ? VerticalAlignment.TOP : VerticalAlignment.CENTER);
    style.setWrapText(wrap);
    return style;
  }

  private XSSFFont font(int points, boolean bold, String colour) {
    return fonts.computeIfAbsent(
        points + " " + bold + colour,
        key -> {
          XSSFFont font = book.createFont();
          font.setFontName("Arial");
          font.setFontHeightInPoints((short) points);
          font.setBold(bold);
          font.setColor(Palette.colour(colour));
          return font;
        });
  }

  private static void fill(XSSFCellStyle style, Finding finding) {
    fill(style, Palette.fill(finding), Palette.pattern(finding), Palette.ink(finding));
  }

  private static void fill(
      XSSFCellStyle style, String ground, FillPatternType pattern, String ink) {
    style.setFillForegroundColor(Palette.colour(ink));
    style.setFillBackgroundColor(Palette.colour(ground));
    style.setFillPattern(pattern);
  }

  private static void pairing(XSSFCellStyle style, boolean best) {
    frame(style, best ? BorderStyle.THICK : BorderStyle.THIN, best ? INK : LINE);
  }

  private static XSSFCellStyle ruled(XSSFCellStyle style) {
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(Palette.colour(HAIR));
    return style;
  }

  private static void frame(XSSFCellStyle style, BorderStyle border, String colour) {
    XSSFColor line = Palette.colour(colour);
    style.setBorderTop(border);
    style.setBorderBottom(border);
    style.setBorderLeft(border);
    style.setBorderRight(border);
    style.setTopBorderColor(line);
    style.setBottomBorderColor(line);
    style.setLeftBorderColor(line);
    style.setRightBorderColor(line);
  }
}
