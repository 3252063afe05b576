package org.jawroom.report.assess;

import java.io.IOException;
import java.io.OutputStream;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.report.xlsx.CautionsSheet;
import org.jawroom.report.xlsx.InputsSheet;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.report.xlsx.book.StableWorkbook;

/** {@code assess.xlsx}: the candidates for people. */
final class AssessWorkbook {

  /** The name of the file. */
  static final String FILE = "assess.xlsx";

  /** The title of the workbook and of the printable page. */
  static final String TITLE = "Candidates beside what the shop owns";

  private AssessWorkbook() {}

  /** Writes the workbook; does not close {@code out}. */
  static void write(Assessment assessment, RunFacts facts, OutputStream out) throws IOException {
    StableWorkbook.write(
        TITLE,
        book -> {
          Styles styles = new Styles(book.getXSSFWorkbook(), facts.unit());
          CandidatesSheet.add(book, styles, assessment, SheetLimits.XLSX);
          SellerSheet.add(book, styles, assessment);
          InputsSheet.add(book, styles, facts, SheetLimits.XLSX);
          CautionsSheet.add(book, styles);
        },
        out);
  }
}
