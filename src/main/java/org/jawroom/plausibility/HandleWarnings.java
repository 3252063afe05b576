package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jawroom.geometry.Orientation;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Vise;

/**
 * Warnings about ledges given as 0 although a vise's handle, or a part, reaches below the table top
 * on that side. Whether a sill was looked for is a matter of {@code looked_for}.
 */
final class HandleWarnings {

  /** How many vises are named in one warning. */
  private static final int NAMED = 20;

  private final List<String> names = new ArrayList<>();
  private final List<Set<Orientation>> turns = new ArrayList<>();

  /** The turns of any of them. */
  private final Set<Orientation> allTurns = EnumSet.noneOf(Orientation.class);

  /** What is said of those that may be turned so; machines with the same ledges share it. */
  private final Map<Set<Orientation>, String> named = new HashMap<>();

  /** For these vises, on any machine. */
  HandleWarnings(List<Vise> vises) {
    for (Vise vise : vises) {
      if (hangs(vise)) {
        names.add(vise.name());
        turns.add(vise.turns());
        allTurns.addAll(vise.turns());
      }
    }
  }

  List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    Set<Orientation> bare = EnumSet.noneOf(Orientation.class);
    for (Orientation turn : machine.turns()) {
      if (machine.ledges().get(side(turn)) == 0 && allTurns.contains(turn)) {
        bare.add(turn);
      }
    }
    if (!bare.isEmpty()) {
      List<String> ledges = bare.stream().map(turn -> side(turn).word() + "_ledge").toList();
      warnings.add(
          Warning.machine(
              Seriousness.UNSEEN,
              machine.name(),
              ledges.get(0),
              String.join(", ", ledges)
                  + (ledges.size() == 1 ? " is 0" : " are 0")
                  + ", though "
                  + named.computeIfAbsent(bare, this::hanging)
                  + " below the table top there. Measure what sticks out of the table's side:"
                  + " rails, scales, feed boxes; if nothing does, leave it"));
    }
    return warnings;
  }

  /** Names the vises that may be turned so; there is one. */
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
    return "the handle or a part of "
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

  private static Side side(Orientation turn) {
    return Side.valueOf(turn.name());
  }
}
