package org.jawroom.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TNutTest {

  /** DIN 508, transcribed: slot, thread, e max, h, k max, in mm. */
  @ParameterizedTest
  @CsvSource({
    "0, 5, 4, 9, 6.5, 3", "1, 6, 5, 10, 8, 4", "2, 8, 6, 13, 10, 6", "3, 10, 8, 15, 12, 6",
    "4, 12, 10, 18, 14, 7", "5, 14, 12, 22, 16, 8", "6, 18, 16, 28, 20, 10",
        "7, 22, 20, 35, 28, 14",
    "8, 28, 24, 44, 36, 18", "9, 36, 30, 54, 44, 22", "10, 42, 36, 65, 52, 26",
        "11, 48, 42, 75, 60, 30",
    "12, 54, 48, 85, 70, 34"
  })
  void din508_eachRow_isAsPublished(int row, int slot, int thread, double e, double h, double k) {
    assertEquals(new TNut(slot, thread, tenths(e), tenths(h), tenths(k)), TNut.DIN_508.get(row));
    assertEquals(13, TNut.DIN_508.size());
  }

  @ParameterizedTest
  @CsvSource({
    "5, 4", "6, 5", "8, 6", "10, 8", "12, 10", "14, 12", "15.875, 12", "16, 12", "17.999999, 12",
    "18, 16", "20, 16", "22, 20", "28, 24", "36, 30", "42, 36", "48, 42", "54, 48", "60, 48"
  })
  void boltFor_inAndBetweenTheSeries_takesTheSmaller(double slot, int thread) {
    assertEquals(OptionalLong.of(thread * Length.MM), TNut.boltFor(Math.round(slot * Length.MM)));
  }

  @Test
  void boltFor_justBelowFive_isNone() {
    assertEquals(OptionalLong.empty(), TNut.boltFor(5 * Length.MM - 1));
  }

  private static int tenths(double millimetres) {
    return (int) Math.round(millimetres * 10);
  }
}
