package org.jawroom.report.card;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlotThroatTest {

  /**
   * h and c of the slot series, least and greatest, from BS 2485 and ANSI/ASME B5.1M-1985 as
   * reprinted (one transcriber; equal to ISO 299 from memory). The throat is h − c; for 5 mm B5.1M
   * has another c, 3 at least.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 8, 10, 3, 4.5",
    "6, 11, 13, 5, 6",
    "8, 15, 18, 7, 8",
    "10, 17, 21, 7, 8",
    "12, 20, 25, 8, 9",
    "14, 23, 28, 9, 11",
    "18, 30, 36, 12, 14",
    "22, 38, 45, 16, 18",
    "28, 48, 56, 20, 22",
    "36, 61, 71, 25," + " 28",
    "42, 74, 85, 32, 35",
    "48, 84, 95, 36, 40",
    "54, 94, 106, 40, 44",
  })
  void series_everySlot_isHeightLessHeadspace(
      int slot, double hMin, double hMax, double cMin, double cMax) {
    SlotThroat throat = SlotThroat.of(slot * MM).orElseThrow();
    assertEquals(10 * (hMin - cMax), throat.least());
    assertEquals(10 * (hMax - cMin), throat.most());
  }

  /** H12 after ISO 286 as several tables print it. */
  @Test
  void of_widthOverTheNominal_isInTheSeriesToH12() {
    assertEquals(14, SlotThroat.of(14 * MM).orElseThrow().slot());
    assertEquals(14, SlotThroat.of(14 * MM + 180 * (MM / 1000)).orElseThrow().slot());
    assertEquals(Optional.empty(), SlotThroat.of(14 * MM + 181 * (MM / 1000)));
    assertEquals(Optional.empty(), SlotThroat.of(14 * MM - 1));
    assertEquals(Optional.empty(), SlotThroat.of(16 * MM));
  }
}
