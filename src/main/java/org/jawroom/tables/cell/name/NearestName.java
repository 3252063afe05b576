package org.jawroom.tables.cell.name;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name somebody probably meant. */
public final class NearestName {
  /** Of a longer name, only the beginning is compared. */
  private static final int LONGEST = 200;

  /** Fewer letters begin too many names. */
  private static final int LEAST_START = 2;

  private NearestName() {}

  /**
   * The shortest one of {@code known} that has all the words of {@code wanted} side by side, or the
   * longest of which {@code wanted} has all; else the one with the smallest edit distance, less
   * than its length; else the shortest that begins with it. Empty if none is near.
   */
  public static Optional<String> to(String wanted, Collection<String> known) {
    String start = wanted.length() > LONGEST ? wanted.substring(0, LONGEST) : wanted;
    return withWordsOf(start, known)
        .or(() -> leastChanged(start, known))
        .or(() -> begunBy(start, known));
  }

  private static Optional<String> withWordsOf(String wanted, Collection<String> known) {
    String words = words(wanted);
    Optional<String> longer =
        known.stream()
            .filter(name -> !words.isBlank() && words(name).contains(words))
            .min(Comparator.comparingInt(String::length));
    return longer.or(
        () ->
            known.stream()
                .filter(name -> !words(name).isBlank() && words.contains(words(name)))
                .max(Comparator.comparingInt(String::length)));
  }

  /** The words with one space before and after each. */
  private static String words(String name) {
    return (" " + name.toLowerCase(Locale.ROOT) + " ").replaceAll("[^\\p{L}\\p{M}\\p{N}]+", " ");
  }

  private static Optional<String> begunBy(String wanted, Collection<String> known) {
    String start = wanted.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(name -> start.length() >= LEAST_START)
        .filter(name -> name.toLowerCase(Locale.ROOT).startsWith(start))
        .min(Comparator.comparingInt(String::length));
  }

  private static Optional<String> leastChanged(String start, Collection<String> known) {
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
