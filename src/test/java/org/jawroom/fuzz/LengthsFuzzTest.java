package org.jawroom.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import org.jawroom.geometry.Length;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;

/** Lengths in any letters: read exactly, or refused in a line. */
class LengthsFuzzTest {

  @FuzzTest
  void parse_anything_readsOrRefuses(byte[] input) throws BadCell {
    String text = new String(input, StandardCharsets.UTF_8);
    for (Unit unit : Unit.values()) {
      for (boolean comma : new boolean[] {false, true}) {
        parse(text, unit, comma);
      }
    }
  }

  private static void parse(String text, Unit unit, boolean comma) throws BadCell {
    Lengths.Read read;
    try {
      read = Lengths.parse(text, unit, comma);
    } catch (BadCell refused) {
      ReadAnything.assertIsLine(refused.getMessage());
      return;
    }
    assertTrue(Math.abs(read.value()) <= Length.LARGEST, text);
    assertEquals(0, read.value() % Length.NANOMETRE, text);
    Lengths.Read again = Lengths.parse(Lengths.inMillimetres(read.value()), unit, false);
    assertEquals(read.value(), again.value(), text);
    assertFalse(again.bare(), text);
    assertEquals(read.value(), Lengths.parse(read.number(), read.unit(), comma).value(), text);
    if (text.matches("-?[0-9]{1,20}([.][0-9]{1,20})?")) {
      assertTrue(read.bare(), text);
      assertEquals(exactly(text, unit), read.value(), text);
    }
  }

  /** By decimals, halves toward +infinity; the units as they are defined, in millimetres. */
  private static long exactly(String text, Unit unit) {
    String millimetres =
        switch (unit) {
          case MM -> "1";
          case CM -> "10";
          case M -> "1000";
          case IN -> "25.4";
        };
    BigDecimal nanometres =
        new BigDecimal(text).multiply(new BigDecimal(millimetres)).scaleByPowerOfTen(6);
    return 2
        * nanometres.add(new BigDecimal("0.5")).setScale(0, RoundingMode.FLOOR).longValueExact();
  }
}
