package org.jawroom.tables.source.sheet;

import java.util.Optional;
import org.jawroom.tables.source.grid.Grid;

/** The position of a cell in a sheet; row and column count from 0. */
record CellPlace(int row, int column) {
  static final int MOST_ROWS = 1 << 20;

  /** No valid reference is longer. */
  private static final int LONGEST = 12;

  /** Parses {@code B12} or {@code $B$12}; empty if no sheet has such a cell. */
  static Optional<CellPlace> of(String written) {
    String plain = written.length() > LONGEST ? "" : written.strip().replace("$", "");
    int column = 0;
    int at = 0;
    for (; at < plain.length() && isLetter(plain.charAt(at)); at++) {
      column = column * 26 + Character.toUpperCase(plain.charAt(at)) - 'A' + 1;
    }
    int row = 0;
    for (int i = at; i < plain.length(); i++) {
      char digit = plain.charAt(i);
      if (digit < '0' || digit > '9' || row > MOST_ROWS) {
        return Optional.empty();
      }
      row = row * 10 + digit - '0';
    }
    boolean there =
        at <= 3 && column >= 1 && column <= Grid.MOST_COLUMNS && row >= 1 && row <= MOST_ROWS;
    return there ? Optional.of(new CellPlace(row - 1, column - 1)) : Optional.empty();
  }

  private static boolean isLetter(char letter) {
    return letter >= 'A' && letter <= 'Z' || letter >= 'a' && letter <= 'z';
  }
}
