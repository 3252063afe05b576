package org.jawroom.report.readings;

import java.util.List;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.value.Column;

/**
 * An open reading of one machine or vise.
 *
 * @param row index of the machine or vise
 */
public record BlankCell(OpenReading reading, int row) {

  /** The open readings that make a pairing unknown, in the order of the tables. */
  static List<BlankCell> of(Outcome outcome, int machine, int vise) {
    return OpenReading.of(outcome.machine(), outcome.vise(), outcome.missing()).stream()
        .map(reading -> new BlankCell(reading, reading.isOfMachine() ? machine : vise))
        .toList();
  }

  public Column column() {
    return reading.column();
  }

  /** The position of its table in the order of the tables. */
  int table() {
    int first = column().ordinal();
    while (first > 0 && Column.values()[first - 1].table().equals(column().table())) {
      first--;
    }
    return first;
  }
}
