package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class AxisTest {

  @Test
  void across_inThePlane_isTheOtherOne() {
    assertEquals(Axis.Y, Axis.X.across());
    assertEquals(Axis.X, Axis.Y.across());
    assertThrows(IllegalArgumentException.class, Axis.Z::across);
  }

  @Test
  void letter_eachAxis_isItsNameInTheTables() {
    assertEquals("x", Axis.X.letter());
    assertEquals("z", Axis.Z.letter());
  }
}
