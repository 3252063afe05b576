package org.jawroom.placement.pairing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Setup;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.search.Description;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/** The entry point of the solver. */
public final class Pairing {
  private Pairing() {}

  /** The outcome of {@code vise} on {@code machine}; pure. */
  public static Outcome solve(Settings settings, Machine machine, Vise vise) {
    PreparedMachine prepared = PreparedMachine.of(settings, machine, Setup.PLAIN);
    return solve(prepared, PreparedVise.of(vise, 0, prepared.threads()));
  }

  public static Outcome solve(PreparedMachine preparedMachine, PreparedVise preparedVise) {
    Settings settings = preparedMachine.settings();
    Machine machine = preparedMachine.machine();
    Vise vise = preparedVise.vise();
    Model model = Model.of(preparedMachine, preparedVise);
    VerdictRule judgement = model.judgement();
    List<Column> missing = model.blanks();
    if (missing.isEmpty()) {
      Description description = model.description();
      return new Outcome(
          machine,
          vise,
          judgement.verdict(),
          judgement.bestMargin(),
          judgement.choice().map(choice -> description.of(choice, judgement.openings())),
          judgement.usable(),
          roomOverJaws(machine, vise),
          loadLeft(machine, vise),
          shortestToolTooShort(settings, machine, vise),
          List.of());
    }
    // Whatever needs a blank was left out, which is never worse than the truth. If the vise fits
    // nowhere even so, no measurement helps; otherwise any number would be a guess.
    return judgement.isHopeless()
        ? new Outcome(
            machine,
            vise,
            judgement.verdict(),
            OptionalLong.empty(),
            Optional.empty(),
            Optional.empty(),
            roomOverJaws(machine, vise),
            loadLeft(machine, vise),
            shortestToolTooShort(settings, machine, vise),
            List.of())
        : new Outcome(
            machine,
            vise,
            Verdict.UNKNOWN,
            OptionalLong.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalLong.empty(),
            Optional.empty(),
            false,
            missing);
  }

  private static OptionalLong roomOverJaws(Machine machine, Vise vise) {
    Dimension nose = machine.noseMax();
    return nose.isKnown() ? OptionalLong.of(nose.length() - vise.top()) : OptionalLong.empty();
  }

  private static Optional<BigDecimal> loadLeft(Machine machine, Vise vise) {
    return machine.maxLoad().flatMap(load -> vise.mass().map(load::subtract));
  }

  private static boolean shortestToolTooShort(Settings settings, Machine machine, Vise vise) {
    Dimension nose = machine.noseMax();
    return settings.shortestTool().isPresent()
        && nose.isKnown()
        && vise.base().bedHeight() + settings.shortestTool().getAsLong() > nose.length();
  }
}
