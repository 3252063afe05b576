package org.jawroom.tables.cell;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name somebody probably meant. */
public final class NearestName {
  private NearestName() {}

  /**
   * The one of {@code known} with the smallest edit distance, less than its length; empty if none
   * is near.
   */
  public static Optional<String> to(String wanted, Collection<String> known) {
    String start = wanted.length() > 200 ? wanted.substring(0, 200) : wanted;
    Optional<String> nearest = Optional.empty();
    int least = Math.min(start.length(), Math.max(2, start.length() / 2) + 1);
    for (String name : known) {
      int changes = changes(start.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
      if (changes < least) {
        least = changes;
        nearest = Optional.of(name);
      }
    }
    return nearest;
  }

  /** The words {@code ; did you mean "…"?}, or nothing if none is near. */
  public static String hint(String wanted, Collection<String> known) {
    return to(wanted, known).map(name -> "; did you mean \"" + name + "\"?").orElse("");
  }

  /** Levenshtein distance: letters to insert, delete or replace. */
  private static int changes(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
