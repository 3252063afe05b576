package org.jawroom.tables.source.csv;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import org.jawroom.tables.schema.TableSpec;

/** Replaces single cells of a CSV file; every other byte stays as it is. */
public final class CsvEdit {
  private final CsvText text;
  private final byte[] mark;
  private final String all;
  private final char delimiter;
  private final int start;

  /** A file that was read as {@code table} without a fault. */
  private CsvEdit(byte[] bytes, TableSpec table) {
    text = new CsvText(bytes);
    mark = text.mark();
    all = whole(text);
    String first = text.firstLine();
    boolean declared = CsvDelimiter.isDeclared(first);
    delimiter =
        declared
            ? CsvDelimiter.declared(first).orElseThrow()
            : CsvDelimiter.of(text.header(), table);
    start = declared ? afterLine(first.length()) : 0;
  }

  /**
   * A copy with one cell replaced.
   *
   * @param line on which the row starts, the first being 1
   * @param column the position of the cell, the first being 0
   */
  public static byte[] with(byte[] bytes, TableSpec table, int line, int column, String cell) {
    return new CsvEdit(bytes, table).with(line, column, cell);
  }

  private static String whole(CsvText text) {
    try (StringWriter writer = new StringWriter()) {
      text.reader().transferTo(writer);
      return writer.toString();
    } catch (IOException e) {
      throw new IllegalStateException("reading from memory failed", e);
    }
  }

  private int afterLine(int at) {
    return all.startsWith("\r\n", at) ? at + 2 : at + 1;
  }

  private byte[] with(int line, int column, String cell) {
    int at = rowStart(line);
    int place = 0;
    while (place < column && !endsRow(cellEnd(at))) {
      at = cellEnd(at) + 1;
      place++;
    }
    // A row may be shorter than the header.
    String missing = String.valueOf(delimiter).repeat(column - place);
    int from = missing.isEmpty() ? at : cellEnd(at);
    String changed = all.substring(0, from) + missing + quoted(cell) + all.substring(cellEnd(at));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(mark);
    out.writeBytes(changed.getBytes(text.charset()));
    return out.toByteArray();
  }

  /** Lines are counted as the reader counts them: within quotes, too. */
  private int rowStart(int line) {
    int lines = start > 0 ? 2 : 1;
    int at = start;
    while (lines < line) {
      boolean returned = all.charAt(at) == '\r';
      if (returned || all.charAt(at) == '\n') {
        lines++;
        at += returned && all.startsWith("\n", at + 1) ? 2 : 1;
      } else {
        at++;
      }
    }
    return at;
  }

  /** The position behind the cell that begins there: of the delimiter or of the row's end. */
  private int cellEnd(int from) {
    int at = from;
    // A quote within a cell that does not begin with one is a letter, as in 6 1/2".
    if (all.startsWith("\"", at)) {
      at++;
      while (at < all.length() && (all.charAt(at) != '"' || all.startsWith("\"\"", at))) {
        at += all.charAt(at) == '"' ? 2 : 1;
      }
    }
    while (!endsRow(at) && !isDelimiter(at)) {
      at++;
    }
    return at;
  }

  private boolean isDelimiter(int at) {
    return all.charAt(at) == delimiter;
  }

  private boolean endsRow(int at) {
    return at >= all.length() || all.charAt(at) == '\n' || all.charAt(at) == '\r';
  }

  private String quoted(String cell) {
    return cell.indexOf(delimiter) >= 0 || cell.indexOf('"') >= 0
        ? '"' + cell.replace("\"", "\"\"") + '"'
        : cell;
  }
}
