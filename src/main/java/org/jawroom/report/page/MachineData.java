package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.GuardStance;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.bolting.slot.SlotLines;
import org.jawroom.report.page.PageValues.Facts;
import org.jawroom.report.wording.PairingWords;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/** The page's data of one machine. */
final class MachineData {
  private MachineData() {}

  /**
   * @param pairings of the machine; if one of them is drawn, its open readings are taken at worst
   */
  static Map<String, Object> of(Settings settings, Machine machine, List<PagePairing> pairings) {
    Facts facts =
        new Facts()
            .named(machine.name())
            .with("about", machine.description())
            .with("candidate", machine.candidate())
            .with("facts", PageValues.inBoth(words -> words.facts(machine)))
            .with("cautions", PairingWords.cautions(machine));
    pairings.stream()
        .filter(pairing -> !pairing.fastened().isEmpty())
        .findFirst()
        .ifPresent(
            any -> {
              draw(settings, machine, any.outcome().vise(), facts);
              facts.with("open", OpenData.readings(pairings, OpenReading::isOfMachine));
            });
    return facts.map();
  }

  private static void draw(Settings settings, Machine machine, Vise vise, Facts facts) {
    SlotLines slots = SlotLines.of(machine);
    facts
        .with("table", List.of(machine.tableLength(), machine.tableWidth()))
        .with("spindle", List.of(machine.spindleX(), machine.spindleY()))
        .with("reach", List.of(machine.reachX(), machine.reachY()))
        .with("load", List.of(machine.loadX(), machine.loadY()))
        .with("moves", moves(machine))
        .with("nose", nose(machine))
        .with("along", slots.along().letter())
        .with("slots", slots.centres())
        .with("slotWidth", known(machine.slots().width()))
        .with("slotReach", PageValues.ends(slots.reach()))
        .with("guards", guards(settings, machine, vise));
  }

  private static String moves(Machine machine) {
    StringBuilder letters = new StringBuilder();
    for (Axis axis : Axis.values()) {
      letters.append(machine.tableMoves().has(axis) ? axis.letter() : "");
    }
    return letters.toString();
  }

  /**
   * [least, least highest, greatest highest]: what the readings of the nose's heights allow; the
   * last two are equal where the highest is known.
   */
  private static List<Long> nose(Machine machine) {
    Interval highest = Certainty.sizes(machine.noseMax());
    return List.of(Certainty.sizes(machine.noseMin()).lo(), highest.lo(), highest.hi());
  }

  private static Long known(Dimension dimension) {
    return dimension.isKnown() ? dimension.length() : null;
  }

  /** The guards by rank; {@code when} is 1 for cutting, 2 for loading, 3 for both. */
  private static List<Object> guards(Settings settings, Machine machine, Vise vise) {
    Map<Integer, Integer> when = new LinkedHashMap<>();
    Map<Integer, GuardStance> stances = new LinkedHashMap<>();
    // The bed's height affects only how low the nose comes, which the page computes itself; hence
    // 0.
    for (GuardStance stance : GuardStance.all(settings, machine, 0)) {
      int rank = stance.swept().rank();
      stances.putIfAbsent(rank, stance);
      when.merge(rank, stance.swept().situation() == Situation.CUTTING ? 1 : 2, Integer::sum);
    }
    List<Object> guards = new ArrayList<>();
    stances.forEach(
        (rank, stance) ->
            guards.add(
                new Facts()
                    .named(stance.swept().name())
                    .with("when", when.get(rank))
                    .with("x", PageValues.ends(stance.middle().x()))
                    .with("y", PageValues.ends(stance.middle().y()))
                    .with("z", PageValues.ends(stance.fromNose().orElse(stance.swept().box().z())))
                    .with("movesX", stance.swept().moves().x())
                    .with("movesY", stance.swept().moves().y())
                    .with("withNose", stance.fromNose().isPresent())
                    .with("table", stance.swept().table())
                    .with("clearance", stance.swept().clearance())
                    .with("tolerance", stance.swept().tolerance())
                    .with(
                        "moves",
                        stance
                            .swept()
                            .guard()
                            .map(guard -> OpenData.moves(settings, machine, vise, guard))
                            .orElse(List.of()))
                    .map()));
    return guards;
  }
}
