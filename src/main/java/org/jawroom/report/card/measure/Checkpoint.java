package org.jawroom.report.card.measure;

import java.util.function.UnaryOperator;
import org.jawroom.report.card.statement.Item;

/**
 * A row of the verification table: a gap to measure on the machine.
 *
 * @param pair the part and the guard
 * @param where the position of jaws and axes, and the direction to measure in
 * @param expected range and tolerance, {@code 23.5 to 26.5} {@code ± 1.5 included}
 * @param gauge how to check it
 * @param stop found less than this: stop
 * @param go found this or more: go; between the two: go with care
 */
public record Checkpoint(
    String pair, String where, Item expected, String gauge, String stop, String go) {

  public Checkpoint with(UnaryOperator<String> change) {
    return new Checkpoint(change.apply(pair), change.apply(where), expected, gauge, stop, go);
  }
}
