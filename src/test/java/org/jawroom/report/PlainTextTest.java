package org.jawroom.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {

  /** Starts named by OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection). */
  @ParameterizedTest
  @ValueSource(
      strings = {"=1+2", "+1", "-1", "@SUM(1)", "\tx", "\rx", "\nx", "＝1", "＋1", "－1", "＠x"})
  void harmless_startOfAFormula_getsAnApostrophe(String text) {
    assertEquals("'" + text, PlainText.harmless(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "mill A", "a=b", "6-inch", "'quoted", "≠"})
  void harmless_anythingElse_staysAsItIs(String text) {
    assertEquals(text, PlainText.harmless(text));
  }

  @Test
  void forCell_longerThanACellHolds_isCut() {
    assertEquals("a".repeat(32_767), PlainText.forCell("a".repeat(32_767)));
    assertEquals("a".repeat(32_766) + "…", PlainText.forCell("a".repeat(32_768)));
  }

  @Test
  void forTerminal_controlsAndReversals_areShownAsQuestionMarks() {
    assertEquals("?[31mred? é ?abc", PlainText.forTerminal("\u001b[31mred\u0007 é \u202eabc"));
  }
}
