package org.jawroom.report.readings;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;

/**
 * The readings that a margin is computed from, by column name: one tolerance covers them all.
 *
 * @param machine from the slots to the face of the guard
 * @param vise from the bolts to the end of the part
 */
public record Readings(List<String> machine, List<String> vise) {

  /** The readings behind the limit of the recommended placement; empty if nothing limits it. */
  public static Optional<Readings> behind(Outcome outcome) {
    return outcome
        .recommended()
        .flatMap(place -> place.limit().map(limit -> behind(outcome, place, limit)));
  }

  private static Readings behind(Outcome outcome, Recommendation place, Limit limit) {
    boolean guardBeyond =
        limit.guardBox().along(limit.axis()).lo() - limit.partBox().along(limit.axis()).hi()
            == limit.gap();
    Set<String> machine = new LinkedHashSet<>();
    GuardReadings.add(outcome.machine(), limit, guardBeyond, machine);
    SlotReadings.add(outcome.machine(), limit.axis(), place.slots(), machine);
    Set<String> vise = new LinkedHashSet<>();
    PartReadings part = new PartReadings(outcome.vise(), place, limit, guardBeyond, vise);
    if (limit.axis() == outcome.machine().slots().direction().across()) {
      part.addBolts();
    }
    part.addEdge();
    return new Readings(List.copyOf(machine), List.copyOf(vise));
  }

  /** {@code machine: front_gap, half of table_width; vise: bolt_u}. */
  public String words() {
    return "machine: " + named(machine) + "\nvise: " + named(vise);
  }

  private static String named(List<String> readings) {
    return readings.isEmpty() ? "none" : String.join(", ", readings);
  }
}
