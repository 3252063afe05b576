package org.jawroom.advice.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.AmountCandidates;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** Finds the single changes that make a pairing without blanks fit, in order of effort. */
public final class Remedies {

  /** The greatest height of a riser plate that is considered. */
  private static final long HIGHEST_RISER = 200 * Length.MM;

  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Goal goal;
  private final Model now;
  private final List<Remedy> remedies = new ArrayList<>();

  private Remedies(Settings settings, SolvedPairing solved, Goal goal) {
    this.settings = settings;
    this.machine = solved.outcome().machine();
    this.vise = solved.outcome().vise();
    this.goal = goal;
    this.now = solved.model();
  }

  /** The remedies of a pairing without blanks; none if it fits. */
  public static List<Remedy> of(Settings settings, SolvedPairing solved) {
    Outcome outcome = solved.outcome();
    if (outcome.verdict() == Verdict.FITS) {
      return List.of();
    }
    boolean isAwkward = outcome.verdict() == Verdict.AWKWARD;
    Goal goal = isAwkward ? Goal.FITS : Goal.CLEAR;
    Remedies builder = new Remedies(settings, solved, goal);
    builder.handleOff();
    builder.upperSwing();
    builder.turn();
    builder.travel(RemedyKind.TRAVEL_FRONT, Side.FRONT, builder.machine.reachY());
    builder.travel(RemedyKind.TRAVEL_BACK, Side.REAR, builder.machine.reachY());
    builder.travel(RemedyKind.TRAVEL_LEFT, Side.LEFT, builder.machine.reachX());
    builder.travel(RemedyKind.TRAVEL_RIGHT, Side.RIGHT, builder.machine.reachX());
    builder.raise();
    if (outcome.verdict() != Verdict.NO_MOUNT) {
      builder.remedies.addAll(new GuardMoves(solved, goal).all());
    }
    if (!isAwkward) {
      outcome.bestMargin().ifPresent(builder::clearance);
    }
    return builder.remedies;
  }

  private void handleOff() {
    Handle handle = vise.handle();
    boolean own = vise.simple() && !handle.radius().isNone() && handle.onWhileCutting();
    boolean row = vise.parts().stream().anyMatch(Remedies::isHandleWhileCutting);
    if (own || row) {
      Vise off =
          vise.withHandle(new Handle(handle.radius(), handle.depth(), false, handle.fullSwing()))
              .withParts(
                  vise.parts().stream()
                      .filter(part -> !isHandleWhileCutting(part) || part.when() == When.ALWAYS)
                      .map(part -> isHandleWhileCutting(part) ? part.withWhen(When.LOADING) : part)
                      .toList());
      addIfItFits(RemedyKind.HANDLE_OFF, now.with(off));
    }
  }

  private static boolean isHandleWhileCutting(VisePart part) {
    return part.name().equals(VisePart.HANDLE) && part.when().countsWhileCutting();
  }

  private void upperSwing() {
    Handle handle = vise.handle();
    if (vise.simple() && !handle.radius().isNone() && handle.fullSwing()) {
      Vise over =
          vise.withHandle(
              new Handle(handle.radius(), handle.depth(), handle.onWhileCutting(), false));
      addIfItFits(RemedyKind.UPPER_SWING, now.with(over));
    }
  }

  private void turn() {
    Set<Orientation> others = EnumSet.allOf(Orientation.class);
    others.removeIf(turn -> vise.turns().contains(turn) && machine.turns().contains(turn));
    addIfItFits(
        RemedyKind.TURN,
        Model.of(settings, machine.withTurns(others), vise.withTurns(others), Setup.PLAIN));
  }

  private void travel(RemedyKind kind, Side tableToward, long half) {
    OptionalLong least =
        MonotoneSearch.from(
            0, half, by -> goal.isMet(now.on(machine, Setup.stopped(tableToward, by))));
    least.ifPresent(by -> add(kind, least, now.on(machine, Setup.stopped(tableToward, by))));
  }

  private void raise() {
    AmountCandidates.risers(goal.regions(now)).stream()
        .map(height -> Length.ceilTo(height, MonotoneSearch.GRAIN))
        .distinct()
        .filter(height -> height <= HIGHEST_RISER)
        .filter(height -> goal.isMet(now.on(machine, Setup.onRiser(height))))
        .findFirst()
        .ifPresent(
            height ->
                add(
                    RemedyKind.RAISE,
                    OptionalLong.of(height),
                    now.on(machine, Setup.onRiser(height))));
  }

  private void clearance(long best) {
    long less = Length.ceilTo(-best, MonotoneSearch.GRAIN);
    boolean possible =
        less <= settings.clearance()
            && machine.guards().stream()
                .allMatch(guard -> less <= guard.clearance().orElse(settings.clearance()));
    if (possible) {
      Machine asking =
          machine.withEachGuard(
              guard ->
                  guard.clearance().isPresent()
                      ? guard.withClearance(OptionalLong.of(guard.clearance().getAsLong() - less))
                      : guard);
      add(
          RemedyKind.CLEARANCE,
          OptionalLong.of(less),
          Model.of(
              settings.toBuilder().clearance(settings.clearance() - less).build(),
              asking,
              vise,
              Setup.PLAIN));
    }
  }

  private void addIfItFits(RemedyKind kind, Model model) {
    if (goal.isMet(model)) {
      add(kind, OptionalLong.empty(), model);
    }
  }

  private void add(RemedyKind kind, OptionalLong amount, Model model) {
    remedies.add(Goal.reached(kind, Optional.empty(), Optional.empty(), amount, model));
  }
}
