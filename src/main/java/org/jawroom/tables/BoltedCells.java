package org.jawroom.tables;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;

/**
 * Parses which vise a row of {@code checks} or {@code standing} is about, on which machine, and
 * where it stands there.
 */
record BoltedCells(Owners machineRows, Owners viseRows, List<Machine> machines, List<Vise> vises) {

  /**
   * What was read; anything unsound is empty.
   *
   * @param place empty if one of its three cells is unsound
   */
  record Bolted(Optional<Machine> machine, Optional<Vise> vise, Optional<TapedPlace> place) {}

  /** Parses the cells, with their faults. */
  Bolted read(Row row) {
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
    return new Bolted(
        machine,
        vise,
        turn.isPresent() && fromLeft.isPresent() && fromFront.isPresent()
            ? Optional.of(new TapedPlace(turn.get(), fromLeft.getAsLong(), fromFront.getAsLong()))
            : Optional.empty());
  }

  /**
   * Refuses a place a whole table away from the table, where no vise is bolted. What hangs over an
   * edge is let pass: a base's side, or the jaw of a vise that is bolted at its handle's end.
   */
  private static void refuseOffTable(Row row, String column, OptionalLong from, long table) {
    if (from.isPresent() && !TapedPlace.isNearTable(from.getAsLong(), table)) {
      row.fault(
          column,
          "is far off the table, which measures "
              + Lengths.inMillimetres(table)
              + " that way; measure again from the table's edge");
    }
  }

  private static boolean isNamed(String name, Optional<String> wanted) {
    return wanted.isPresent() && Names.key(name).equals(Names.key(wanted.get()));
  }
}
