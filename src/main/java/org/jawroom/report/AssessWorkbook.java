package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Assessment;

/** {@code assess.xlsx}: the candidates for people. */
final class AssessWorkbook {

  /** The name of the file. */
  static final String FILE = "assess.xlsx";

  private AssessWorkbook() {}

  /** Writes the workbook; leaves {@code out} open. */
  static void write(Assessment assessment, RunFacts facts, OutputStream out) throws IOException {
    Path rough = Files.createTempFile("assess", ".xlsx");
    try {
      try (SXSSFWorkbook book = new SXSSFWorkbook(new XSSFWorkbook());
          OutputStream first = Files.newOutputStream(rough)) {
        Styles styles = new Styles(book.getXSSFWorkbook(), facts.unit());
        MatrixWorkbook.describe(
            book.getXSSFWorkbook().getProperties(), "Candidates beside what the shop owns");
        CandidatesSheet.add(book, styles, assessment, SheetLimits.XLSX);
        SellerSheet.add(book, styles, assessment);
        InputsSheet.add(book, styles, facts, SheetLimits.XLSX);
        CautionsSheet.add(book, styles);
        book.write(first);
      }
      StableZip.copy(rough, out);
    } catch (RuntimeException wrapped) {
      // Rows go to disk while a sheet is filled, and the library wraps what goes wrong there.
      if (wrapped.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw wrapped;
    } finally {
      Files.deleteIfExists(rough);
    }
  }
}
