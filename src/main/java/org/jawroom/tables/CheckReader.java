package org.jawroom.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Check;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Names;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.ProvenanceCells;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.vise.PartReader;

/** Parses the rows of {@code checks}, once machines and vises are read. */
final class CheckReader {
  private static final String TABLE = "table";

  private final Owners machineRows;
  private final Owners viseRows;
  private final List<Machine> machines;
  private final List<Vise> vises;
  private final Ledger ledger;

  CheckReader(
      Owners machineRows,
      Owners viseRows,
      List<Machine> machines,
      List<Vise> vises,
      Ledger ledger) {
    this.machineRows = machineRows;
    this.viseRows = viseRows;
    this.machines = machines;
    this.vises = vises;
    this.ledger = ledger;
  }

  /** The sound rows, in input order. */
  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    for (Row row : Rows.of(TableSpec.CHECKS, ledger)) {
      read(row).ifPresent(checks::add);
    }
    return checks;
  }

  /** Empty, with faults, if the row is unsound or its machine or vise is. */
  private Optional<Check> read(Row row) {
    Optional<String> machineName = machineRows.of(row).map(Owners.Owner::name);
    Optional<String> viseName = viseRows.of(row).map(Owners.Owner::name);
    Optional<Machine> machine =
        machines.stream().filter(one -> isNamed(one.name(), machineName)).findFirst();
    Optional<Vise> vise = vises.stream().filter(one -> isNamed(one.name(), viseName)).findFirst();
    Optional<Orientation> turn =
        row.word("handle_to").map(word -> Orientation.valueOf(word.toUpperCase(Locale.ROOT)));
    OptionalLong fromLeft = row.length("from_left");
    OptionalLong fromFront = row.length("from_front");
    machine.ifPresent(
        one -> {
          refuseOffTable(row, "from_left", fromLeft, one.tableLength());
          refuseOffTable(row, "from_front", fromFront, one.tableWidth());
        });
    Optional<String> part = row.name("part").flatMap(name -> part(row, vise, name));
    Optional<Optional<Guard>> guard = row.name("guard").flatMap(name -> guard(row, machine, name));
    Optional<Check.Opening> opening = opening(row, vise);
    boolean whileCutting = row.says("situation", "cutting");
    Optional<Axis> axis = row.word("axis").map(word -> Axis.valueOf(word.toUpperCase(Locale.ROOT)));
    OptionalLong found = row.length("found");
    Provenance provenance = ProvenanceCells.read(row, "check of " + row.raw("machine"), ledger);
    row.unit();
    if (!row.isSound() || machine.isEmpty() || vise.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Check(
            machine.get(),
            vise.get(),
            turn.orElseThrow(),
            fromLeft.getAsLong(),
            fromFront.getAsLong(),
            part.orElseThrow(),
            guard.orElseThrow(),
            opening.orElseThrow(),
            whileCutting,
            axis,
            found.getAsLong(),
            provenance));
  }

  /**
   * Refuses a place a whole table away from the table, where no vise is bolted. What hangs over an
   * edge is let pass: a base's side, or the jaw of a vise that is bolted at its handle's end.
   */
  private static void refuseOffTable(Row row, String column, OptionalLong from, long table) {
    if (from.isPresent() && (from.getAsLong() < -table || from.getAsLong() > 2 * table)) {
      row.fault(
          column,
          "is far off the table, which measures "
              + Lengths.inMillimetres(table)
              + " that way; measure again from the table's edge");
    }
  }

  private Optional<String> part(Row row, Optional<Vise> vise, String name) {
    List<String> known =
        Stream.of(
                PartReader.OWN_NAMES.stream(),
                Stream.of(VisePart.HANDLE),
                vise.stream().flatMap(one -> one.parts().stream()).map(VisePart::name))
            .flatMap(names -> names)
            .toList();
    Optional<String> part = named(known, name);
    if (part.isEmpty() && vise.isPresent()) {
      row.fault("part", "is no part of " + vise.get().name() + ledger.hint(name, () -> known));
    }
    return part;
  }

  /** The guard; empty inside for the table; empty if there is none of that name. */
  private Optional<Optional<Guard>> guard(Row row, Optional<Machine> machine, String name) {
    if (Names.key(name).equals(TABLE)) {
      return Optional.of(Optional.empty());
    }
    Optional<Guard> guard =
        machine.stream()
            .flatMap(one -> one.guards().stream())
            .filter(one -> Names.key(one.name()).equals(Names.key(name)))
            .findFirst();
    if (guard.isEmpty() && machine.isPresent()) {
      List<String> known =
          Stream.concat(machine.get().guards().stream().map(Guard::name), Stream.of(TABLE))
              .toList();
      row.fault("guard", "is no guard of " + machine.get().name() + ledger.hint(name, () -> known));
    }
    return guard.isPresent() ? Optional.of(guard) : Optional.empty();
  }

  private static Optional<Check.Opening> opening(Row row, Optional<Vise> vise) {
    String text = CellText.trimmed(row.raw("opening")).toLowerCase(Locale.ROOT);
    if (text.isEmpty() || text.equals("closed")) {
      return Optional.of(Check.Opening.CLOSED);
    }
    if (text.equals("open")) {
      return Optional.of(Check.Opening.OPEN);
    }
    if (text.chars().allMatch(Character::isLetter)) {
      row.fault("opening", "is not closed, open or a length");
      return Optional.empty();
    }
    OptionalLong length = row.length("opening");
    if (length.isPresent()
        && vise.isPresent()
        && !vise.get().opening().contains(length.getAsLong())) {
      row.fault(
          "opening",
          "is outside what "
              + vise.get().name()
              + " opens; write closed, open, or a length from opening_min to opening_max");
    }
    return length.isPresent()
        ? Optional.of(Check.Opening.of(length.getAsLong()))
        : Optional.empty();
  }

  private static Optional<String> named(List<String> known, String name) {
    return known.stream().filter(one -> Names.key(one).equals(Names.key(name))).findFirst();
  }

  private static boolean isNamed(String name, Optional<String> wanted) {
    return wanted.isPresent() && Names.key(name).equals(Names.key(wanted.get()));
  }
}
