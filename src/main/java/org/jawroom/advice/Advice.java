package org.jawroom.advice;

import java.util.List;
import java.util.Optional;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.SideBySide;

/**
 * What a whole shop's reports tell of a pairing beside its outcome.
 *
 * @param remedies for every verdict but {@code fits} and {@code unknown}, in the order of effort
 * @param limits for {@code unknown}: of each blank that has one, in the order of the tables
 * @param sideBySide empty for {@code unknown} and the hopeless; {@link SideBySide#NONE} where not
 *     one fits
 * @param toleranceNeeded for {@code measure}
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
