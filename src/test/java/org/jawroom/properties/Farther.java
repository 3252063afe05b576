package org.jawroom.properties;

import org.jawroom.shop.Machine;

/** A machine whose axes go farther, everything at mid-travel and the load position as before. */
final class Farther {
  private Farther() {}

  static Machine of(Machine m, long by) {
    return new Machine(
        m.name(),
        m.description(),
        m.candidate(),
        m.tableMoves(),
        m.tableLength(),
        m.tableWidth(),
        m.travelX() + 2 * by,
        m.travelY() + 2 * by,
        m.spindleX(),
        m.spindleY(),
        m.slots(),
        m.ledges(),
        m.gaps(),
        m.noseMin(),
        m.noseMax(),
        m.maxLoad(),
        m.loadX(),
        m.loadY(),
        m.turns(),
        m.lookedFor(),
        m.provenance(),
        m.price(),
        m.guards());
  }
}
