package org.jawroom.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import org.jawroom.drawing.text.Typeface;

/** Fonts that a test wants of the machine: the build server has them, other machines may not. */
public final class ScriptFonts {

  /** In letters that the built-in typeface lacks; Debian's fonts-lohit-deva has them. */
  public static final String DEVANAGARI = "यांत्रिक वाइस";

  private ScriptFonts() {}

  /** Skips the test where no font has these letters; on the build server it fails. */
  public static void want(String text) {
    boolean there = Typeface.lacking(text).isEmpty();
    if ("true".equals(System.getenv("CI"))) {
      assertTrue(there, "no font has " + Typeface.lacking(text) + "; see .ci/run");
    }
    assumeTrue(there, "no font has " + Typeface.lacking(text));
  }
}
