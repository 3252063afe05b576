package org.jawroom.tables.source;

import java.util.Arrays;
import org.jawroom.tables.schema.TableSpec;

/** Finds out what stands between the cells of a CSV file. */
final class CsvDelimiter {
  private CsvDelimiter() {}

  private static final char[] CANDIDATES = {',', ';', '\t'};

  /**
   * The candidate that makes most known columns of the header; of equal ones the one that makes
   * most cells, then the comma.
   */
  static char of(String header, TableSpec table) {
    char best = CANDIDATES[0];
    long most = -1;
    for (char candidate : CANDIDATES) {
      String[] cells = header.split(String.valueOf(candidate), Grid.MOST_COLUMNS);
      long known =
          Arrays.stream(cells).filter(cell -> table.column(unquoted(cell)).isPresent()).count();
      long score = known * (Grid.MOST_COLUMNS + 1) + cells.length;
      if (score > most) {
        most = score;
        best = candidate;
      }
    }
    return best;
  }

  private static String unquoted(String cell) {
    return cell.replace("\"", "");
  }
}
