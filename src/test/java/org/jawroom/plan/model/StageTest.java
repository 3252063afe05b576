package org.jawroom.plan.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StageTest {

  /** Below, at and above a tenth of a percent; never less than the truth. */
  @ParameterizedTest
  @CsvSource({
    "100000, 100099, 0.1",
    "100000, 100100, 0.1",
    "100000, 100101, 0.2",
    "3, 4, 33.4",
    "4, 4, 0.0",
    "1, 3, 200.0"
  })
  void notProven_ofAnAmount_roundsTheShareUp(long value, long ceiling, String percent) {
    assertEquals(
        "the widest openings in all (at most " + percent + " % more)",
        new Stage(Aim.OPENING, value, false, ceiling).notProven());
  }

  @Test
  void notProven_withoutAShare_isTheAimAlone() {
    assertEquals("the most pieces held", new Stage(Aim.HELD, 0, false, 7).notProven());
    assertEquals("the fewest changes", new Stage(Aim.CHANGES, -2, false, 0).notProven());
    assertEquals(
        "the most vises set out", new Stage(Aim.SET_OUT, 3, false, Long.MAX_VALUE).notProven());
  }

  @Test
  void stage_aboveItsCeiling_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Stage(Aim.JAW, 5, false, 4));
  }
}
