package org.jawroom.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Check;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.ProvenanceCells;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.vise.PartReader;

/** Parses the rows of {@code checks}, once machines and vises are read. */
final class CheckReader {
  private static final String TABLE = "table";

  private final BoltedCells bolted;
  private final Ledger ledger;

  CheckReader(BoltedCells bolted, Ledger ledger) {
    this.bolted = bolted;
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
    BoltedCells.Bolted there = bolted.read(row);
    Optional<Machine> machine = there.machine();
    Optional<Vise> vise = there.vise();
    vise.filter(Vise::isTurned).ifPresent(turned -> refuseTurned(row, turned));
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
            there.place().orElseThrow().handleTo(),
            there.place().orElseThrow().fromLeft(),
            there.place().orElseThrow().fromFront(),
            part.orElseThrow(),
            guard.orElseThrow(),
            opening.orElseThrow(),
            whileCutting,
            axis,
            found.getAsLong(),
            provenance));
  }

  /**
   * An expected gap is a sum of readings with fixed signs. That of a turned part is none, and the
   * strips that stand for it bound it on one side alone.
   */
  private static void refuseTurned(Row row, Vise vise) {
    row.fault(
        "vise",
        "is turned on its swivel base, where a gap says nothing about single readings; measure"
            + " with the jaws square and write "
            + vise.row());
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
}
