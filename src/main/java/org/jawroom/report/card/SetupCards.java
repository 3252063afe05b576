package org.jawroom.report.card;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.advice.Explanation;
import org.jawroom.drawing.Picture;
import org.jawroom.drawing.Typeface;
import org.jawroom.report.AtomicFiles;
import org.jawroom.report.RunFacts;

/** Writes setup cards, a page for each pairing. */
public final class SetupCards {

  /** A PDF bears an identity; one made from a clock would make every file another. */
  private static final long IDENTITY = 0;

  private SetupCards() {}

  /**
   * Writes {@code file}, whole or not at all.
   *
   * @param explanations of pairings that {@link CardFacts#isPossible have a card}, at least one
   */
  public static void write(Path file, CardPaper paper, List<Explanation> explanations, RunFacts run)
      throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    AtomicFiles.publish(
        folder, Map.of(file.getFileName().toString(), out -> write(out, paper, explanations, run)));
  }

  /** The same into a stream. */
  public static void write(
      OutputStream out, CardPaper paper, List<Explanation> explanations, RunFacts run)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.setDocumentId(IDENTITY);
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle("Setup card");
      information.setProducer("jawroom " + run.toolVersion());
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setLanguage("en");
      Letters letters = Letters.of(document);
      for (Explanation explanation : explanations) {
        PDFormXObject picture = picture(document, letters, CardPicture.of(explanation));
        CardPage.add(document, letters, paper, CardFacts.of(explanation, run), picture);
      }
      document.save(out);
    }
  }

  /** As vectors, its text as text in the letters of the document. */
  static PDFormXObject picture(PDDocument document, Letters letters, Picture picture)
      throws IOException {
    PdfBoxGraphics2D pen =
        new PdfBoxGraphics2D(document, (float) picture.width(), (float) picture.height());
    try (PdfBoxGraphics2DFontTextDrawer text = new PdfBoxGraphics2DFontTextDrawer()) {
      text.registerFont(Typeface.PLAIN.sized(1).getFontName(), letters.font(false));
      text.registerFont(Typeface.BOLD.sized(1).getFontName(), letters.font(true));
      pen.setFontTextDrawer(text);
      // Without a colour of its own it draws nothing.
      pen.setColor(Color.BLACK);
      picture.paint(pen);
      pen.dispose();
    }
    return pen.getXFormObject();
  }
}
