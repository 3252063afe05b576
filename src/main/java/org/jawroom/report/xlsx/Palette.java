package org.jawroom.report.xlsx;

import java.util.HexFormat;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.jawroom.report.wording.Finding;

/**
 * The colours of findings: blues for what can stand, yellow and orange for what needs care,
 * red-brown and greys for what cannot. People who do not distinguish red from green can distinguish
 * them, and their lightness differs in greyscale. Signs and words repeat the meaning, so no colour
 * is needed.
 */
public final class Palette {

  /** Clear, but with a small margin. */
  public static final String CLOSE = "FFF0A8";

  /** Less margin than the planner wants. */
  public static final String SHORT = "F4F4F4";

  public static final String SHORT_INK = "7A7A7A";

  private Palette() {}

  static String fill(Finding finding) {
    return switch (finding) {
      case FITS -> "CFE6F7";
      case FITS_BUT -> "FFFFFF";
      case AWKWARD -> "D9EAD3";
      case LIMITED -> "8FC1E3";
      case MEASURE -> "F7C56B";
      case NO_PLACE -> "DB9271";
      case NO_MOUNT -> "BDBDBD";
      case UNKNOWN -> "E7DDF0";
    };
  }

  /** Hatched if a clear pairing had no guard to be checked against, else solid. */
  static FillPatternType pattern(Finding finding) {
    return finding == Finding.FITS_BUT
        ? FillPatternType.THIN_FORWARD_DIAG
        : FillPatternType.SOLID_FOREGROUND;
  }

  /** The pattern's colour: that of a solid fill, or of the strokes of a hatched one. */
  static String ink(Finding finding) {
    return finding == Finding.FITS_BUT ? "A6C9E2" : fill(finding);
  }

  /** With full alpha: some programs read a colour without alpha as transparent. */
  public static XSSFColor colour(String hex) {
    return new XSSFColor(HexFormat.of().parseHex("FF" + hex), null);
  }
}
