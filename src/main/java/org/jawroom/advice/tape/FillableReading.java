package org.jawroom.advice.tape;

import java.util.function.LongFunction;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * A reading of a pairing that is blank or known within bounds only.
 *
 * @param column by which the pairing lists it as missing
 * @param bounds what is known of it
 * @param tolerance of its row, half-nanometres; 0 if none is given
 * @param filled machine and vise with a value in its place
 */
record FillableReading(
    Measurand reading,
    Column column,
    Dimension bounds,
    long tolerance,
    LongFunction<Filled> filled) {

  /** A machine and a vise, one of them with a reading filled in. */
  record Filled(Machine machine, Vise vise) {}

  boolean isOfMachine() {
    return column.compareTo(Column.GUARD_GAP) <= 0;
  }
}
