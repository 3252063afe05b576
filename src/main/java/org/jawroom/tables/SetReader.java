package org.jawroom.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.schema.TableSpec;

/** Parses the rows of {@code sets}, once vises are read; rows of one name are one set. */
final class SetReader {
  private final Owners machineRows;
  private final Owners viseRows;
  private final List<Vise> vises;
  private final Ledger ledger;
  private final Map<String, Draft> drafts = new LinkedHashMap<>();

  SetReader(Owners machineRows, Owners viseRows, List<Vise> vises, Ledger ledger) {
    this.machineRows = machineRows;
    this.viseRows = viseRows;
    this.vises = vises;
    this.ledger = ledger;
  }

  /** A set of which rows were read. */
  private static final class Draft {
    final String name;
    final Map<String, Integer> rows = new LinkedHashMap<>();
    final List<ViseSet.Member> members = new ArrayList<>();
    List<String> machines = List.of();
    int rowOfMachines;
    long count;

    Draft(String name) {
      this.name = name;
    }
  }

  /** The sound sets, in the order of their first rows. */
  List<ViseSet> all() {
    for (Row row : Rows.of(TableSpec.SETS, ledger)) {
      read(row);
    }
    return drafts.values().stream()
        .filter(draft -> !draft.members.isEmpty() && draft.count <= ViseSet.MOST)
        .map(draft -> new ViseSet(draft.name, draft.members, draft.machines))
        .toList();
  }

  private void read(Row row) {
    Optional<Draft> draft =
        row.name("set")
            .map(name -> drafts.computeIfAbsent(Names.key(name), key -> new Draft(name)));
    Optional<String> viseName = viseRows.of(row).map(Owners.Owner::name);
    OptionalInt count = row.count("count");
    if (count.isPresent() && count.getAsInt() == 0) {
      row.fault("count", "is none; write 1 or more, or take the row out");
    }
    List<String> machines = machineRows.list(row, "machines");
    if (draft.isEmpty() || viseName.isEmpty()) {
      return;
    }
    refuseTwice(row, draft.get(), viseName.get());
    addCount(row, draft.get(), count);
    addMachines(row, draft.get(), machines);
    Optional<Vise> vise =
        vises.stream().filter(one -> one.name().equals(viseName.get())).findFirst();
    if (row.isSound() && vise.isPresent()) {
      draft.get().members.add(new ViseSet.Member(vise.get(), count.getAsInt()));
    }
  }

  private static void refuseTwice(Row row, Draft draft, String vise) {
    Integer first = draft.rows.putIfAbsent(Names.key(vise), row.number());
    if (first != null) {
      row.fault(
          "vise", "is already in this set in row " + first + "; write how many there, as count");
    }
  }

  private static void addCount(Row row, Draft draft, OptionalInt count) {
    if (count.isPresent()) {
      boolean was = draft.count > ViseSet.MOST;
      draft.count += count.getAsInt();
      if (!was && draft.count > ViseSet.MOST) {
        row.fault(
            "count",
            "makes "
                + draft.count
                + " vises in this set; at most "
                + ViseSet.MOST
                + " are tried on one table");
      }
    }
  }

  private static void addMachines(Row row, Draft draft, List<String> machines) {
    if (machines.isEmpty()) {
      return;
    }
    if (draft.rowOfMachines > 0 && !draft.machines.equals(machines)) {
      row.fault(
          "machines",
          "differs from row "
              + draft.rowOfMachines
              + " of this set; write them in one row of the set");
      return;
    }
    draft.machines = machines;
    draft.rowOfMachines = row.number();
  }
}
