package org.jawroom.report.plan;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.cell.CellPlan;
import org.jawroom.report.xlsx.CautionsSheet;
import org.jawroom.report.xlsx.InputsSheet;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.report.xlsx.book.StableWorkbook;

/** {@code plan.xlsx}: the plan for people. */
public final class PlanWorkbook {

  /** The name of the file. */
  public static final String FILE = "plan.xlsx";

  static final String TITLE = "Which vise for which machine";

  private static final List<String> CAUTIONS =
      List.of(
          "The plan counts a job as held where its part can be gripped and reached in some place of"
              + " that vise on that machine. Each job has a place of its own, on the sheet Jobs;"
              + " one bolted place need not serve them all.",
          "A job counts as held where a blank leaves tool height or weight unchecked; the sheet"
              + " Jobs says which. Check them before the job runs.",
          "The plan asks neither for machine hours nor for how long a set-up takes. A job held by"
              + " one machine only waits for that machine.",
          "A purchase serves as planned only if the thing bought is as its row says: measure it"
              + " when it comes, and plan again.");

  private static final List<String> OF_SEVERAL =
      List.of(
          "Of several kinds on one table a job counts as held only where its vise stands in the row,"
              + " with the part kept the spacing away from the other vises. These are taken to be"
              + " bare: parts in two vises at once, and tools that reach over to the next vise, are"
              + " yours to watch.");

  private PlanWorkbook() {}

  /** Writes the workbook; does not close {@code out}. */
  public static void write(CellPlan plan, RunFacts facts, OutputStream out) throws IOException {
    StableWorkbook.write(TITLE, book -> fill(book, plan, facts, SheetLimits.XLSX), out);
  }

  private static void fill(SXSSFWorkbook book, CellPlan plan, RunFacts facts, SheetLimits limits) {
    Styles styles = new Styles(book.getXSSFWorkbook(), facts.unit());
    PlanSheet.add(book, styles, plan);
    if (!plan.of().shop().jobs().isEmpty()) {
      PlanJobsSheet.add(book, styles, plan, limits);
    }
    InputsSheet.add(book, styles, facts, limits);
    List<String> cautions = new ArrayList<>(CAUTIONS);
    if (plan.of().kinds() > 1) {
      cautions.addAll(1, OF_SEVERAL);
    }
    CautionsSheet.add(book, styles, cautions);
  }
}
