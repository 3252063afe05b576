package org.jawroom.tables.cell.name;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.CellText;

/** Names of machines, guards, vises, parts, mounts and jobs. */
public final class Names {
  private Names() {}

  private static final int LONGEST = 100;

  private static final Pattern SEMICOLONS = Pattern.compile("\\p{Zs}*;+\\p{Zs}*");
  private static final Pattern SPACES = Pattern.compile("[\\s\\p{Zs}]+");

  /**
   * Characters that spreadsheets read as the start of a formula, including the full-width forms,
   * after skipping quotes and spaces (OWASP, CSV Injection).
   */
  private static final Pattern FORMULA =
      Pattern.compile("^[\\p{Zs}\"']*([=+\\-@\uff1d\uff0b\uff0d\uff20])");

  /** Returns {@code text} trimmed if it is a valid name. */
  public static String parse(String text) throws BadCell {
    String name = withoutSpacesAround(text);
    if (name.codePointCount(0, name.length()) > LONGEST) {
      throw new BadCell("is longer than 100 characters");
    }
    Unseen.refuse(name, "");
    Matcher formula = FORMULA.matcher(name);
    if (formula.find()) {
      throw new BadCell(
          "begins with " + formula.group(1) + ", which spreadsheets take for a formula");
    }
    if (name.indexOf(';') >= 0) {
      String without = SEMICOLONS.matcher(name).replaceAll(", ").replaceAll("^(, )+|(, )+$", "");
      throw new BadCell(
          "holds ;, which stands between names in a list; write "
              + (without.isEmpty() ? "another name" : without));
    }
    if (name.equalsIgnoreCase("none")) {
      throw new BadCell("is not allowed here; give it a name");
    }
    return name;
  }

  /** Plain spaces only: a tab at the end is a forbidden character, not white space to trim. */
  private static String withoutSpacesAround(String text) {
    int start = 0;
    int end = text.length();
    while (start < end && Character.getType(text.charAt(start)) == Character.SPACE_SEPARATOR) {
      start++;
    }
    while (end > start && Character.getType(text.charAt(end - 1)) == Character.SPACE_SEPARATOR) {
      end--;
    }
    return text.substring(start, end);
  }

  /**
   * The key by which names are compared: case, the kind and number of spaces, the encoding of
   * accents and joiners do not count.
   */
  public static String key(String name) {
    String spaced = SPACES.matcher(CellText.trimmed(name)).replaceAll(" ");
    return Normalizer.normalize(Unseen.without(spaced), Normalizer.Form.NFC)
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }

  /** Free text, unchanged; it may have several lines. */
  public static String freeText(String text) throws BadCell {
    Unseen.refuse(text, "\t\n\r");
    return text;
  }
}
