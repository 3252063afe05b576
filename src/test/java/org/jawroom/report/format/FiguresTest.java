package org.jawroom.report.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

  /** Half-nanometres around 1.000 mm, and around zero. */
  @ParameterizedTest
  @CsvSource({
    "1999999, 0.999, 1.000, 1.000", "2000000, 1.000, 1.000, 1.000", "2000001, 1.000, 1.001, 1.000",
    "2000999, 1.000, 1.001, 1.000", "2001000, 1.000, 1.001, 1.001", "2001001, 1.000, 1.001, 1.001",
    "-1, -0.001, 0.000, 0.000", "0, 0.000, 0.000, 0.000", "1, 0.000, 0.001, 0.000",
    "-1000, -0.001, 0.000, 0.000", "-1001, -0.001, 0.000, -0.001", "-2000, -0.001, -0.001, -0.001",
    "-2001, -0.002, -0.001, -0.001"
  })
  void millimetres_belowAtAndAboveAStep(long length, String down, String up, String nearest) {
    assertEquals(down, Figures.millimetres(length, Rounding.DOWN));
    assertEquals(up, Figures.millimetres(length, Rounding.UP));
    assertEquals(nearest, Figures.millimetres(length, Rounding.NEAREST));
  }

  @Test
  void millimetres_ofTheLargestLength_hasNoSeparator() {
    assertEquals("100000.000", Figures.millimetres(Length.LARGEST, Rounding.DOWN));
  }

  @ParameterizedTest
  @CsvSource({
    "12.3456, 12.345",
    "12.345, 12.345",
    "12, 12.000",
    "-0.0001, -0.001",
    "0, 0.000",
    "1E+2, 100.000"
  })
  void kilograms_roundDown(BigDecimal mass, String text) {
    assertEquals(text, Figures.kilograms(mass));
  }

  @ParameterizedTest
  @CsvSource({
    "199999, 0.0, 0.1, 0, 0.1", "200000, 0.1, 0.1, 0.1, 0.1", "200001, 0.1, 0.2, 0.1, 0.2",
    "-1, -0.1, 0.0, -0.1, 0", "24000000, 12.0, 12.0, 12, 12", "24000001, 12.0, 12.1, 12, 12.1",
    "20000000, 10.0, 10.0, 10, 10", "-200000, -0.1, -0.1, -0.1, -0.1"
  })
  void peopleMillimetres_areTenths(
      long length, String down, String up, String briefDown, String briefUp) {
    assertEquals(down, PeopleUnit.MM.text(length, Rounding.DOWN));
    assertEquals(up, PeopleUnit.MM.text(length, Rounding.UP));
    assertEquals(briefDown, PeopleUnit.MM.brief(length, Rounding.DOWN));
    assertEquals(briefUp, PeopleUnit.MM.brief(length, Rounding.UP));
  }

  @ParameterizedTest
  @CsvSource({
    "507999, 0.00, 0.01",
    "508000, 0.01, 0.01",
    "508001, 0.01, 0.02",
    "-1, -0.01, 0.00",
    "152400000, 3.00, 3.00",
    "-508000, -0.01, -0.01",
    "-508001, -0.02, -0.01"
  })
  void peopleInches_areHundredths(long length, String down, String up) {
    assertEquals(down, PeopleUnit.INCH.text(length, Rounding.DOWN));
    assertEquals(up, PeopleUnit.INCH.text(length, Rounding.UP));
    assertEquals(Double.parseDouble(down), PeopleUnit.INCH.number(length, Rounding.DOWN));
  }
}
