package org.jawroom.report.assess;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.drawing.file.PdfFaces;
import org.jawroom.drawing.file.PdfFile;
import org.jawroom.report.xlsx.RunFacts;

/** {@code assess.pdf}: the candidates side by side, up to three on one page. */
final class AssessPdf {

  /** The name of the file. */
  static final String FILE = "assess.pdf";

  private static final int ON_A_PAGE = 3;

  /** Type sizes in points, tried from the largest until everything fits on the page. */
  private static final double LARGEST = 8.5;

  private static final double SMALLEST = 6;
  private static final double STEP = 0.25;

  private AssessPdf() {}

  /** Writes the document; does not close {@code out}. */
  static void write(Assessment assessment, RunFacts facts, OutputStream out) throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.getDocumentInformation().setTitle(AssessWorkbook.TITLE);
      document.getDocumentInformation().setCreator("jawroom");
      PdfFaces faces = new PdfFaces(document);
      List<Assessed> candidates = assessment.candidates();
      for (int from = 0; from < candidates.size(); from += ON_A_PAGE) {
        int to = Math.min(from + ON_A_PAGE, candidates.size());
        page(assessment, facts, candidates.subList(from, to)).draw(document, faces);
      }
      out.write(PdfFile.bytes(document));
    }
  }

  private static AssessPage page(Assessment assessment, RunFacts facts, List<Assessed> candidates)
      throws IOException {
    for (double size = LARGEST; size > SMALLEST; size -= STEP) {
      AssessPage page = new AssessPage(assessment, facts, candidates, size);
      if (page.fits()) {
        return page;
      }
    }
    return new AssessPage(assessment, facts, candidates, SMALLEST);
  }
}
