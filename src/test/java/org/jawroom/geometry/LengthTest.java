package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {

  /** An unbounded guard stays unbounded when shifted by a travel or grown by a gap. */
  @ParameterizedTest
  @CsvSource({"0, true", "1, true", "-1, true", "2, false", "-2, false"})
  void isBounded_halfTheWayToEndless_isTheLimit(long halves, boolean bounded) {
    long limit = halves * (Length.ENDLESS / 2);
    long inward = Long.signum(halves);
    assertEquals(bounded, Length.isBounded(limit - inward));
    assertEquals(halves == 0, Length.isBounded(limit));
  }
}
