package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Side;
import org.jawroom.shop.Vise;

/** Blank dimensions, and the verdicts that they leave unknown. */
final class BlankWarnings {
  private static final String UNTIL =
      "that is not hopeless anyway stays unknown until it is measured";

  private BlankWarnings() {}

  static List<Warning> of(Machine machine, Settings settings) {
    Set<String> deciding = new LinkedHashSet<>();
    addIf(deciding, machine.slots().width().isBlank(), "slot_width");
    addIf(
        deciding, machine.slots().needsPitch() && machine.slots().pitch().isBlank(), "slot_pitch");
    for (Side side : Side.values()) {
      addIf(deciding, machine.gap(side).isBlank(), side.word() + "_gap");
    }
    List<Guard> overhead =
        machine.guardRows().stream().filter(g -> countsFromNose(machine, g)).toList();
    boolean sweeps =
        settings.shortestTool().isPresent()
            && overhead.stream().anyMatch(guard -> guard.when().countsWhileCutting());
    boolean loads = overhead.stream().anyMatch(guard -> guard.when().countsWhileLoading());
    addIf(deciding, machine.noseMin().isBlank() && sweeps, "nose_min");
    addIf(deciding, machine.noseMax().isBlank() && (sweeps || loads), "nose_max");

    List<Warning> warnings = new ArrayList<>();
    if (!deciding.isEmpty()) {
      warnings.add(
          Warning.machine(
              machine.name(),
              deciding.iterator().next(),
              named(deciding) + " blank: every pairing on this machine " + UNTIL));
    }
    harmless(machine, deciding, !overhead.isEmpty(), warnings);
    for (Guard guard : machine.guardRows()) {
      if (guard.gap().isBlank()) {
        warnings.add(
            Warning.guard(
                machine.name(),
                guard.name(),
                "gap",
                "gap blank: every pairing on this machine " + UNTIL));
      }
    }
    return warnings;
  }

  /** Blank nose heights that make nothing unknown, but leave numbers untold. */
  private static void harmless(
      Machine machine, Set<String> deciding, boolean hasOverhead, List<Warning> warnings) {
    List<String> untold = new ArrayList<>();
    if (machine.noseMax().isBlank()) {
      untold.add("the room over the jaws");
    }
    if (hasOverhead && (machine.noseMin().isBlank() || machine.noseMax().isBlank())) {
      untold.add("how low the nose may come");
    }
    List<String> columns = new ArrayList<>();
    addIf(columns, machine.noseMin().isBlank() && hasOverhead, "nose_min");
    addIf(columns, machine.noseMax().isBlank(), "nose_max");
    columns.removeAll(deciding);
    if (!columns.isEmpty()) {
      warnings.add(
          Warning.machine(
              machine.name(),
              columns.get(0),
              named(columns)
                  + " blank: no verdict needs it, but "
                  + String.join(" and ", untold)
                  + " cannot be told"));
    }
  }

  static List<Warning> of(Vise vise) {
    Set<String> deciding = new LinkedHashSet<>();
    if (vise.simple()) {
      addBody(deciding, vise);
    }
    for (Mount mount : vise.mounts()) {
      mount.bolts().forEach(bolt -> addBolt(deciding, mount, bolt));
    }
    if (deciding.isEmpty()) {
      return List.of();
    }
    return List.of(
        Warning.vise(
            vise.name(),
            deciding.iterator().next(),
            named(deciding) + " blank: every pairing of this vise " + UNTIL));
  }

  private static void addBody(Set<String> deciding, Vise vise) {
    addIf(deciding, vise.base().width().isBlank(), "base_width");
    addIf(deciding, vise.base().rearReach().isBlank(), "rear_reach");
    addIf(deciding, vise.base().frontReach().isBlank(), "front_reach");
    addIf(
        deciding,
        !vise.jaws().both() && vise.jaws().fixedThickness().isBlank(),
        "fixed_jaw_thickness");
    addIf(deciding, vise.jaws().movingThickness().isBlank(), "moving_jaw_thickness");
    addIf(deciding, vise.screw().rear().closed().isBlank(), "rear_projection_closed");
    addIf(deciding, vise.screw().rear().open().isBlank(), "rear_projection_open");
    addIf(deciding, vise.screw().front().closed().isBlank(), "front_projection_closed");
    addIf(deciding, vise.screw().front().open().isBlank(), "front_projection_open");
    boolean hasScrew = !vise.screw().rear().isNone() || !vise.screw().front().isNone();
    Dimension radius = vise.handle().radius();
    boolean hasHandle = !radius.isNone();
    addIf(deciding, (hasScrew || hasHandle) && vise.screw().height().isBlank(), "screw_height");
    boolean needsDiameter = hasScrew || hasHandle && !vise.handle().fullSwing();
    addIf(deciding, needsDiameter && vise.screw().diameter().isBlank(), "screw_diameter");
    addIf(deciding, radius.isBlank(), "handle_radius");
    addIf(deciding, hasHandle && vise.handle().depth().isBlank(), "handle_depth");
  }

  private static void addBolt(Set<String> deciding, Mount mount, Bolt bolt) {
    addIf(deciding, bolt.v().isBlank(), "bolt_spacing");
    addIf(deciding, bolt.u().isBlank(), "bolt_u");
    addIf(
        deciding,
        bolt.holeU().isBlank(),
        mount.own() ? "bolt_hole_u" : "hole_u of " + mount.name());
    addIf(
        deciding,
        bolt.holeV().isBlank(),
        mount.own() ? "bolt_hole_v" : "hole_v of " + mount.name());
  }

  private static boolean countsFromNose(Machine machine, Guard guard) {
    return guard.carriedBy().z() != machine.tableMoves().z()
        && (Length.isBounded(guard.limits().z().lo()) || Length.isBounded(guard.limits().z().hi()));
  }

  private static void addIf(Collection<String> columns, boolean condition, String column) {
    if (condition) {
      columns.add(column);
    }
  }

  private static String named(Collection<String> columns) {
    return String.join(", ", columns);
  }
}
