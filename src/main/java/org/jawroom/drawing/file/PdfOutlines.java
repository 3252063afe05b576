package org.jawroom.drawing.file;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.jawroom.drawing.text.TextRun;
import org.jawroom.drawing.text.Typeface;

/** Draws outlined text on a page of a PDF. */
public final class PdfOutlines {
  private PdfOutlines() {}

  /**
   * Fills the outlines of {@code run} in the current colour from ({@code x}, {@code y}), y up.
   * Their text is attached for screen readers and search (ISO 32000-1, 14.9.4: ActualText).
   */
  public static void write(
      PDPageContentStream page, TextRun run, Typeface face, double size, double x, double y)
      throws IOException {
    COSDictionary said = new COSDictionary();
    said.setString(COSName.ACTUAL_TEXT, run.text());
    page.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(said));
    fill(page, run.outline(face, size).getPathIterator(new AffineTransform(1, 0, 0, -1, x, y)));
    page.endMarkedContent();
  }

  private static void fill(PDPageContentStream page, PathIterator path) throws IOException {
    float[] p = new float[6];
    float atX = 0;
    float atY = 0;
    boolean any = false;
    for (; !path.isDone(); path.next()) {
      any = true;
      switch (path.currentSegment(p)) {
        case PathIterator.SEG_MOVETO -> {
          page.moveTo(p[0], p[1]);
          atX = p[0];
          atY = p[1];
        }
        case PathIterator.SEG_LINETO -> {
          page.lineTo(p[0], p[1]);
          atX = p[0];
          atY = p[1];
        }
        case PathIterator.SEG_QUADTO -> {
          // The same quadratic curve as a cubic one: its control points lie two thirds of the way
          // from each end to the quadratic's control point.
          page.curveTo(
              atX + (p[0] - atX) * 2 / 3,
              atY + (p[1] - atY) * 2 / 3,
              p[2] + (p[0] - p[2]) * 2 / 3,
              p[3] + (p[1] - p[3]) * 2 / 3,
              p[2],
              p[3]);
          atX = p[2];
          atY = p[3];
        }
        case PathIterator.SEG_CUBICTO -> {
          page.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
          atX = p[4];
          atY = p[5];
        }
        default -> page.closePath();
      }
    }
    if (any) {
      page.fill();
    }
  }
}
