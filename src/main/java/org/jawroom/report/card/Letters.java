package org.jawroom.report.card;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jawroom.drawing.Typeface;

/** The typeface of one document, embedded as far as it is used. */
record Letters(PDFont plain, PDFont bold) {

  /** Stands for a letter that cannot be shown. */
  private static final String BOX = "□";

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
    try {
      return font(isBold).getStringWidth(text) / 1000 * size;
    } catch (IOException unread) {
      throw new IllegalStateException("a font that was loaded cannot be read", unread);
    }
  }

  /** With a box for every letter that the typeface lacks, or that steers the text rather than being seen. */
  static String printable(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().mapToObj(Letters::printable).forEach(shown::append);
    return shown.toString();
  }

  private static String printable(int letter) {
    String text = Character.toString(letter);
    boolean seen = switch (Character.getType(letter)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR, Character.UNASSIGNED -> false;
      default -> Typeface.PLAIN.has(text) && Typeface.BOLD.has(text);
    };
    return seen ? text : BOX;
  }
}
