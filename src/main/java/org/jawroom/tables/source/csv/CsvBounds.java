package org.jawroom.tables.source.csv;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import org.jawroom.tables.source.grid.Grid;

/**
 * Passes on the characters of a CSV file up to the first cell, row or line beyond the limits of a
 * table, then fails with {@link Beyond}; the CSV parser itself would buffer any amount.
 */
final class CsvBounds extends FilterReader {

  /** The file exceeds a limit; the message continues the row number. */
  static final class Beyond extends IOException {
    private static final long serialVersionUID = 1L;

    Beyond(String message) {
      super(message);
    }
  }

  /** As many as a sheet of a workbook. */
  static final int MOST_LINES = 1 << 20;

  /** The state of the next character. */
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
        // Characters before the limit are passed on first, so that the parser knows the row.
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
    // One more for the quote that opens the cell.
    if (letters > Grid.LONGEST_CELL + 1) {
      beyond = Grid.TOO_LONG_A_CELL + (quoted ? ", or a quote that nothing closes" : "");
    }
  }

  private void startCell() {
    at = At.START;
    letters = 0;
  }

  /** Whether a line ends here; in CRLF only at the CR. */
  private boolean isLineEnd(char letter) {
    return letter == '\r' || letter == '\n' && !afterReturn;
  }
}
