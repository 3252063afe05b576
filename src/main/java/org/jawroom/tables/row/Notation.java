package org.jawroom.tables.row;

import java.util.Map;
import java.util.Optional;
import org.jawroom.shop.machine.Machine;
import org.jawroom.tables.cell.Unit;

/**
 * How the tables write numbers, and the unit for people.
 *
 * @param bare the unit of a bare number in a row that names none, and in an option
 * @param decimalComma whether {@code 1,250} is one and a quarter
 * @param show the unit chosen for people, mm or in; empty: the tables decide
 * @param machines the unit of each machine's row, by the machine's name; rows without a unit have
 *     {@code bare}
 */
public record Notation(
    Unit bare, boolean decimalComma, Optional<Unit> show, Map<String, Unit> machines) {

  public Notation {
    machines = Map.copyOf(machines);
    if (show.isPresent() && show.get() != Unit.MM && show.get() != Unit.IN) {
      throw new IllegalArgumentException("unit for people must be mm or in, not " + show.get());
    }
  }

  /**
   * Whether texts about the whole shop use inches: the unit of most machine rows, millimetres on a
   * tie.
   */
  public boolean inches() {
    long inInches = machines.values().stream().filter(Unit.IN::equals).count();
    return show.map(Unit.IN::equals).orElse(2 * inInches > machines.size());
  }

  /** Whether texts about this machine alone use inches: the unit of its row. */
  public boolean inches(Machine machine) {
    return show.orElse(machines.getOrDefault(machine.name(), bare)) == Unit.IN;
  }
}
