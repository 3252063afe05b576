package org.jawroom.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against ISO 273:1979, medium series, as two public tables transcribe it. */
class ClearanceHoleTest {

  @ParameterizedTest
  @CsvSource({
    "4, 4.5",
    "5, 5.5",
    "6, 6.6",
    "8, 9",
    "10, 11",
    "12, 13.5",
    "14, 15.5",
    "16, 17.5",
    "18, 20",
    "20, 22",
    "22, 24",
    "24, 26",
    "30, 33",
    "36, 39",
    "42, 45",
    "48, 52",
  })
  void of_thread_isThePublishedHole(int thread, String hole) {
    long published = new BigDecimal(hole).multiply(BigDecimal.valueOf(Length.MM)).longValueExact();
    assertEquals(published, ClearanceHole.of(thread * Length.MM).getAsLong());
  }

  @Test
  void of_everyThreadThatGoesWithASlot_isThere() {
    for (TNut nut : TNut.DIN_508) {
      assertTrue(ClearanceHole.of(nut.thread() * Length.MM).isPresent(), nut::toString);
    }
  }

  @Test
  void of_threadNotInTheTable_isEmpty() {
    assertTrue(ClearanceHole.of(7 * Length.MM).isEmpty());
    assertTrue(ClearanceHole.of(12 * Length.MM + 1).isEmpty());
  }
}
