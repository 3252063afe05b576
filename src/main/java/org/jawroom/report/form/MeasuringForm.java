package org.jawroom.report.form;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jawroom.drawing.file.PdfFaces;
import org.jawroom.drawing.file.PdfFile;

/** The form as a PDF of A4 pages. */
public final class MeasuringForm {

  /** The document's title, by which an older form is recognised. */
  public static final String TITLE = "jawroom measuring form";

  private MeasuringForm() {}

  /** The document, the same bytes for the same pages. */
  public static byte[] of(List<FormPage> pages) throws IOException {
    return of(TITLE, pages);
  }

  /** The same under another title, by which the document is recognised. */
  public static byte[] of(String title, List<FormPage> pages) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(title);
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setLanguage("en");
      PdfFaces faces = new PdfFaces(document);
      for (int i = 0; i < pages.size(); i++) {
        FormPicture picture = new FormPicture(pages.get(i), i + 1, pages.size());
        PDPage sheet = new PDPage(PDRectangle.A4);
        document.addPage(sheet);
        try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
          content.drawForm(faces.form(picture));
        }
      }
      return PdfFile.bytes(document);
    }
  }
}
