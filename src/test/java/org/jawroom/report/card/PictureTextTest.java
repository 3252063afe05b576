package org.jawroom.report.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.drawing.Picture;
import org.jawroom.drawing.Typeface;
import org.junit.jupiter.api.Test;

/** How a picture gets into a card. */
class PictureTextTest {

  private static final class Sign implements Picture {
    @Override
    public double width() {
      return 200;
    }

    @Override
    public double height() {
      return 100;
    }

    @Override
    public void paint(Graphics2D pen) {
      pen.setFont(Typeface.PLAIN.sized(9));
      pen.drawString("screw rear 12.5", 10, 20);
      pen.setFont(Typeface.BOLD.sized(9));
      pen.drawString("rear cover", 10f, 40f);
      pen.setFont(Typeface.PLAIN.sized(9));
      pen.drawString("漢", 10, 60);
      pen.draw(new Rectangle2D.Double(5, 5, 190, 90));
    }
  }

  @Test
  void picture_textInBothWeights_isFoundAndTheLinesAreVectors() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      PDFormXObject picture = SetupCards.picture(document, Letters.of(document), new Sign());
      try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
        stream.drawForm(picture);
      }
      String drawn = new String(picture.getContentStream().toByteArray(), StandardCharsets.ISO_8859_1);
      assertTrue(drawn.contains(" l\n"), drawn);
      document.save(out);
    }
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("screw rear 12.5"), text);
      assertTrue(text.contains("rear cover"), text);
      PDFormXObject picture =
          (PDFormXObject) document.getPage(0).getResources().getXObject(
              document.getPage(0).getResources().getXObjectNames().iterator().next());
      int fonts = 0;
      for (var name : picture.getResources().getFontNames()) {
        assertTrue(picture.getResources().getFont(name).isEmbedded(), name.getName());
        fonts++;
      }
      assertEquals(2, fonts);
    }
  }
}
