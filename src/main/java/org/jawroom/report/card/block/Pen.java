package org.jawroom.report.card.block;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;
import org.jawroom.drawing.file.PdfOutlines;
import org.jawroom.drawing.text.TextRun;

/** Draws on a page; coordinates in points from its upper left corner, y down. */
public final class Pen {
  private final PDPageContentStream page;
  private final Letters letters;
  private final double height;

  public Pen(PDPageContentStream page, Letters letters, double height) {
    this.page = page;
    this.letters = letters;
    this.height = height;
  }

  /** Draws {@link Letters#printable} text from {@code x} with its baseline at {@code y}. */
  void text(double x, double y, double size, boolean bold, String text) throws IOException {
    double at = x;
    for (TextRun run : TextRun.of(text)) {
      if (run.outlined()) {
        PdfOutlines.write(page, run, Letters.face(bold), size, at, up(y));
      } else {
        page.beginText();
        page.setFont(letters.font(bold), (float) size);
        page.newLineAtOffset((float) at, up(y));
        page.showText(run.text());
        page.endText();
      }
      at += letters.width(run, bold, size);
    }
  }

  void line(double fromX, double fromY, double toX, double toY, double thick) throws IOException {
    page.setLineWidth((float) thick);
    page.moveTo((float) fromX, up(fromY));
    page.lineTo((float) toX, up(toY));
    page.stroke();
  }

  void frame(double x, double y, double width, double high, double thick) throws IOException {
    page.setLineWidth((float) thick);
    page.addRect((float) x, up(y + high), (float) width, (float) high);
    page.stroke();
  }

  /** {@code gray}: 0 black to 1 white. */
  void shade(double x, double y, double width, double high, double gray) throws IOException {
    page.setNonStrokingColor((float) gray);
    page.addRect((float) x, up(y + high), (float) width, (float) high);
    page.fill();
    page.setNonStrokingColor(0f);
  }

  /** Draws the picture with its upper left corner there. */
  void picture(PDFormXObject picture, double x, double y, double scale) throws IOException {
    double high = picture.getBBox().getHeight() * scale;
    page.saveGraphicsState();
    page.transform(new Matrix((float) scale, 0, 0, (float) scale, (float) x, up(y + high)));
    page.drawForm(picture);
    page.restoreGraphicsState();
  }

  private float up(double y) {
    return (float) (height - y);
  }
}
