package org.jawroom.report.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.cell.CellPlan;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.xlsx.RunFacts;

/** Writes a plan; the entry point of the package. */
public final class PlanReports {

  /** The name of the file of setup cards. */
  public static final String CARDS = "cards.pdf";

  /** The title of setup cards, the same from every command. */
  public static final String CARDS_TITLE = "Setup card";

  private PlanReports() {}

  /**
   * Returns the files that {@link #write} writes into {@code directory}.
   *
   * @param cards whether setup cards are written
   */
  public static Destination destination(Path directory, boolean cards) {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    files.put(PlanCsv.FILE, PlanCsv.KIND);
    files.put(PlanWorkbook.FILE, ReportMarks.workbook(PlanWorkbook.TITLE));
    if (cards) {
      files.put(CARDS, ReportMarks.pdf(CARDS_TITLE));
    }
    return new Destination(directory, files);
  }

  /**
   * Writes {@link PlanCsv}, {@link PlanWorkbook} and the cards, if any, into {@code directory},
   * which is created if missing: all files or none.
   *
   * @return the files written
   * @throws IOException if a file could not be written
   */
  public static List<Path> write(
      Path directory, CellPlan plan, RunFacts facts, Optional<byte[]> cards) throws IOException {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put(PlanCsv.FILE, out -> PlanCsv.write(plan, out));
    files.put(PlanWorkbook.FILE, out -> PlanWorkbook.write(plan, facts, out));
    cards.ifPresent(pdf -> files.put(CARDS, out -> out.write(pdf)));
    return AtomicFiles.publish(destination(directory, cards.isPresent()), files);
  }
}
