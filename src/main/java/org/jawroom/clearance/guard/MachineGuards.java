package org.jawroom.clearance.guard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;

/**
 * The guards of a machine and their swept boxes. A guard that needs a blank column is left out and
 * the column recorded; a blank {@code nose_min} leaves it out while cutting only.
 *
 * @param swept in order of rank
 * @param withNose the guards whose height follows the nose, in order of rank
 */
public record MachineGuards(List<SweptGuard> swept, List<NoseGuard> withNose) {

  public MachineGuards {
    swept = List.copyOf(swept);
    withNose = List.copyOf(withNose);
  }

  /**
   * The swept guards at best.
   *
   * @see #of(Settings, Machine, Setup, long, Certainty, Blanks)
   */
  public static MachineGuards of(
      Settings settings, Machine machine, Setup setup, long bedHeight, Blanks blanks) {
    return of(settings, machine, setup, bedHeight, Certainty.AT_BEST, blanks);
  }

  /**
   * The swept guards under the given settings.
   *
   * @param bedHeight bed of the vise as mounted, riser included; while cutting, the shortest tool
   *     must clear it
   * @param blanks receives the columns of open readings found
   */
  public static MachineGuards of(
      Settings settings,
      Machine machine,
      Setup setup,
      long bedHeight,
      Certainty certainty,
      Blanks blanks) {
    List<Guard> guards = new ArrayList<>();
    NoseHeights heights = new NoseHeights(settings, machine, bedHeight, certainty, blanks);
    for (Guard guard : machine.guards()) {
      if (blanks.given(guard.gap(), guard.reading()) || certainty == Certainty.AT_WORST) {
        guards.add(guard);
      } else if (new GuardSweep(machine, guard, setup.stops()).goesWithNose()) {
        // Query the nose heights only to record which of their columns are blank.
        Stream.of(Situation.values())
            .filter(situation -> situation.counts(guard.when()))
            .forEach(heights::in);
      }
    }
    List<SweptGuard> swept = new ArrayList<>();
    List<NoseGuard> withNose = new ArrayList<>();
    int rank = 0;
    for (Guard guard : guards) {
      GuardSweep sweep = new GuardSweep(machine, guard, setup.stops(), certainty);
      long clearance = guard.clearance().orElse(settings.clearance());
      long tolerance = guard.tolerance().orElse(machine.provenance().tolerance());
      for (Situation situation : Situation.values()) {
        if (situation.counts(guard.when())) {
          if (sweep.goesWithNose() && situation == Situation.CUTTING) {
            withNose.add(
                new NoseGuard(
                    guard, sweep.plan(situation), guard.limits().z(), clearance, tolerance));
          }
          int itsRank = rank;
          sweep
              .box(situation, heights)
              .map(
                  box ->
                      new SweptGuard(
                          Optional.of(guard),
                          itsRank,
                          sweep.moves(),
                          situation,
                          box,
                          clearance,
                          tolerance))
              .ifPresent(swept::add);
        }
      }
      rank++;
    }
    for (Situation situation : Situation.values()) {
      swept.add(
          new SweptGuard(
              Optional.empty(),
              rank,
              Axes.NONE,
              situation,
              table(machine),
              settings.clearance(),
              machine.provenance().tolerance()));
    }
    return new MachineGuards(swept, withNose);
  }

  /** The table below its top, its sides widened by the ledges. */
  private static Box table(Machine machine) {
    return new Box(
        machine.top().x().grown(machine.ledges().left(), machine.ledges().right()),
        machine.top().y().grown(machine.ledges().front(), machine.ledges().rear()),
        Interval.of(-Length.ENDLESS, 0));
  }
}
