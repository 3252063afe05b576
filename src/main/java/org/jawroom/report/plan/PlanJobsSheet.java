package org.jawroom.report.plan;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.cell.CellPlan;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.plan.Unheld;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.TapeWords;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Job;

/**
 * The sheet <i>Jobs</i> of a plan: for each job that is not held what would hold it, then one row
 * for each other job and each machine that holds it.
 */
final class PlanJobsSheet {
  static final String NAME = "Jobs";

  private final CellPlan plan;
  private final Styles styles;
  private final ListSheet list;
  private final PlanWords words;
  private final int most;
  private int shown;

  private PlanJobsSheet(SXSSFWorkbook book, Styles styles, CellPlan plan, SheetLimits limits) {
    this.plan = plan;
    this.styles = styles;
    this.words = new PlanWords(styles.unit(), plan, " × ");
    this.most = ListSheet.room(limits);
    this.list =
        new ListSheet(
            book,
            styles,
            NAME,
            List.of(
                new Heading("Job", 20),
                new Heading("Pieces", 9),
                new Heading("Held on", 20),
                new Heading("With", 20),
                new Heading("Margin", 9),
                new Heading("Where it stands for this job", 54),
                new Heading("The part", 38),
                new Heading("What would hold it", 44)),
            1);
  }

  static void add(SXSSFWorkbook book, Styles styles, CellPlan plan, SheetLimits limits) {
    PlanJobsSheet sheet = new PlanJobsSheet(book, styles, plan, limits);
    sheet.list.head(
        "Jobs",
        "Held: "
            + sheet.words.held()
            + ". "
            + sheet.words.statement()
            + " Lengths in "
            + styles.unit().plural()
            + ", margins rounded toward less.");
    plan.plan().unheld().forEach(sheet::unheld);
    plan.plan().held().forEach(sheet::held);
    sheet.list.finish();
  }

  private void held(int job) {
    List<JobOutcome> holding = plan.holding(job);
    for (int i = 0; i < holding.size(); i++) {
      held(holding.get(i), i == 0);
    }
  }

  private boolean begin(Job job, boolean first) {
    if (shown == most) {
      return false;
    }
    shown++;
    list.entry();
    list.text(job.name(), first ? styles.entry() : styles.repeated());
    if (first) {
      list.number(job.quantity(), "0");
    } else {
      list.blank(1);
    }
    return true;
  }

  private void unheld(Unheld unheld) {
    Job job = plan.of().shop().jobs().get(unheld.job());
    if (begin(job, true)) {
      Finding finding =
          plan.of().unknownOf(unheld.job()).isEmpty() ? Finding.NO_PLACE : Finding.UNKNOWN;
      list.text(finding.sign() + " not held", styles.entry(finding));
      list.blank(1);
      list.length(OptionalLong.empty(), Rounding.DOWN);
      list.blank(1);
      list.text(new JobWords(styles.unit()).size(job));
      list.text(words.remedy(unheld));
    }
  }

  private void held(JobOutcome outcome, boolean first) {
    if (begin(outcome.job(), first)) {
      Finding finding = outcome.margin().isPresent() ? Finding.FITS : Finding.FITS_BUT;
      list.text(finding.sign() + " " + outcome.machine().name(), styles.entry(finding));
      list.text(outcome.vise().name());
      list.length(outcome.margin(), Rounding.DOWN);
      list.text(
          new TapeWords(styles.unit(), outcome.machine(), outcome.vise())
              .of(outcome.place().orElseThrow()).stream().collect(Collectors.joining("\n")));
      list.text(first ? new JobWords(styles.unit()).size(outcome.job()) : "");
      list.blank(1);
    }
  }
}
