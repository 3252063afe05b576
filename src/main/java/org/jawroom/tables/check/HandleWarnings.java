package org.jawroom.tables.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.geometry.Turn;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Handle;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Side;
import org.jawroom.shop.Vise;

/**
 * Vises whose handle, or a part, hangs down past the table's edge, and what that asks of a
 * machine's rows: its ledges, and at the front its sill.
 */
final class HandleWarnings {
  private HandleWarnings() {}

  static List<Warning> of(Machine machine, List<Vise> vises) {
    List<Vise> hanging = vises.stream().filter(HandleWarnings::hangs).toList();
    List<Warning> warnings = new ArrayList<>();
    List<Vise> atFront =
        hanging.stream().filter(vise -> turns(machine, vise).contains(Turn.FRONT)).toList();
    if (!atFront.isEmpty() && machine.guards().stream().noneMatch(HandleWarnings::isSill)) {
      warnings.add(
          Warning.machine(
              machine.name(),
              "guards",
              "has no row of kind sill, though "
                  + hangs(atFront)
                  + " below the table top at the front. Measure the sill or apron there and give it a row"));
    }
    List<Turn> bare =
        EnumSet.allOf(Turn.class).stream()
            .filter(turn -> machine.ledges().get(side(turn)) == 0)
            .filter(turn -> hanging.stream().anyMatch(v -> turns(machine, v).contains(turn)))
            .toList();
    if (!bare.isEmpty()) {
      List<Vise> toward =
          hanging.stream()
              .filter(vise -> bare.stream().anyMatch(turns(machine, vise)::contains))
              .toList();
      List<String> ledges = bare.stream().map(turn -> side(turn).word() + "_ledge").toList();
      warnings.add(
          Warning.machine(
              machine.name(),
              ledges.get(0),
              String.join(", ", ledges)
                  + (ledges.size() == 1 ? " is 0" : " are 0")
                  + ", though "
                  + hangs(toward)
                  + " below the table top there. Measure what sticks out of the table's side: rails,"
                  + " scales, feed boxes"));
    }
    return warnings;
  }

  /**
   * Whether the handle, in one situation or the other, or a part reaches below the vise's
   * underside.
   */
  private static boolean hangs(Vise vise) {
    if (vise.parts().stream().anyMatch(part -> part.w().lo() < 0)) {
      return true;
    }
    Handle handle = vise.handle();
    boolean allRound = handle.fullSwing() || handle.onWhileCutting();
    return vise.simple()
        && allRound
        && handle.radius().isKnown()
        && vise.screw().height().isKnown()
        && vise.screw().height().length() < handle.radius().length();
  }

  private static String hangs(List<Vise> vises) {
    return "the handle or a part of "
        + vises.stream().map(Vise::name).collect(Collectors.joining(", "))
        + " hangs";
  }

  private static boolean isSill(Guard guard) {
    return guard.kind().strip().toLowerCase(Locale.ROOT).equals("sill");
  }

  private static Set<Turn> turns(Machine machine, Vise vise) {
    Set<Turn> both = EnumSet.noneOf(Turn.class);
    both.addAll(machine.turns());
    both.retainAll(vise.turns());
    return both;
  }

  private static Side side(Turn turn) {
    return Side.valueOf(turn.name());
  }
}
