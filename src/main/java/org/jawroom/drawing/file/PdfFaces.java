package org.jawroom.drawing.file;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.drawing.text.Typeface;

/** The typeface embedded in one PDF, for its text and for the pictures in it. */
public final class PdfFaces {
  private final PDDocument document;
  private final Map<Typeface, PDFont> faces = new EnumMap<>(Typeface.class);

  public PdfFaces(PDDocument document) throws IOException {
    this.document = document;
    for (Typeface face : Typeface.values()) {
      try (InputStream letters = face.open()) {
        faces.put(face, PDType0Font.load(document, letters, true));
      }
    }
  }

  /** The font encodes only text from {@link Typeface#shown} and throws on anything else. */
  public PDFont get(Typeface face) {
    return faces.get(face);
  }

  /** The picture as vector graphics with text as text, to draw on pages of the same document. */
  public PDFormXObject form(Picture picture) throws IOException {
    PdfBoxGraphics2D pen =
        new PdfBoxGraphics2D(document, (float) picture.width(), (float) picture.height());
    pen.setFontTextDrawer(new EmbeddedText());
    picture.paint(pen);
    pen.dispose();
    return pen.getXFormObject();
  }

  private final class EmbeddedText extends PdfBoxGraphics2DFontTextDrawer {
    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
      return faces.get(Typeface.of(font));
    }
  }
}
