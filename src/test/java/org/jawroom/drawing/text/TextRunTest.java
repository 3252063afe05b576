package org.jawroom.drawing.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.drawing.ScriptFonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Hebrew and combining marks are in the built-in typeface, so these need no font of the machine.
 */
class TextRunTest {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  /** Outlined runs in brackets. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plain 125 on knee mill | plain 125 on knee mill",
        "Тиски × 3 – Φρέζα µ½ | Тиски × 3 – Φρέζα µ½",
        "\u05d0\u05d1 125 on \u05d2 mill | [\u05d0\u05d1]_125 on [\u05d2]_mill",
        "\u05d0 \u05d1: 12.5 mm | [\u05d0 \u05d1:]_12.5 mm",
        "\u05d0, \u05d1 | [\u05d0,]_[\u05d1]",
        "vise e\u0301 | vise [e\u0301]",
      })
  void of_wordsTheTypefaceCannotWriteAlone_areOutlinesAndNothingElseIs(String text, String runs) {
    assertEquals(
        runs,
        TextRun.of(Typeface.shown(text)).stream()
            .map(run -> run.outlined() ? "[" + run.text() + "]" : run.text())
            .collect(Collectors.joining())
            .replace("] ", "]_"));
  }

  /** Unicode Standard Annex 9: the first letter of a Hebrew word stands at its right end. */
  @Test
  void outline_hebrew_runsFromRightToLeft() {
    TextRun word = TextRun.of("\u05dc\u05d9").get(0);
    Rectangle2D drawn = word.outline(Typeface.PLAIN, 100).getBounds2D();
    // As the letters stand if each is put to the right of the one before it.
    Rectangle2D turned = unordered("\u05d9\u05dc");
    assertEquals(turned.getMinX(), drawn.getMinX(), 0.01);
    assertEquals(turned.getMaxX(), drawn.getMaxX(), 0.01);
    assertNotEquals(unordered("\u05dc\u05d9").getMinX(), drawn.getMinX(), 0.01);
  }

  private static Rectangle2D unordered(String letters) {
    return Typeface.PLAIN.sized(100).createGlyphVector(EXACT, letters).getOutline().getBounds2D();
  }

  /** A mark adds no width, and a heap of them stays within the line. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "e\u0301",
        "A\u030a\u0301\u0302\u0303",
        "\u05e9\u05c1\u05b8",
        "g\u0323\u0324\u0325\u0326"
      })
  void outline_marks_stayWithinTheirLine(String letter) {
    TextRun run = TextRun.of(letter).get(0);
    Rectangle2D ink = run.outline(Typeface.BOLD, 10).getBounds2D();
    assertTrue(ink.getMinY() >= -9.2 && ink.getMaxY() <= 2.6, ink.toString());
    assertTrue(ink.getMinX() >= -1 && ink.getMaxX() <= run.width(Typeface.BOLD, 10) + 0.01);
    TextRun bare = TextRun.of(letter.substring(0, 1)).get(0);
    assertTrue(run.width(Typeface.BOLD, 10) <= bare.width(Typeface.BOLD, 10) * 1.2);
  }

  @Test
  void width_growsWithTheSize() {
    TextRun run = TextRun.of("\u05d0\u05d1\u05d2").get(0);
    assertEquals(2 * run.width(Typeface.PLAIN, 7), run.width(Typeface.PLAIN, 14), 1e-9);
  }

  /** Unicode Standard Annex 29: a base with its marks is one letter, as is a surrogate pair. */
  @Test
  void next_neverPartsWhatPeopleSeeAsOneLetter() {
    String text = "e\u0301x\ud840\udc00";
    assertEquals(
        List.of(2, 3, 5),
        List.of(TextRun.next(text, 0), TextRun.next(text, 2), TextRun.next(text, 3)));
    assertEquals(
        List.of(3, 2, 0),
        List.of(TextRun.before(text, 5), TextRun.before(text, 3), TextRun.before(text, 2)));
  }

  @Test
  void shown_lettersOfPrivateUseOrThatSteer_areDots() {
    assertEquals("a·b·", Typeface.shown("a\ue000b\u202e"));
    assertEquals(List.of("\ue000"), Typeface.lacking("a\ue000b\ue000"));
    assertEquals(List.of(), Typeface.lacking("plain 125, Тиски, \u05d0"));
  }

  @Test
  void outline_devanagari_isShaped() {
    ScriptFonts.want(ScriptFonts.DEVANAGARI);
    TextRun run = TextRun.of(Typeface.shown(ScriptFonts.DEVANAGARI)).get(0);
    assertEquals(ScriptFonts.DEVANAGARI, run.text());
    assertFalse(run.outline(Typeface.PLAIN, 10).getBounds2D().isEmpty());
    // The sign of the vowel i is drawn before the letter that it follows in the text (The Unicode
    // Standard, chapter 12.1): its ink begins left of that of the letter alone.
    TextRun ki = TextRun.of("\u0915\u093f").get(0);
    TextRun ka = TextRun.of("\u0915").get(0);
    double right = ki.outline(Typeface.PLAIN, 100).getBounds2D().getMaxX();
    double left = ki.width(Typeface.PLAIN, 100) - ka.width(Typeface.PLAIN, 100);
    assertTrue(left > 5, "the sign takes room");
    // The letter stands at the right end, as far from it as when it stands alone.
    double alone = ka.outline(Typeface.PLAIN, 100).getBounds2D().getMaxX();
    assertEquals(alone + left, right, 15);
  }
}
