package org.jawroom.tables.cell;

import java.util.regex.Pattern;

/** Advice on lists of lengths without the separator {@code ;}. */
public final class ListedLengths {
  private ListedLengths() {}

  private static final String BETWEEN = "; between the slots, as 45; 125; 205";

  private static final Pattern ONE_COMMA = Pattern.compile("[^,]*\\d,\\d[^,]*");

  /** Numbers separated by spaces, commas or bars, without a fraction among them. */
  private static final Pattern SEVERAL =
      Pattern.compile("[^/]*\\d[^\\d./]*[\\s\\p{Zs},|][^\\d./]*\\d[^/]*");

  /**
   * The fault of {@code item}, which was refused as one length of a list because of {@code why}.
   */
  public static BadCell refused(String item, BadCell why) {
    if (ONE_COMMA.matcher(item).matches()) {
      return new BadCell(why.getMessage() + "; or write " + BETWEEN);
    }
    return SEVERAL.matcher(item).matches() ? new BadCell("needs " + BETWEEN) : why;
  }
}
