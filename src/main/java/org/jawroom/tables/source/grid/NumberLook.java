package org.jawroom.tables.source.grid;

import java.util.Locale;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.schema.CellKind;

/**
 * What the number format of a workbook's cell displays besides the digits of its number, or instead
 * of them.
 *
 * @param letters text and signs displayed with the number, without spaces; empty for none
 * @param fraction whether decimals are displayed as a fraction
 * @param change how the displayed number differs from the stored one, continuing {@code shows};
 *     empty if it does not
 */
public record NumberLook(String letters, boolean fraction, String change) {

  /** The number and nothing else. */
  public static final NumberLook PLAIN = new NumberLook("", false, "");

  private static final String PUT_RIGHT =
      " by its number format; write it as text with its unit, or format the cell as a plain number";

  private static final int LONGEST = 20;

  /** Whether the cell displays its number and nothing else. */
  public boolean isPlain() {
    return letters.isEmpty() && !fraction && change.isEmpty();
  }

  private static boolean isPartOfNumber(int letter) {
    return Character.isDigit(letter) || ".,-/".indexOf(letter) >= 0;
  }

  /** The displayed number differs from the stored one. */
  public static NumberLook changed(String change) {
    return new NumberLook("", false, change);
  }

  /**
   * Why the stored number may differ from what people read there; empty if it does not.
   *
   * @param unit of a bare number in this row
   */
  public String trouble(CellKind kind, Unit unit) {
    if (!kind.isLength() && kind != CellKind.MASS && !kind.isPlainNumber()) {
      return "";
    }
    if (!change.isEmpty()) {
      return "shows " + change + PUT_RIGHT;
    }
    String word = letters.toLowerCase(Locale.ROOT);
    boolean right =
        switch (kind) {
          case MASS -> word.isEmpty() || word.equals("kg");
          case NUMBER -> word.isEmpty() || word.equals("kn");
          case COUNT, PRICE -> word.chars().noneMatch(NumberLook::isPartOfNumber);
          default -> word.isEmpty() || word.equals("mm") && unit == Unit.MM;
        };
    if (!right) {
      String some = letters.length() > LONGEST ? letters.substring(0, LONGEST) + "…" : letters;
      return "shows " + some + PUT_RIGHT;
    }
    return fraction && kind.isLength() && unit != Unit.IN
        ? "shows a fraction" + PUT_RIGHT + "; fractions are for inches"
        : "";
  }
}
