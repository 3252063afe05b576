package org.jawroom.report.card;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jawroom.drawing.Typeface;

/** The typeface of one document, embedded as far as it is used. */
final class Letters {

  /** Stands for a letter that cannot be shown. */
  private static final String BOX = "□";

  private final PDFont plain;
  private final PDFont bold;
  private final Map<Integer, String> printable = new HashMap<>();
  private final Map<Integer, Float> plainWidths = new HashMap<>();
  private final Map<Integer, Float> boldWidths = new HashMap<>();

  private Letters(PDFont plain, PDFont bold) {
    this.plain = plain;
    this.bold = bold;
  }

  static Letters of(PDDocument document) throws IOException {
    return new Letters(load(document, Typeface.PLAIN), load(document, Typeface.BOLD));
  }

  private static PDFont load(PDDocument document, Typeface face) throws IOException {
    try (InputStream file = face.open()) {
      return PDType0Font.load(document, file, true);
    }
  }

  PDFont font(boolean isBold) {
    return isBold ? bold : plain;
  }

  /** How wide {@link #printable} text is, in points. */
  double width(String text, boolean isBold, double size) {
    Map<Integer, Float> widths = isBold ? boldWidths : plainWidths;
    return text.codePoints()
            .mapToDouble(letter -> widths.computeIfAbsent(letter, one -> width(one, isBold)))
            .sum()
        / 1000 * size;
  }

  private float width(int letter, boolean isBold) {
    try {
      return font(isBold).getStringWidth(Character.toString(letter));
    } catch (IOException unread) {
      throw new IllegalStateException("a font that was loaded cannot be read", unread);
    }
  }

  /** With a box for every letter that the typeface lacks, or that steers the text rather than being seen. */
  String printable(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .mapToObj(letter -> printable.computeIfAbsent(letter, Letters::orBox))
        .forEach(shown::append);
    return shown.toString();
  }

  private static String orBox(int letter) {
    String text = Character.toString(letter);
    boolean seen = switch (Character.getType(letter)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR, Character.UNASSIGNED -> false;
      default -> Typeface.PLAIN.has(text) && Typeface.BOLD.has(text);
    };
    return seen ? text : BOX;
  }
}
