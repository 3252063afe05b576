package org.jawroom.shop.vise;

import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.value.Require;
import org.jawroom.shop.value.When;

/**
 * One row of {@code vise_parts}: a box in the vise frame.
 *
 * @param uClosed its u limits at the least opening, {@code uOpen} at the greatest; linear in
 *     between
 * @param tolerance its own; empty: that of the vise
 */
public record VisePart(
    String name,
    When when,
    Interval uClosed,
    Interval uOpen,
    Interval v,
    Interval w,
    OptionalLong tolerance) {

  /** The only built-in part name that a row may use; such a row counts as the handle. */
  public static final String HANDLE = "handle";

  public VisePart {
    Require.named("part", name);
    tolerance.ifPresent(length -> Require.notNegative("tolerance", length));
  }

  /** A copy with another name. */
  public VisePart withName(String name) {
    return new VisePart(name, when, uClosed, uOpen, v, w, tolerance);
  }

  /** A copy that counts in another situation. */
  public VisePart withWhen(When when) {
    return new VisePart(name, when, uClosed, uOpen, v, w, tolerance);
  }
}
