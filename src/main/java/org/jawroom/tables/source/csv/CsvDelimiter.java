package org.jawroom.tables.source.csv;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Grid;

/** The delimiter of a CSV file, declared by its first line or detected. */
public final class CsvDelimiter {

  /** What is wrong with a first line that declares none; continues the row number. */
  public static final String NOT_NAMED =
      "names no character that can stand between cells; write sep=; or sep=, or delete it";

  private CsvDelimiter() {}

  private static final String DECLARED = "sep=";

  /** Whether the first line of a file is not a header row but declares the delimiter. */
  public static boolean isDeclared(String firstLine) {
    return unquoted(firstLine).strip().toLowerCase(Locale.ROOT).startsWith(DECLARED);
  }

  /**
   * The delimiter that the first line declares, as {@code sep=;} does; delimiters that a
   * spreadsheet appends to it on saving are ignored. Empty if it declares none.
   */
  public static Optional<Character> declared(String firstLine) {
    String named = unquoted(firstLine).stripLeading().substring(DECLARED.length());
    char first = named.isEmpty() ? ' ' : named.charAt(0);
    boolean one = named.chars().skip(1).allMatch(letter -> letter == ' ' || isCandidate(letter));
    boolean possible =
        first == '\t' || first > ' ' && first < 0x7F && !Character.isLetterOrDigit(first);
    return one && possible ? Optional.of(first) : Optional.empty();
  }

  private static boolean isCandidate(int letter) {
    return String.valueOf(CANDIDATES).indexOf(letter) >= 0;
  }

  private static final char[] CANDIDATES = {',', ';', '\t', '|'};

  /**
   * The candidate that yields most known columns of the header row; of equals the one that yields
   * most cells, then the comma.
   */
  static char of(String header, TableSpec table) {
    char best = CANDIDATES[0];
    long most = -1;
    for (char candidate : CANDIDATES) {
      String[] cells = header.split(Pattern.quote(String.valueOf(candidate)), Grid.MOST_COLUMNS);
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
