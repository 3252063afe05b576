package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jawroom.geometry.TurnedRectangle;

/** Parses the angles of a swivel base. */
public final class Angles {
  private Angles() {}

  private static final String BETWEEN = "; write degrees with ; between, as 0; 30; 45";

  /**
   * The angles in {@code text}, in degrees; one without a sign counts both ways, 0 is none.
   *
   * @param comma whether the decimal sign is a comma rather than a point
   */
  public static Set<BigDecimal> parse(String text, boolean comma) throws BadCell {
    Set<BigDecimal> angles = new LinkedHashSet<>();
    for (String item : text.split(";", -1)) {
      String plain = CellText.plain(item).replaceFirst(" ?(°|deg)$", "");
      CellText.refuseHopeless(plain);
      BigDecimal angle =
          Numerals.decimal(plain, "", comma)
              .orElseThrow(() -> new BadCell("has no angle in \"" + plain + "\"" + BETWEEN))
              .stripTrailingZeros();
      refuse(plain, angle);
      if (angle.signum() != 0) {
        angles.add(angle);
        if (Character.isDigit(plain.charAt(0))) {
          angles.add(angle.negate());
        }
      }
    }
    return angles;
  }

  private static void refuse(String plain, BigDecimal angle) throws BadCell {
    if (angle.abs().compareTo(BigDecimal.valueOf(TurnedRectangle.RIGHT_ANGLE)) >= 0) {
      throw new BadCell(
          "has "
              + plain
              + ", which is not below 90 degrees; write the angle from the jaws' square position");
    }
    if (angle.signum() != 0
        && angle.abs().compareTo(BigDecimal.valueOf(TurnedRectangle.LEAST_DEGREES)) < 0) {
      throw new BadCell("has " + plain + ", which is below 1 degree; write 0 for square jaws");
    }
    if (angle.scale() > 1) {
      throw new BadCell("has " + plain + "; write an angle with at most one decimal");
    }
  }
}
