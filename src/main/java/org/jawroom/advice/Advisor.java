package org.jawroom.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.BlankLimits;
import org.jawroom.advice.remedy.Remedies;
import org.jawroom.advice.tape.DecidingReadings;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;

/** The entry points of this package. */
public final class Advisor {
  private Advisor() {}

  /** The advice on {@code vise} on {@code machine}; pure. */
  public static Advice advise(Settings settings, Machine machine, Vise vise) {
    return advise(settings, Pairing.solved(settings, machine, vise));
  }

  /**
   * The advice on a pairing of a shop, together with its outcome.
   *
   * @param machine index of the machine in input order, from 0; {@code vise} likewise
   */
  public static Advice advise(Settings settings, ShopPairings pairings, int machine, int vise) {
    return advise(settings, pairings.solved(machine, vise));
  }

  /** The full explanation of {@code vise} on {@code machine}; pure. */
  public static Explanation explain(Settings settings, Machine machine, Vise vise) {
    SolvedPairing solved = Pairing.solved(settings, machine, vise);
    Optional<Inspection> inspection = solved.inspection();
    return new Explanation(
        advise(settings, solved),
        inspection.map(Inspection::pairs).orElse(List.of()),
        inspection.flatMap(Inspection::roomiest),
        inspection.map(Inspection::others).orElse(List.of()),
        solved.model().misses(),
        inspection.map(Inspection::reachShort));
  }

  /** The advice on a solved pairing. */
  public static Advice advise(Settings settings, SolvedPairing solved) {
    Outcome outcome = solved.outcome();
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    // With an open reading, what holds at worst alone is certain; any other number would be a
    // guess.
    boolean blank = solved.model().isOpen() && outcome.recommended().isEmpty();
    boolean unknown = outcome.verdict() == Verdict.UNKNOWN;
    List<BlankLimit> limits =
        unknown ? BlankLimits.of(settings, machine, vise, outcome.missing()) : List.of();
    return new Advice(
        outcome,
        blank ? List.of() : Remedies.of(settings, solved),
        limits,
        unknown ? DecidingReadings.of(settings, outcome, limits) : List.of(),
        blank ? Optional.empty() : Optional.of(solved.sideBySide()),
        outcome.verdict() == Verdict.MEASURE
            ? Optional.of(toleranceNeeded(settings, machine, vise))
            : Optional.empty());
  }

  private static ToleranceNeeded toleranceNeeded(Settings settings, Machine machine, Vise vise) {
    Provenance ofMachine = machine.provenance();
    Provenance ofVise = vise.provenance();
    return new ToleranceNeeded(
        greatest(
            ofMachine.tolerance(),
            t -> plain(settings, machine.withProvenance(ofMachine.withTolerance(t)), vise)),
        greatest(
            ofVise.tolerance(),
            t -> plain(settings, machine, vise.withProvenance(ofVise.withTolerance(t)))));
  }

  private static OptionalLong greatest(long now, LongFunction<Model> under) {
    return MonotoneSearch.downFrom(now, 0, tolerance -> under.apply(tolerance).isClear());
  }

  private static Model plain(Settings settings, Machine machine, Vise vise) {
    return Model.of(settings, machine, vise, Setup.PLAIN);
  }
}
