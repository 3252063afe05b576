package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jawroom.geometry.Orientation;
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

  /** How many vises are named in one warning. */
  private static final int NAMED = 20;

  private final List<String> names = new ArrayList<>();
  private final List<Set<Orientation>> turns = new ArrayList<>();

  /** Of these vises, on whatever machine. */
  HandleWarnings(List<Vise> vises) {
    for (Vise vise : vises) {
      if (hangs(vise)) {
        names.add(vise.name());
        turns.add(vise.turns());
      }
    }
  }

  List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    Set<Orientation> front = EnumSet.noneOf(Orientation.class);
    if (machine.turns().contains(Orientation.FRONT)) {
      front.add(Orientation.FRONT);
    }
    String atFront = hanging(front);
    if (!atFront.isEmpty() && machine.guardRows().stream().noneMatch(HandleWarnings::isSill)) {
      warnings.add(
          Warning.machine(
              machine.name(),
              "guards",
              "has no row of kind sill, though "
                  + atFront
                  + " below the table top at the front. Measure the sill or apron there and give it a row"));
    }
    Set<Orientation> bare = EnumSet.noneOf(Orientation.class);
    for (Orientation turn : machine.turns()) {
      if (machine.ledges().get(side(turn)) == 0 && turns.stream().anyMatch(t -> t.contains(turn))) {
        bare.add(turn);
      }
    }
    if (!bare.isEmpty()) {
      List<String> ledges = bare.stream().map(turn -> side(turn).word() + "_ledge").toList();
      warnings.add(
          Warning.machine(
              machine.name(),
              ledges.get(0),
              String.join(", ", ledges)
                  + (ledges.size() == 1 ? " is 0" : " are 0")
                  + ", though "
                  + hanging(bare)
                  + " below the table top there. Measure what sticks out of the table's side: rails,"
                  + " scales, feed boxes"));
    }
    return warnings;
  }

  /** Those that may be turned so, in words; empty if there are none. */
  private String hanging(Set<Orientation> any) {
    List<String> first = new ArrayList<>();
    int more = 0;
    for (int vise = 0; vise < names.size(); vise++) {
      if (!Collections.disjoint(turns.get(vise), any)) {
        if (first.size() < NAMED) {
          first.add(names.get(vise));
        } else {
          more++;
        }
      }
    }
    return first.isEmpty()
        ? ""
        : "the handle or a part of "
            + String.join(", ", first)
            + (more == 0 ? "" : " and " + more + " more")
            + " hangs";
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

  private static boolean isSill(Guard guard) {
    return guard.kind().strip().toLowerCase(Locale.ROOT).equals("sill");
  }

  private static Side side(Orientation turn) {
    return Side.valueOf(turn.name());
  }
}
