package org.jawroom.drawing.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Pictures as PDF, one page each: vector graphics, embedded fonts, the same bytes for the same
 * pictures.
 */
public final class PdfFile {
  private PdfFile() {}

  public static byte[] of(List<? extends Picture> pictures) {
    try (PDDocument document = new PDDocument()) {
      PdfFaces faces = new PdfFaces(document);
      for (Picture picture : pictures) {
        PDPage page =
            new PDPage(new PDRectangle((float) picture.width(), (float) picture.height()));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          content.drawForm(faces.form(picture));
        }
      }
      return bytes(document);
    } catch (IOException inMemory) {
      throw new UncheckedIOException(inMemory);
    }
  }

  /** The finished document; its file identifier contains nothing that changes from run to run. */
  public static byte[] bytes(PDDocument document) throws IOException {
    COSString fixed = new COSString(new byte[16]);
    COSArray id = new COSArray();
    id.add(fixed);
    id.add(fixed);
    document.getDocument().getTrailer().setItem(COSName.ID, id);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes);
    return bytes.toByteArray();
  }
}
