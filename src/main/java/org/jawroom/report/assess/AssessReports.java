package org.jawroom.report.assess;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.xlsx.RunFacts;

/** Writes an assessment and summarises it for a terminal; the entry point of the package. */
public final class AssessReports {
  private AssessReports() {}

  /** Returns the files that {@link #write} writes into {@code directory}. */
  public static Destination destination(Path directory) {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    files.put(AssessCsv.FILE, AssessCsv.KIND);
    files.put(AssessWorkbook.FILE, ReportMarks.workbook(AssessWorkbook.TITLE));
    files.put(AssessPdf.FILE, ReportMarks.pdf(AssessWorkbook.TITLE));
    return new Destination(directory, files);
  }

  /**
   * Writes {@link AssessCsv}, {@link AssessWorkbook} and {@link AssessPdf} into {@code directory},
   * which is created if missing: all files or none.
   *
   * @return the files written
   * @throws IOException if a file could not be written
   */
  public static List<Path> write(Path directory, Assessment assessment, RunFacts facts)
      throws IOException {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put(AssessCsv.FILE, out -> AssessCsv.write(assessment, out));
    files.put(AssessWorkbook.FILE, out -> AssessWorkbook.write(assessment, facts, out));
    files.put(AssessPdf.FILE, out -> AssessPdf.write(assessment, facts, out));
    return AtomicFiles.publish(destination(directory), files);
  }

  /** The better buy and what to ask, for a terminal, one line each. */
  public static List<String> summary(Assessment assessment, PeopleUnit unit, List<Path> written) {
    List<String> lines =
        new ArrayList<>(BetterBuyWords.lines(new AssessWords(unit, assessment, Integer.MAX_VALUE)));
    SellerWords seller = new SellerWords(unit);
    for (Assessed one : assessment.candidates()) {
      seller
          .lines(one)
          .forEach(line -> lines.add("Ask the seller of " + one.machine().name() + ": " + line));
    }
    written.forEach(file -> lines.add("Written: " + file));
    return lines.stream().map(PlainText::forTerminal).toList();
  }
}
