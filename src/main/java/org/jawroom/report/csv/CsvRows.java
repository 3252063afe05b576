package org.jawroom.report.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.Rounding;

/**
 * Formats CSV rows to the same bytes as {@link CsvReport}, but many times faster: cells go into one
 * buffer, lengths use integer arithmetic.
 */
final class CsvRows {
  private static final long MICROMETRE = Figures.MICROMETRE;

  /** Bytes to make room for in a row: about those of a row of {@code pairings.csv}. */
  private static final int ROW = 200;

  /** More than the bytes of any number with its separator. */
  private static final int NUMBER = 32;

  private byte[] bytes;
  private int count;
  private boolean first = true;

  /** For about so many rows. */
  CsvRows(int rows) {
    this.bytes = new byte[Math.max(NUMBER, ROW * rows)];
  }

  /** Adds a text cell. */
  void text(String cell) {
    next();
    if (mustBeQuoted(cell, first)) {
      append("\"" + cell.replace("\"", "\"\"") + "\"");
    } else {
      append(cell);
    }
    first = false;
  }

  /** Adds a code of ours after the first cell: it needs no quotes, and there is no need to look. */
  void code(String code) {
    next();
    append(code);
  }

  /** Adds one such cell of several codes, with a semicolon between two; empty without any. */
  <T> void codes(List<T> all, Function<T, String> code) {
    next();
    for (int i = 0; i < all.size(); i++) {
      if (i > 0) {
        append(";");
      }
      append(code.apply(all.get(i)));
    }
  }

  /** Adds cells that do not apply. */
  void empty(int cells) {
    for (int i = 0; i < cells; i++) {
      text("");
    }
  }

  /** Adds a whole number. */
  void number(int number) {
    next();
    room(NUMBER);
    if (number < 0) {
      bytes[count++] = '-';
    }
    digits(Math.abs((long) number));
    first = false;
  }

  /** Adds half-nanometres as millimetres to 0.001. */
  void length(long length, Rounding rounding) {
    next();
    append(rounding.count(length, MICROMETRE));
    first = false;
  }

  /** Adds a length, or an empty cell if there is none. */
  void length(OptionalLong length, Rounding rounding) {
    if (length.isPresent()) {
      length(length.getAsLong(), rounding);
    } else {
      empty(1);
    }
  }

  /** Adds kilograms to 0.001, rounded down, or an empty cell if there are none. */
  void kilograms(Optional<BigDecimal> mass) {
    if (mass.isPresent()) {
      next();
      append(mass.get().setScale(3, RoundingMode.FLOOR).unscaledValue().longValueExact());
      first = false;
    } else {
      empty(1);
    }
  }

  /** Ends the row. */
  void end() {
    append("\r\n");
    first = true;
  }

  /** All rows so far, UTF-8. */
  byte[] bytes() {
    return Arrays.copyOf(bytes, count);
  }

  /** Texts that are safe in a CSV, with a semicolon between two; empty without any. */
  static <T> String joined(List<T> all, Function<T, String> text) {
    return switch (all.size()) {
      case 0 -> "";
      case 1 -> text.apply(all.get(0));
      default -> all.stream().map(text).collect(Collectors.joining(";"));
    };
  }

  private void next() {
    if (!first) {
      room(1);
      bytes[count++] = ',';
    }
  }

  private void append(long thousandths) {
    room(NUMBER);
    if (thousandths < 0) {
      bytes[count++] = '-';
    }
    digits(Math.abs(thousandths / 1000));
    int decimals = (int) Math.abs(thousandths % 1000);
    bytes[count++] = '.';
    bytes[count++] = (byte) ('0' + decimals / 100);
    bytes[count++] = (byte) ('0' + decimals / 10 % 10);
    bytes[count++] = (byte) ('0' + decimals % 10);
  }

  /** Writes a number of 0 or more from its last digit to its first; there must be room. */
  private void digits(long number) {
    int length = 1;
    for (long rest = number / 10; rest != 0; rest /= 10) {
      length++;
    }
    count += length;
    long rest = number;
    for (int i = 1; i <= length; i++) {
      bytes[count - i] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
  }

  private void append(String text) {
    room(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > '~') {
        append(text.substring(i).getBytes(StandardCharsets.UTF_8));
        return;
      }
      bytes[count++] = (byte) c;
    }
  }

  private void append(byte[] more) {
    room(more.length);
    System.arraycopy(more, 0, bytes, count, more.length);
    count += more.length;
  }

  private void room(int more) {
    if (bytes.length - count < more) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, count + more));
    }
  }

  /**
   * Where RFC 4180 requires quotes, and where common parsers need them: around an empty cell that
   * begins a row, a cell that begins with a character up to {@code #}, and one that ends in a
   * space.
   */
  private static boolean mustBeQuoted(String cell, boolean first) {
    if (cell.isEmpty()) {
      return first;
    }
    char begin = cell.charAt(0);
    if (begin <= '#' || cell.charAt(cell.length() - 1) <= ' ') {
      return true;
    }
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == ',' || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return false;
  }
}
