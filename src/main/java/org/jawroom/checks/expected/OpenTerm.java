package org.jawroom.checks.expected;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Check;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * An open reading in the sum that is an end of a part or a face of a guard.
 *
 * @param halves twice the factor of the reading: the end moves by half of that for each unit by
 *     which the reading grows
 */
public record OpenTerm(Measurand reading, int halves) {

  /**
   * The open readings in one end of a part, in the vise frame.
   *
   * @param part of the vise, no bolt
   * @param open whether the jaws stand open; else closed
   * @param axis X for u, Y for v, Z for w
   * @param high whether the end at the greater coordinate
   */
  public static List<OpenTerm> ofPart(Vise vise, Part part, boolean open, Axis axis, boolean high) {
    Terms terms = new Terms();
    Check.Opening opening = open ? Check.Opening.OPEN : Check.Opening.CLOSED;
    // The room of a clamp is a constant, which has no part in the factors.
    PartEnds ends = new PartEnds(vise, opening, 0, terms);
    return of(terms, ends.end(part, Optional.empty(), axis, high));
  }

  /**
   * The open readings in one face of a guard along x or y, in the table frame; none where it is
   * without end that way.
   *
   * @param vise any; only heights depend on it
   */
  public static List<OpenTerm> ofGuard(
      Settings settings, Machine machine, Vise vise, Guard guard, Axis axis, boolean high) {
    Terms terms = new Terms();
    return new GuardFaces(settings, machine, vise, Situation.CUTTING, terms)
        .face(Optional.of(guard), axis, high)
        .map(face -> of(terms, face))
        .orElse(List.of());
  }

  private static List<OpenTerm> of(Terms terms, LinearForm form) {
    List<OpenTerm> open = new ArrayList<>();
    for (Map.Entry<Unknown, Rational> term : form.terms().entrySet()) {
      if (term.getKey() instanceof Unknown.ReadingValue reading && !terms.of(reading).isSingle()) {
        Rational twice = term.getValue().times(Rational.of(2));
        open.add(new OpenTerm(reading.measurand(), Math.toIntExact(twice.floor())));
      }
    }
    return open;
  }
}
