package org.jawroom.report.format;

import static org.jawroom.geometry.Length.INCH;
import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TapeFigureTest {
  private final TapeFigure inch = new TapeFigure(PeopleUnit.INCH);

  @Test
  void text_thirtySeconds_areLeastFractions() {
    assertEquals("0", inch.text(0, Rounding.NEAREST));
    assertEquals("1/32", inch.text(INCH / 32, Rounding.NEAREST));
    assertEquals("1/2", inch.text(INCH / 2, Rounding.NEAREST));
    assertEquals("9 5/16", inch.text(9 * INCH + 5 * INCH / 16, Rounding.NEAREST));
    assertEquals("10", inch.text(10 * INCH, Rounding.NEAREST));
  }

  @Test
  void text_betweenTwoSteps_goesTheWayAsked() {
    assertEquals("1/4", inch.text(INCH / 4 + 1, Rounding.DOWN));
    assertEquals("9/32", inch.text(INCH / 4 + 1, Rounding.UP));
    assertEquals("1/4", inch.text(INCH / 4 + INCH / 64 - 1, Rounding.NEAREST));
    assertEquals("9/32", inch.text(INCH / 4 + INCH / 64, Rounding.NEAREST));
    assertEquals("1", inch.text(INCH - 1, Rounding.UP));
  }

  @Test
  void text_millimetres_areTenths() {
    TapeFigure metric = new TapeFigure(PeopleUnit.MM);
    assertEquals("236", metric.text(236 * MM, Rounding.NEAREST));
    assertEquals("0.3", metric.text(MM / 4, Rounding.UP));
  }
}
