package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Orientation;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** Warnings about a row of {@code vises}. */
final class ViseWarnings {
  private ViseWarnings() {}

  /** {@code machines}: those that the vise may stand on. */
  static List<Warning> of(Vise vise, List<Machine> machines) {
    List<Warning> warnings = new ArrayList<>();
    if (vise.simple()) {
      thickness(vise, "fixed_jaw_thickness", vise.jaws().fixedThickness()).ifPresent(warnings::add);
      thickness(vise, "moving_jaw_thickness", vise.jaws().movingThickness())
          .ifPresent(warnings::add);
      vise.mounts().forEach(mount -> outside(vise, mount).ifPresent(warnings::add));
    }
    if (isTurnedToTheRear(vise, machines)) {
      warnings.add(
          Warning.vise(
              Seriousness.UNUSUAL,
              vise.name(),
              "turns",
              "allows the handle to the rear, and so does a machine. If nobody can work it from"
                  + " there, name in turns the sides from which somebody can"));
    }
    if (vise.provenance().assumedExact()) {
      warnings.add(
          Warning.vise(
              Seriousness.UNSEEN,
              vise.name(),
              MachineWarnings.TOLERANCE,
              MachineWarnings.TAKEN_AS_0));
    }
    return warnings;
  }

  /** Whether a handle may point to the rear on any of the machines. */
  private static boolean isTurnedToTheRear(Vise vise, List<Machine> machines) {
    boolean handle = !vise.simple() || !vise.handle().radius().isNone();
    return handle
        && vise.turns().contains(Orientation.REAR)
        && machines.stream().anyMatch(machine -> machine.turns().contains(Orientation.REAR));
  }

  private static Optional<Warning> thickness(Vise vise, String column, Dimension thickness) {
    Jaws jaws = vise.jaws();
    if (!thickness.isKnown() || thickness.length() != jaws.width()) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.vise(
            Seriousness.WRONG,
            vise.name(),
            column,
            SpokenLength.of(thickness.length())
                + ", the same as jaw_width: is it a brochure's jaw length? Measure from the jaw's"
                + " face to its back"));
  }

  /** A bolt whose centre lies outside the base seen from above; on its edge is inside. */
  private static Optional<Warning> outside(Vise vise, Mount mount) {
    Base base = vise.base();
    boolean beside =
        base.width().isKnown()
            && mount.bolts().stream()
                .map(Bolt::v)
                .filter(Dimension::isKnown)
                .anyMatch(v -> 2 * Math.abs(v.length()) > base.width().length());
    boolean beyond =
        mount.bolts().stream()
            .map(Bolt::u)
            .filter(Dimension::isKnown)
            .anyMatch(
                u ->
                    isPast(u.length(), base.frontReach()) || isPast(-u.length(), base.rearReach()));
    if (!beside && !beyond) {
      return Optional.empty();
    }
    String column = beside ? "base_width" : "front_reach";
    String edge = beside ? "base_width" : "front_reach or rear_reach";
    return Optional.of(
        Warning.vise(
            Seriousness.WRONG,
            vise.name(),
            column,
            "the bolts of "
                + mount.name()
                + " stand outside "
                + edge
                + ". Measure it over flange, ears or swivel plate, whichever reaches farthest"));
  }

  private static boolean isPast(long u, Dimension reach) {
    return reach.isKnown() && u > reach.length();
  }
}
