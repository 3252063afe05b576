package org.jawroom.properties;

import org.jawroom.shop.machine.Machine;

/** A machine whose axes go farther, everything at mid-travel and the load position as before. */
final class Farther {
  private Farther() {}

  static Machine of(Machine m, long by) {
    return m.toBuilder().travel(m.travelX() + 2 * by, m.travelY() + 2 * by).build();
  }
}
