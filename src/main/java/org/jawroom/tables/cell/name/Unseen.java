package org.jawroom.tables.cell.name;

import java.util.regex.Pattern;
import org.jawroom.tables.cell.BadCell;

/**
 * Invisible characters: they make two texts look alike, or reverse adjacent text.
 *
 * <p>Those of Unicode's general categories Cc, Cf, Cs, Zl and Zp, its noncharacters, and those that
 * are ignored by default (DerivedCoreProperties, Default_Ignorable_Code_Point). Scripts and emoji
 * need some of them between their letters: joiners and variation selectors after a character beyond
 * ASCII are accepted. So are combining marks on a letter, up to the number that any language uses.
 */
final class Unseen {
  private Unseen() {}

  /** More combining marks overlap the lines above and below; some Hebrew letters carry four. */
  private static final int MOST_MARKS = 4;

  private static final String JOINERS = "\u200c\u200d\ufe0e\ufe0f";

  private static final Pattern JOINER = Pattern.compile("[" + JOINERS + "]");

  /**
   * Ignored by default but in none of the categories above, as ranges of first and last; and one
   * more blank character.
   */
  private static final int[][] IGNORED = {
    {0x034F, 0x034F}, {0x115F, 0x1160}, {0x17B4, 0x17B5}, {0x180B, 0x180F}, {0x2065, 0x2065},
    {0x3164, 0x3164}, {0xFE00, 0xFE0D}, {0xFFA0, 0xFFA0}, {0xFFF0, 0xFFF8}, {0x2800, 0x2800},
    {0xE0000, 0xE0FFF}
  };

  /**
   * Refuses {@code text} if it contains such a character.
   *
   * @param allowed characters to accept
   */
  static void refuse(String text, String allowed) throws BadCell {
    int before = 'a';
    int marks = 0;
    for (int letter : text.codePoints().toArray()) {
      boolean joins = JOINERS.indexOf(letter) >= 0 && before > 0x7F;
      if (isUnseen(letter) && !joins && allowed.indexOf(letter) < 0) {
        throw new BadCell(
            String.format(
                "holds a line break, a tab or another character that nobody sees (U+%04X); retype"
                    + " it",
                letter));
      }
      marks = isMark(letter) ? marks + 1 : 0;
      if (marks > MOST_MARKS) {
        throw new BadCell("heaps more than " + MOST_MARKS + " marks over one letter");
      }
      before = letter;
    }
  }

  /** Removes the accepted invisible characters. */
  static String without(String text) {
    return JOINER.matcher(text).replaceAll("");
  }

  private static boolean isUnseen(int letter) {
    return switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> isIgnored(letter) || JOINERS.indexOf(letter) >= 0 || isNoncharacter(letter);
    };
  }

  private static boolean isIgnored(int letter) {
    for (int[] range : IGNORED) {
      if (letter >= range[0] && letter <= range[1]) {
        return true;
      }
    }
    return false;
  }

  private static boolean isNoncharacter(int letter) {
    return (letter & 0xFFFE) == 0xFFFE || letter >= 0xFDD0 && letter <= 0xFDEF;
  }

  private static boolean isMark(int letter) {
    int type = Character.getType(letter);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }
}
