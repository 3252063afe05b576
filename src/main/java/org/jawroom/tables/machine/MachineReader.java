package org.jawroom.tables.machine;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.ProvenanceCells;
import org.jawroom.tables.row.Row;

/** Parses one row of {@code machines}. */
public final class MachineReader {
  private final Owners.Owner owner;
  private final Row row;
  private final Ledger ledger;

  public MachineReader(Owners.Owner owner, Ledger ledger) {
    this.owner = owner;
    this.row = owner.row();
    this.ledger = ledger;
  }

  /** Empty, with faults, if the row is unsound. */
  public Optional<Machine> read(List<Guard> guards) {
    String thing = "machine " + owner.name();
    boolean candidate = row.says("status", "candidate");
    Optional<Axes> moves = AxesCell.tableMoves(row);
    OptionalLong length = row.length("table_length");
    OptionalLong width = row.length("table_width");
    OptionalLong travelX = row.length("travel_x");
    OptionalLong travelY = row.length("travel_y");
    OptionalLong spindleX = row.length("spindle_x");
    OptionalLong spindleY = row.length("spindle_y");
    Optional<Slots> slots = SlotCells.read(row, length, width, thing, ledger);
    Sides<Long> ledges =
        new Sides<>(
            row.length("front_ledge").orElse(0),
            row.length("rear_ledge").orElse(0),
            row.length("left_ledge").orElse(0),
            row.length("right_ledge").orElse(0));
    Sides<Dimension> gaps =
        new Sides<>(
            row.dimension("front_gap"),
            row.dimension("rear_gap"),
            row.dimension("left_gap"),
            row.dimension("right_gap"));
    Dimension noseMin = row.dimension("nose_min");
    Dimension noseMax = row.dimension("nose_max");
    refuseNoseUpsideDown(noseMin, noseMax);
    Optional<BigDecimal> maxLoad = row.mass("max_load");
    OptionalLong loadX = row.length("load_x");
    OptionalLong loadY = row.length("load_y");
    refuseOutside("load_x", loadX, spindleX, travelX);
    refuseOutside("load_y", loadY, spindleY, travelY);
    Set<Orientation> turns = row.turns("turns");
    List<String> lookedFor = row.list("looked_for", ",;");
    Provenance provenance = ProvenanceCells.read(row, thing, ledger);
    Optional<BigDecimal> price = row.price("price");
    String description = row.text("description");
    Unit unit = row.unit();
    if (!row.isSound() || moves.isEmpty() || slots.isEmpty()) {
      return Optional.empty();
    }
    noteLoadPosition(thing, loadX, loadY);
    ledger.machineUnits.put(owner.name(), unit);
    return Optional.of(
        Machine.builder(owner.name())
            .description(description)
            .candidate(candidate)
            .tableMoves(moves.get())
            .table(length.getAsLong(), width.getAsLong())
            .travel(travelX.getAsLong(), travelY.getAsLong())
            .spindle(spindleX.getAsLong(), spindleY.getAsLong())
            .slots(slots.get())
            .ledges(ledges)
            .gaps(gaps)
            .nose(noseMin, noseMax)
            .maxLoad(maxLoad)
            .load(loadX, loadY)
            .turns(turns)
            .lookedFor(lookedFor)
            .provenance(provenance)
            .price(price)
            .guardRows(guards)
            .build());
  }

  private void refuseNoseUpsideDown(Dimension min, Dimension max) {
    if (min.isKnown() && max.isKnown() && min.length() > max.length()) {
      row.fault("nose_min", "is above nose_max, " + row.raw("nose_max"));
    }
  }

  private void refuseOutside(
      String column, OptionalLong place, OptionalLong middle, OptionalLong travel) {
    if (place.isEmpty() || middle.isEmpty() || travel.isEmpty()) {
      return;
    }
    long half = travel.getAsLong() / 2;
    if (Math.abs(place.getAsLong() - middle.getAsLong()) > half) {
      row.fault(
          column,
          "is outside the spindle's reach, which goes from "
              + Lengths.inMillimetres(middle.getAsLong() - half)
              + " to "
              + Lengths.inMillimetres(middle.getAsLong() + half));
    }
  }

  private void noteLoadPosition(String thing, OptionalLong loadX, OptionalLong loadY) {
    if (loadX.isEmpty()) {
      ledger.tookDefault(row, thing + ": load_x blank, so loaded with the spindle at spindle_x");
    }
    if (loadY.isEmpty()) {
      ledger.tookDefault(
          row, thing + ": load_y blank, so loaded with the table nearest the operator");
    }
  }
}
