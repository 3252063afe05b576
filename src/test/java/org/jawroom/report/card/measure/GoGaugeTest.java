package org.jawroom.report.card.measure;

import static org.jawroom.geometry.Length.INCH;
import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.jawroom.report.format.PeopleUnit;
import org.junit.jupiter.api.Test;

class GoGaugeTest {
  private final GoGauge metric = new GoGauge(PeopleUnit.MM);
  private final GoGauge inch = new GoGauge(PeopleUnit.INCH);

  @Test
  void words_keyOfTheLeastAllowed_isThatKey() {
    assertEquals("a 6 mm hex key", metric.words(6 * MM, 20 * MM));
    assertEquals("a 6 mm hex key", metric.words(6 * MM, 6 * MM));
    assertEquals("a 2.5 mm hex key", metric.words(2 * MM + 1, 3 * MM));
  }

  @Test
  void words_noKeyBetweenLeastAndExpected_isABlock() {
    assertEquals("gauge blocks 5 + 1.4 mm", metric.words(6 * MM + 7 * MM / 20, 7 * MM));
    assertEquals("an 8 mm hex key", metric.words(6 * MM + 1, 8 * MM));
    assertEquals("gauge blocks 20 + 5 mm", metric.words(25 * MM, 90 * MM));
  }

  /** For measure: not even the least allowed is expected at the worst. */
  @Test
  void words_expectedUnderTheLeast_isNoSmallerKey() {
    assertEquals("a gauge block 6 mm", metric.words(6 * MM, 5 * MM));
  }

  @Test
  void words_inches_areKeysInInches() {
    assertEquals("a 1/4 in hex key", inch.words(6 * MM, 20 * MM));
    assertEquals("a 1/4 in hex key", inch.words(INCH / 4, INCH / 4));
    assertEquals("a 5/16 in hex key", inch.words(INCH / 4 + 1, INCH));
    assertEquals("gauge blocks 0.85 + 0.135 in", inch.words(25 * MM, 4 * INCH));
  }

  @Test
  void words_thinnerThanAnyBlock_areFeelers() {
    assertEquals("feelers 0.049 in thick", inch.words(INCH / 1000 * 49, INCH / 1000 * 49));
    assertEquals("a gauge block 0.05 in", inch.words(INCH / 20, INCH / 20));
  }

  @Test
  void words_nothingAsked_isAFeeler() {
    assertEquals("a feeler", metric.words(0, 5 * MM));
  }
}
