package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.placement.bolting.BoltingBlanks;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** Warnings about open readings, blank or a range, and which verdicts they leave unknown. */
final class BlankWarnings {
  private static final String OPEN = " open (blank or a range): every pairing ";
  private static final String UNTIL =
      " stays unknown until it is measured, unless all its values give the same verdict";

  private BlankWarnings() {}

  static List<Warning> of(Machine machine, Settings settings) {
    List<String> deciding = deciding(machine, settings);
    boolean hasOverhead =
        machine.guards().stream().anyMatch(guard -> machine.movesAgainstTable(guard).z());

    List<Warning> warnings = new ArrayList<>();
    if (!deciding.isEmpty()) {
      warnings.add(
          Warning.machine(
              Seriousness.OPEN,
              machine.name(),
              deciding.get(0),
              named(deciding) + OPEN + "on this machine" + UNTIL));
    }
    harmless(machine, deciding, hasOverhead, warnings);
    for (Guard guard : machine.guardRows()) {
      if (guard.gap().isOpen()) {
        warnings.add(
            Warning.guard(
                Seriousness.OPEN,
                machine.name(),
                guard.name(),
                "gap",
                "gap" + OPEN + "on this machine" + UNTIL));
      }
    }
    return warnings;
  }

  /** The blank columns of the machine's row that bolting and guards need with any vise. */
  private static List<String> deciding(Machine machine, Settings settings) {
    Blanks blanks = new Blanks();
    BoltingBlanks.given(machine.slots(), blanks);
    MachineGuards.of(settings, machine, Setup.PLAIN, 0, blanks);
    return blanks.columns().stream()
        .filter(column -> column != Column.GUARD_GAP)
        .map(Column::column)
        .toList();
  }

  /** Blank nose heights that leave numbers open, but no verdict. */
  private static void harmless(
      Machine machine, List<String> deciding, boolean hasOverhead, List<Warning> warnings) {
    List<String> open = new ArrayList<>();
    if (machine.noseMax().isBlank()) {
      open.add("the room over the jaws");
    }
    if (hasOverhead && (machine.noseMin().isBlank() || machine.noseMax().isBlank())) {
      open.add("how low the nose may come");
    }
    List<String> columns = new ArrayList<>();
    addIf(columns, machine.noseMin().isBlank() && hasOverhead, "nose_min");
    addIf(columns, machine.noseMax().isBlank(), "nose_max");
    columns.removeAll(deciding);
    if (!columns.isEmpty()) {
      warnings.add(
          Warning.machine(
              Seriousness.BLANK,
              machine.name(),
              columns.get(0),
              named(columns)
                  + " blank: no verdict needs it, but "
                  + String.join(" and ", open)
                  + (open.size() == 1 ? " is" : " are")
                  + " not computed"));
    }
  }

  static List<Warning> of(Vise vise) {
    Set<String> deciding = new LinkedHashSet<>();
    Blanks body = new Blanks();
    ViseParts.of(vise, body);
    body.columns().forEach(column -> deciding.add(column.column()));
    for (Mount mount : vise.mounts()) {
      for (Bolt bolt : mount.bolts()) {
        Blanks blanks = new Blanks();
        BoltingBlanks.given(mount, bolt, blanks);
        blanks.columns().forEach(column -> deciding.add(named(column, mount)));
      }
    }
    if (deciding.isEmpty()) {
      return List.of();
    }
    return List.of(
        Warning.vise(
            Seriousness.OPEN,
            vise.name(),
            deciding.iterator().next(),
            named(deciding) + OPEN + "of this vise" + UNTIL));
  }

  /** The column's name; of the table of mounts with the name of the mount. */
  private static String named(Column column, Mount mount) {
    boolean ofMounts = column == Column.HOLE_U || column == Column.HOLE_V;
    return ofMounts ? column.column() + " of " + mount.name() : column.column();
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
