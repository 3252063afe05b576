package org.jawroom.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Standing;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.ProvenanceCells;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.schema.TableSpec;

/** Parses the rows of {@code standing}, once machines and vises are read. */
final class StandingReader {
  private final BoltedCells bolted;
  private final Ledger ledger;

  StandingReader(BoltedCells bolted, Ledger ledger) {
    this.bolted = bolted;
    this.ledger = ledger;
  }

  /** The sound rows, in input order. */
  List<Standing> all() {
    List<Standing> standing = new ArrayList<>();
    for (Row row : Rows.of(TableSpec.STANDING, ledger)) {
      read(row).ifPresent(standing::add);
    }
    return standing;
  }

  /** Empty, with faults, if the row is unsound or its machine or vise is. */
  private Optional<Standing> read(Row row) {
    BoltedCells.Bolted there = bolted.read(row);
    there
        .place()
        .ifPresent(
            place -> {
              there
                  .machine()
                  .ifPresent(one -> refuseTurn(row, place.handleTo(), one.name(), one.turns()));
              there
                  .vise()
                  .ifPresent(one -> refuseTurn(row, place.handleTo(), one.name(), one.turns()));
            });
    Optional<String> written =
        row.isBlank("mount") ? Optional.of(Mount.BASE_BOLTS) : row.name("mount");
    Optional<String> mount =
        written.flatMap(name -> there.vise().flatMap(vise -> mount(row, vise, name)));
    Provenance provenance = ProvenanceCells.read(row, "standing on " + row.raw("machine"), ledger);
    row.unit();
    if (!row.isSound() || there.machine().isEmpty() || there.vise().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Standing(
            there.machine().get(),
            there.vise().get(),
            there.place().orElseThrow(),
            mount.orElseThrow(),
            provenance));
  }

  private static void refuseTurn(Row row, Orientation turn, String name, Set<Orientation> allowed) {
    if (!allowed.contains(turn)) {
      row.fault(
          "handle_to",
          "is none of the turns of "
              + name
              + ": "
              + allowed.stream().sorted().map(Orientation::word).collect(Collectors.joining(" "))
              + "; correct it, or turns of "
              + name);
    }
  }

  private Optional<String> mount(Row row, Vise vise, String name) {
    List<String> known = vise.mountNames();
    Optional<String> mount =
        known.stream().filter(one -> Names.key(one).equals(Names.key(name))).findFirst();
    if (mount.isEmpty()) {
      row.fault(
          "mount",
          row.isBlank("mount")
              ? "is blank, but "
                  + vise.name()
                  + " has no base bolts; write one of "
                  + String.join(", ", known)
              : "is no mount of " + vise.name() + ledger.hint(name, () -> known));
    }
    return mount;
  }
}
