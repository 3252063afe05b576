package org.jawroom.tables.template;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jawroom.tables.schema.ColumnSpec;

/** A comment on each heading: what to enter, what a blank means, how to measure it. */
final class TemplateComments {
  private static final int COLUMNS = 4;
  private static final int CHARACTERS_A_LINE = 44;

  private TemplateComments() {}

  static void add(XSSFSheet sheet, ColumnOrder order) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    List<ColumnSpec> columns = order.all();
    for (int at = 0; at < columns.size(); at++) {
      String words = words(columns.get(at));
      int lines = words.split("\n").length + words.length() / CHARACTERS_A_LINE + 1;
      int left = left(at, order.everyone().size());
      XSSFComment comment =
          drawing.createCellComment(
              new XSSFClientAnchor(0, 0, 0, 0, left, 1, left + COLUMNS, 1 + Math.max(4, lines)));
      comment.setAddress(0, at);
      comment.setAuthor("");
      comment.setString(new XSSFRichTextString(words));
    }
  }

  /** The comment's width spans the columns under it, which must not be collapsed ones. */
  private static int left(int at, int everyone) {
    return at < everyone ? Math.max(0, Math.min(at + 1, everyone - COLUMNS)) : at + 1;
  }

  /** Three paragraphs: the column's name, what its cells may hold, how to measure it. */
  static String words(ColumnSpec column) {
    return column.name() + "\n" + cell(column) + "\n" + column.help();
  }

  /** What the column's cells may hold and what a blank means, in one line. */
  static String cell(ColumnSpec column) {
    String kind =
        column.words().isEmpty() ? column.kind().words() : String.join(", ", column.words());
    String range =
        column.takesRanges() ? ", or a range (" + String.join(", ", ColumnSpec.RANGES) + ")" : "";
    String none = column.noneAllowed() ? ", or none" : "";
    return kind + range + none + ". " + blank(column);
  }

  private static String blank(ColumnSpec column) {
    return switch (column.need()) {
      case REQUIRED -> "Must be filled.";
      case UNKNOWN_IF_BLANK -> "Blank: unknown, never zero.";
      case OPTIONAL -> "Blank: " + column.blankMeans() + ".";
    };
  }
}
