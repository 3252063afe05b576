package org.jawroom.report.card;

import java.util.function.UnaryOperator;

/**
 * A row of the verification table: a gap to measure on the machine.
 *
 * @param pair the part and the guard
 * @param where the position of jaws and axes, and the direction to measure in
 * @param expectedMm range and tolerance, {@code 23.5 to 26.5} {@code ± 1.5}
 * @param expectedInch the same in inches
 * @param gauge how to check it
 * @param least {@code less than 6 mm} {@code (0.24 in): stop, do not run}
 */
public record Checkpoint(
    String pair, String where, Item expectedMm, Item expectedInch, String gauge, Item least) {

  Checkpoint with(UnaryOperator<String> change) {
    return new Checkpoint(
        change.apply(pair), change.apply(where), expectedMm, expectedInch, gauge, least);
  }
}
