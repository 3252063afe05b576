package org.jawroom.report.card.block;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jawroom.drawing.file.PdfFaces;
import org.jawroom.drawing.text.TextRun;
import org.jawroom.drawing.text.Typeface;

/** The glyphs of one document and their widths. */
public final class Letters {

  private static final int PER_MILLE = 1000;

  /** The key of the cache of outline widths: a text run in one weight. */
  private record Outlined(TextRun run, boolean isBold) {}

  private final PdfFaces faces;
  private final Map<Outlined, Double> outlines = new HashMap<>();
  private final Map<Integer, Float> plainWidths = new HashMap<>();
  private final Map<Integer, Float> boldWidths = new HashMap<>();

  public Letters(PdfFaces faces) {
    this.faces = faces;
  }

  PDFont font(boolean isBold) {
    return faces.get(face(isBold));
  }

  /** The width of {@link #printable} text in points. */
  public double width(String text, boolean isBold, double size) {
    return TextRun.of(text).stream().mapToDouble(run -> width(run, isBold, size)).sum();
  }

  /** The width of one run of it in points. */
  public double width(TextRun run, boolean isBold, double size) {
    if (run.outlined()) {
      return outlines.computeIfAbsent(
              new Outlined(run, isBold), one -> run.width(face(isBold), PER_MILLE))
          / PER_MILLE
          * size;
    }
    Map<Integer, Float> widths = isBold ? boldWidths : plainWidths;
    return run.text()
            .codePoints()
            .mapToDouble(letter -> widths.computeIfAbsent(letter, one -> width(one, isBold)))
            .sum()
        / PER_MILLE
        * size;
  }

  private float width(int letter, boolean isBold) {
    try {
      return font(isBold).getStringWidth(Character.toString(letter));
    } catch (IOException unread) {
      throw new IllegalStateException("cannot read the metrics of an embedded font", unread);
    }
  }

  static Typeface face(boolean isBold) {
    return isBold ? Typeface.BOLD : Typeface.PLAIN;
  }

  /** Replaces by a dot every letter that no font has and every invisible control character. */
  public String printable(String text) {
    return Typeface.shown(text);
  }
}
