package org.jawroom.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.tape.Deciding;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.SideBySide;

/**
 * What the reports of a whole shop show of a pairing besides its outcome.
 *
 * @param remedies for every verdict but {@code fits} and {@code unknown}, in order of effort
 * @param limits for {@code unknown}: one per blank that has a limit, in table order
 * @param deciding for {@code unknown}: the open readings that decide it, in table order; empty if
 *     it does not fit even at best
 * @param sideBySide empty for {@code unknown} and for a pairing that is hopeless whatever its
 *     blanks are; {@link SideBySide#NONE} if not even one fits
 * @param toleranceNeeded for {@code measure} only
 */
public record Advice(
    Outcome outcome,
    List<Remedy> remedies,
    List<BlankLimit> limits,
    List<Deciding> deciding,
    Optional<SideBySide> sideBySide,
    Optional<ToleranceNeeded> toleranceNeeded) {
  private static final Comparator<Remedy> FOR_PEOPLE =
      Comparator.comparingInt((Remedy remedy) -> remedy.kind().effort())
          .thenComparingLong(remedy -> remedy.amount().orElse(0));

  public Advice {
    remedies = List.copyOf(remedies);
    limits = List.copyOf(limits);
    deciding = List.copyOf(deciding);
  }

  /** An outcome alone, as of a shop too large to work out more. */
  public static Advice bare(Outcome outcome) {
    return new Advice(outcome, List.of(), List.of(), List.of(), Optional.empty(), Optional.empty());
  }

  /**
   * The remedies as people see them: in order of effort, and within a kind the least amount first.
   */
  public List<Remedy> remediesForPeople() {
    return remedies.stream().sorted(FOR_PEOPLE).toList();
  }
}
