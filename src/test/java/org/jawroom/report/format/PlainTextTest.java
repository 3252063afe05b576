package org.jawroom.report.format;

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

  @Test
  void harmless_startAfterQuotesSpacesOrSemicolon_getsAnApostropheBeforeIt() {
    assertEquals("\"'=1", PlainText.harmless("\"=1"));
    assertEquals("\u00a0 '@x", PlainText.harmless("\u00a0 @x"));
    assertEquals("a;'=cmd|' /C x'!A0;'+1", PlainText.harmless("a;=cmd|' /C x'!A0;+1"));
    assertEquals("'\t'=1", PlainText.harmless("\t=1"));
  }

  @Test
  void shown_unseenCharacters_areQuestionMarksInCsvAndCells() {
    assertEquals("a?b?c\nd", PlainText.harmless("a\u202eb\u0000c\nd"));
    assertEquals("a?b?c\nd??", PlainText.forCell("a\u202eb\ud800c\nd\udb40\udc41\uffff"));
    assertEquals("\u0915\u094d\u200d\u0937", PlainText.forCell("\u0915\u094d\u200d\u0937"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "mill A", "a=b", "6-inch", "1;3", "6\" - old", "'quoted", "≠"})
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
