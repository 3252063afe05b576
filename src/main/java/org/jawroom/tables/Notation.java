package org.jawroom.tables;

import java.util.Map;
import java.util.Optional;
import org.jawroom.shop.Machine;
import org.jawroom.tables.cell.Unit;

/**
 * How the tables write numbers, and in which unit people read them.
 *
 * @param bare the unit of a bare number where its row names none, and of a bare number that an
 *     option gives
 * @param decimalComma whether {@code 1,250} is one and a quarter
 * @param show the unit that people asked for, mm or in; empty: the tables decide
 * @param machines the unit of each machine's row, by the machine's name; rows that name none have
 *     the bare one
 */
public record Notation(
    Unit bare, boolean decimalComma, Optional<Unit> show, Map<String, Unit> machines) {

  public Notation {
    machines = Map.copyOf(machines);
    if (show.isPresent() && show.get() != Unit.MM && show.get() != Unit.IN) {
      throw new IllegalArgumentException("people read mm or in, not " + show.get());
    }
  }

  /** Whether people read inches about the whole shop: as most machine rows, millimetres if tied. */
  public boolean inches() {
    long inInches = machines.values().stream().filter(Unit.IN::equals).count();
    return show.map(Unit.IN::equals).orElse(2 * inInches > machines.size());
  }

  /** Whether people read inches about this machine alone: as its row. */
  public boolean inches(Machine machine) {
    return show.orElse(machines.getOrDefault(machine.name(), bare)) == Unit.IN;
  }
}
