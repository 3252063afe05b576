package org.jawroom.report.card.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShortNamesTest {

  @Test
  void cut_longName_keepsBothEnds() {
    assertEquals("coolan…eft", ShortNames.cut("coolant nozzle left", 10));
    assertEquals("nozzle", ShortNames.cut("nozzle", 6));
  }

  @Test
  void cut_wordsWithLongNames_leavesTheRest() {
    assertEquals(
        "arm to coolan…eft: stop",
        ShortNames.cut(
            "arm to coolant nozzle left: stop", List.of("arm", "coolant nozzle left"), 10));
  }

  @Test
  void cut_lettersOfTwoUnits_areNotBroken() {
    assertEquals("😀😀😀…😀", ShortNames.cut("😀".repeat(9), 5));
  }
}
