package org.jawroom.report.form;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.report.wording.Cautions;
import org.junit.jupiter.api.Test;

class MeasuringFormTest {
  private static final FormReading GAP =
      new FormReading("rear_gap", "Table fully back: to the cover.", true, false);
  private static final FormReading WIDTH =
      new FormReading("jaw_width", "Along the jaw.", false, true);

  @Test
  void of_pages_areA4WithReadingsTrapsAndCautions() throws IOException {
    byte[] bytes = MeasuringForm.of(List.of(page(List.of(GAP)), page(List.of(GAP))));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      assertEquals(2, document.getNumberOfPages());
      assertEquals(PDRectangle.A4.getWidth(), document.getPage(0).getMediaBox().getWidth());
      assertEquals(MeasuringForm.TITLE, document.getDocumentInformation().getTitle());
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (String part :
          List.of("rear_gap", "not measurednone", "to the cover.", "a trap", "page 2 of 2")) {
        assertTrue(text.contains(part), part + " in " + text);
      }
      assertTrue(text.contains(Cautions.BRIEF), text);
    }
    assertArrayEquals(bytes, MeasuringForm.of(List.of(page(List.of(GAP)), page(List.of(GAP)))));
  }

  @Test
  void of_readingThatMustBeFilled_hasNoTick() throws IOException {
    try (PDDocument document = Loader.loadPDF(MeasuringForm.of(List.of(page(List.of(WIDTH)))))) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains(FormReading.MUST_BE_FILLED), text);
      assertFalse(text.contains(FormReading.NOT_MEASURED), text);
    }
  }

  @Test
  void of_manyReadings_makeTheSketchSmaller() throws IOException {
    List<FormReading> many = Collections.nCopies(20, GAP);
    FormPage tall = page(many);
    double natural = 523.0 / tall.sketch().getWidth() * tall.sketch().getHeight();
    assertTrue(natural + 10 * 47 + 90 > 842 - 2 * 36, "nothing to make smaller");
    MeasuringForm.of(List.of(tall));
  }

  @Test
  void of_moreThanAPageHolds_isABug() {
    List<FormReading> many = Collections.nCopies(60, GAP);
    assertThrows(IllegalStateException.class, () -> MeasuringForm.of(List.of(page(many))));
  }

  private static FormPage page(List<FormReading> readings) {
    return new FormPage(
        "machine",
        "Machine: the gaps",
        new BufferedImage(900, 400, BufferedImage.TYPE_INT_RGB),
        readings,
        List.of("a trap"));
  }
}
