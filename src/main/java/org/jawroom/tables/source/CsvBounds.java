package org.jawroom.tables.source;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Hands on the characters of a CSV file as far as the first cell, row or line beyond what a table
 * can have, and then fails with {@link Beyond}: whoever splits them into cells would gather any
 * amount.
 */
final class CsvBounds extends FilterReader {

  /** The file goes beyond a bound; the message goes on from the row. */
  static final class Beyond extends IOException {
    private static final long serialVersionUID = 1L;

    Beyond(String message) {
      super(message);
    }
  }

  /** As many as a sheet of a workbook. */
  static final int MOST_LINES = 1 << 20;

  /** Where the next character stands. */
  private enum At {
    /** At the start of a cell, the only place where a quote opens one. */
    START,
    PLAIN,
    QUOTED,
    /** After a quote within quotes: the first of two, or the end of the cell. */
    CLOSING
  }

  private final char delimiter;
  private At at = At.START;
  private int letters;
  private int cells = 1;
  private int lines;
  private boolean afterReturn;
  private String beyond = "";

  CsvBounds(Reader in, char delimiter) {
    super(in);
    this.delimiter = delimiter;
  }

  @Override
  public int read() throws IOException {
    char[] one = new char[1];
    return read(one, 0, 1) < 0 ? -1 : one[0];
  }

  @Override
  public int read(char[] text, int offset, int length) throws IOException {
    if (!beyond.isEmpty()) {
      throw new Beyond(beyond);
    }
    int read = super.read(text, offset, length);
    for (int i = 0; i < read; i++) {
      step(text[offset + i]);
      if (!beyond.isEmpty()) {
        // What stands before it is handed on first, so that its row is known.
        return i + 1;
      }
    }
    return read;
  }

  private void step(char letter) {
    boolean quoted = at == At.QUOTED;
    if (isLineEnd(letter) && ++lines > MOST_LINES) {
      beyond = "is beyond the " + MOST_LINES + " lines that a table may have";
    }
    afterReturn = letter == '\r';
    if (!quoted && (letter == '\n' || letter == '\r')) {
      cells = 1;
      startCell();
    } else if (!quoted && letter == delimiter) {
      startCell();
      if (++cells > Grid.MOST_COLUMNS) {
        beyond = Grid.TOO_MANY_COLUMNS;
      }
    } else if (letter == '"' && at != At.PLAIN) {
      at = quoted ? At.CLOSING : At.QUOTED;
      letters += at == At.QUOTED ? 1 : 0;
    } else {
      at = quoted ? At.QUOTED : At.PLAIN;
      letters++;
    }
    // One for the quote that opens the cell.
    if (letters > Grid.LONGEST_CELL + 1) {
      beyond = Grid.TOO_LONG_A_CELL + (quoted ? ", or a quote that nothing closes" : "");
    }
  }

  private void startCell() {
    at = At.START;
    letters = 0;
  }

  /** Whether a line ends here; of a pair of characters that end it, only at the first. */
  private boolean isLineEnd(char letter) {
    return letter == '\r' || letter == '\n' && !afterReturn;
  }
}
