package org.jawroom.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.cell.CellPlan;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.plan.model.Unheld;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.place.TapeWords;
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

  /**
   * A row: a job that is not held, or one on a machine that holds it.
   *
   * @param first whether it is the first row of its job
   */
  private record Entry(
      Job job, boolean first, Optional<Unheld> unheld, Optional<JobOutcome> held) {}

  private PlanJobsSheet(SXSSFWorkbook book, Styles styles, CellPlan plan) {
    this.plan = plan;
    this.styles = styles;
    this.words = new PlanWords(styles.unit(), plan, " × ");
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
                new Heading("What would hold it, or is unchecked", 44)),
            1);
  }

  static void add(SXSSFWorkbook book, Styles styles, CellPlan plan, SheetLimits limits) {
    PlanJobsSheet sheet = new PlanJobsSheet(book, styles, plan);
    String remark =
        "Held: "
            + sheet.words.held()
            + ". "
            + sheet.words.statement()
            + " Lengths in "
            + styles.unit().plural()
            + ", margins rounded toward less.";
    sheet.list.head("Jobs", sheet.entries(), limits, "", remark).forEach(sheet::entry);
    sheet.list.finish();
  }

  private List<Entry> entries() {
    List<Job> jobs = plan.of().shop().jobs();
    List<Entry> entries = new ArrayList<>();
    for (Unheld unheld : plan.plan().unheld()) {
      entries.add(new Entry(jobs.get(unheld.job()), true, Optional.of(unheld), Optional.empty()));
    }
    for (int job : plan.plan().held()) {
      boolean first = true;
      for (JobOutcome holding : plan.holding(job)) {
        entries.add(new Entry(holding.job(), first, Optional.empty(), Optional.of(holding)));
        first = false;
      }
    }
    return entries;
  }

  private void entry(Entry entry) {
    list.entry();
    list.text(entry.job().name(), entry.first() ? styles.entry() : styles.repeated());
    if (entry.first()) {
      list.number(entry.job().quantity(), "0");
    } else {
      list.blank(1);
    }
    entry.unheld().ifPresent(this::unheld);
    entry.held().ifPresent(outcome -> held(outcome, entry.first()));
  }

  private void unheld(Unheld unheld) {
    Finding finding =
        plan.of().unknownOf(unheld.job()).isEmpty() ? Finding.NO_PLACE : Finding.UNKNOWN;
    list.text(finding.sign() + " not held", styles.entry(finding));
    list.blank(1);
    list.length(OptionalLong.empty(), Rounding.DOWN);
    list.blank(1);
    list.text(new JobWords(styles.unit()).size(plan.of().shop().jobs().get(unheld.job())));
    list.text(words.remedy(unheld));
  }

  private void held(JobOutcome outcome, boolean first) {
    Finding finding = Finding.ofHeld(outcome);
    list.text(finding.sign() + " " + outcome.machine().name(), styles.entry(finding));
    list.text(outcome.vise().name());
    list.length(outcome.margin(), Rounding.DOWN);
    list.text(
        new TapeWords(styles.unit(), outcome.machine(), outcome.vise())
            .of(outcome.place().orElseThrow()).stream().collect(Collectors.joining("\n")));
    list.text(first ? new JobWords(styles.unit()).size(outcome.job()) : "");
    list.text(String.join("; ", JobWords.marks(outcome)));
  }
}
