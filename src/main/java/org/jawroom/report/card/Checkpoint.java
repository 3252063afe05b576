package org.jawroom.report.card;

import java.util.function.UnaryOperator;

/**
 * A row of the verification table: a gap to find on the machine.
 *
 * @param pair the two that come near each other
 * @param where how jaws and axes stand then, and which way to measure
 * @param expectedMm range and tolerance, {@code 23.5 to 26.5} {@code ± 1.5}; {@code expectedInch}
 *     the same
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
