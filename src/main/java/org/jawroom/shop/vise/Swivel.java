package org.jawroom.shop.vise;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.shop.value.Require;

/**
 * How a vise stands turned on its swivel base: the base plate as bolted, all else turned about the
 * pivot.
 *
 * @param of the name of the vise's row, which is that of the vise with its jaws square
 * @param angle degrees from the square position, counterclockwise seen from above, below 0 the
 *     other way
 * @param pivot its u; it lies in the middle of the jaw width
 * @param radius of the round flange, for drawings; the reaches and the width of the base hold it
 * @param within the openings to which the jaws are kept, over which what turns is judged; empty:
 *     all
 */
public record Swivel(
    String of, BigDecimal angle, long pivot, OptionalLong radius, Optional<Interval> within) {

  public Swivel {
    Require.named("vise", of);
    if (angle.abs().compareTo(BigDecimal.valueOf(TurnedRectangle.LEAST_DEGREES)) < 0
        || angle.abs().compareTo(BigDecimal.valueOf(TurnedRectangle.RIGHT_ANGLE)) >= 0) {
      throw new IllegalArgumentException("a vise cannot be turned by " + angle + " degrees");
    }
    radius.ifPresent(length -> Require.notNegative("swivel radius", length));
  }

  /** At every opening. */
  public Swivel(String of, BigDecimal angle, long pivot, OptionalLong radius) {
    this(of, angle, pivot, radius, Optional.empty());
  }

  /**
   * The name under which the turned vise is judged: {@code six inch @30}, {@code six inch @-30}.
   */
  public String name() {
    return name(of, angle);
  }

  /** The name of a vise turned by an angle. */
  public static String name(String of, BigDecimal angle) {
    return of + " @" + degrees(angle);
  }

  /** The angle as people write it, without idle zeros. */
  public String degrees() {
    return degrees(angle);
  }

  private static String degrees(BigDecimal angle) {
    return angle.stripTrailingZeros().toPlainString();
  }

  /** The same with the jaws kept to some openings. */
  public Swivel within(Interval openings) {
    return new Swivel(of, angle, pivot, radius, Optional.of(openings));
  }

  /** Turned by the swivel: a rectangle of the vise frame, u as x and v as y. */
  public TurnedRectangle turned(Rectangle square) {
    return new TurnedRectangle(square, pivot, angle.doubleValue());
  }
}
