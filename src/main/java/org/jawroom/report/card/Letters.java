package org.jawroom.report.card;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jawroom.drawing.PdfFaces;
import org.jawroom.drawing.Typeface;

/** The letters of one document and how wide they are. */
final class Letters {

  private final PdfFaces faces;
  private final Map<Integer, String> printable = new HashMap<>();
  private final Map<Integer, Float> plainWidths = new HashMap<>();
  private final Map<Integer, Float> boldWidths = new HashMap<>();

  Letters(PdfFaces faces) {
    this.faces = faces;
  }

  PDFont font(boolean isBold) {
    return faces.get(isBold ? Typeface.BOLD : Typeface.PLAIN);
  }

  /** How wide {@link #printable} text is, in points. */
  double width(String text, boolean isBold, double size) {
    Map<Integer, Float> widths = isBold ? boldWidths : plainWidths;
    return text.codePoints()
            .mapToDouble(letter -> widths.computeIfAbsent(letter, one -> width(one, isBold)))
            .sum()
        / 1000
        * size;
  }

  private float width(int letter, boolean isBold) {
    try {
      return font(isBold).getStringWidth(Character.toString(letter));
    } catch (IOException unread) {
      throw new IllegalStateException("a font that was loaded cannot be read", unread);
    }
  }

  /**
   * With a dot for every letter that the typeface lacks, or that steers the text rather than being
   * seen.
   */
  String printable(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .mapToObj(
            letter ->
                printable.computeIfAbsent(letter, one -> Typeface.shown(Character.toString(one))))
        .forEach(shown::append);
    return shown.toString();
  }
}
