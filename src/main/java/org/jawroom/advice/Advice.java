package org.jawroom.advice;

import java.util.List;
import java.util.Optional;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.SideBySide;

/**
 * What the reports of a whole shop show of a pairing besides its outcome.
 *
 * @param remedies for every verdict but {@code fits} and {@code unknown}, in order of effort
 * @param limits for {@code unknown}: one per blank that has a limit, in table order
 * @param sideBySide empty for {@code unknown} and for a pairing that is hopeless whatever its
 *     blanks are; {@link SideBySide#NONE} if not even one fits
 * @param toleranceNeeded for {@code measure} only
 */
public record Advice(
    Outcome outcome,
    List<Remedy> remedies,
    List<BlankLimit> limits,
    Optional<SideBySide> sideBySide,
    Optional<ToleranceNeeded> toleranceNeeded) {
  public Advice {
    remedies = List.copyOf(remedies);
    limits = List.copyOf(limits);
  }
}
