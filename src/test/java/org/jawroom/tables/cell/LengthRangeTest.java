package org.jawroom.tables.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LengthRangeTest {

  @Test
  void parse_everyForm_givesBothEnds() throws BadCell {
    assertEquals("50 mm to 60 mm", read("50..60"));
    assertEquals("50 mm to 60 mm", read("50 to 60"));
    assertEquals("50 mm to 60 mm", read("50 TO 60"));
    assertEquals("50 mm to 60 mm", read("50\u202660"));
    assertEquals("58 mm to 62 mm", read("60 ± 2"));
    assertEquals("58 mm to 62 mm", read("60±2"));
    assertEquals("58 mm to 62 mm", read("60 +- 2"));
    assertEquals("58 mm to 62 mm", read("60 +/- 2"));
    assertEquals("- to 60 mm", read("at most 60"));
    assertEquals("- to 60 mm", read("<= 60"));
    assertEquals("- to 60 mm", read("\u226460"));
    assertEquals("50 mm to -", read("at least 50"));
    assertEquals("50 mm to -", read(">=50"));
    assertEquals("-10 mm to 5 mm", read("-10..5"));
    assertEquals("50 mm to 50 mm", read("50..50"));
  }

  @Test
  void parse_units_holdForBothOrEachHasItsOwn() throws BadCell {
    assertEquals("38.1 mm to 44.45 mm", read("1 1/2..1 3/4 in"));
    assertEquals("38.1 mm to 50 mm", read("1.5 in..50 mm"));
    assertEquals("500 mm to 600 mm", read("50 to 60 cm"));
    assertEquals("23.8125 mm to 26.9875 mm", read("1 in ± 1/16 in"));
    assertEquals("23.8125 mm to 26.9875 mm", read("1 ± 1/16 in"));
    assertEquals("- to 25.4 mm", read("at most 1 in"));
  }

  @Test
  void parse_unitAfterTheLast_leavesNeitherBare() throws BadCell {
    for (String text : List.of("50..60 mm", "60 ± 2 mm", "at most 2 in", "1 to 2 in")) {
      LengthRange range = LengthRange.parse(text, Unit.CM, false);
      assertFalse(range.lo().filter(Lengths.Read::bare).isPresent(), text);
      assertFalse(range.hi().filter(Lengths.Read::bare).isPresent(), text);
    }
    assertTrue(LengthRange.parse("60 ± 2", Unit.CM, false).lo().orElseThrow().bare());
  }

  @Test
  void parse_whatIsNoRange_isRefusedWithWhatIsWrong() {
    assertRefused("60..50", "begins above its end");
    assertRefused("50 in..60", "after its first number only");
    assertRefused("50..60..70", "more than two numbers");
    assertRefused("50..", "lacks a number");
    assertRefused("..60", "lacks a number");
    assertRefused("none..60", "none");
    assertRefused("50..none", "none");
    assertRefused("at most none", "none");
    assertRefused("60 ± -2", "negative amount");
    assertRefused("50..x", "x");
  }

  @Test
  void isRange_singleLengths_areNone() {
    for (String text :
        List.of("165", "165 mm", "6 1/2\"", "6-1/2 in", "-3.5", "1.250", "none", "")) {
      assertFalse(LengthRange.isRange(text), text);
    }
    assertTrue(LengthRange.isRange("50..60"));
  }

  @Test
  void hyphenated_twoNumbers_areWrittenWithDots() {
    assertEquals(Optional.of("50..60"), LengthRange.hyphenated("50-60"));
    assertEquals(Optional.of("50..60 mm"), LengthRange.hyphenated("50 - 60 mm"));
    assertEquals(Optional.empty(), LengthRange.hyphenated("6-1/2 in"));
    assertEquals(Optional.empty(), LengthRange.hyphenated("-50"));
  }

  private static void assertRefused(String text, String part) {
    BadCell bad = assertThrows(BadCell.class, () -> LengthRange.parse(text, Unit.MM, false), text);
    assertTrue(bad.getMessage().contains(part), text + ": " + bad.getMessage());
  }

  private static String read(String text) throws BadCell {
    LengthRange range = LengthRange.parse(text, Unit.MM, false);
    return end(range.lo()) + " to " + end(range.hi());
  }

  private static String end(Optional<Lengths.Read> end) {
    return end.map(read -> Lengths.inMillimetres(read.value())).orElse("-");
  }
}
