package org.jawroom.report.matrix;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.report.csv.JobsCsv;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.tally.JobTally;
import org.jawroom.report.tally.JobTotals;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.PageBreaks;
import org.jawroom.report.xlsx.Paper;
import org.jawroom.report.xlsx.Remark;
import org.jawroom.report.xlsx.SheetColumns;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;

/**
 * The sheet <i>Jobs</i>: jobs down, machines across. Each job has two rows: its name and how many
 * vises hold it, and below, in small type, its size and the best of those vises, or the one nearest
 * to holding it; in a shop too large to list each pairing the counts alone.
 */
public final class JobsSheet {
  static final String NAME = "Jobs";

  /** The row of the first job. */
  static final int FIRST_JOB = 6;

  private static final int NAMES = FIRST_JOB - 1;
  private static final int ROWS_EACH = 2;
  private static final int HEAD_WIDTH = 34;
  private static final int MACHINE_WIDTH = 22;
  private static final int SMALL = 8;

  private static final List<String> REMARKS =
      List.of(
          "Held: standing where jobs.csv says, nothing listed is hit with the part in the jaws, from its width to"
              + " the play that lets it in; the spindle reaches all of it; tools and load allow it. Not checked"
              + " for want of a figure: after the !.",
          "Best: nothing unchecked, bolts before clamps, a place where it can be tapped square, a comfortable margin,"
              + " the widest jaw, then the margin. Nearest: the vise that fails last in the order jaws, mount, orientation, clearance,"
              + " reach, tools, load, and there by the least.",
          "How hard a vise holds a part, and what a tool may hit beside it, are yours to judge.");

  /** The remark that says which vise is named. */
  private static final int RANKING = 1;

  private static final String COUNTED =
      "Of so many pairings the vises are only counted: each stands in " + JobsCsv.FILE + ".";

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final JobWords words;
  private final Shop shop;
  private final JobTotals totals;
  private final int jobs;
  private final int machines;

  private JobsSheet(
      SXSSFWorkbook book, Styles styles, Shop shop, JobTotals totals, SheetLimits limits) {
    this.sheet = book.createSheet(NAME);
    this.styles = styles;
    this.words = new JobWords(styles.unit());
    this.shop = shop;
    this.totals = totals;
    this.jobs = Math.min(shop.jobs().size(), (limits.rows() - FIRST_JOB) / ROWS_EACH);
    this.machines = Math.min(shop.machines().size(), limits.columns() - 1);
  }

  /** Adds the sheet; without details the counts alone. */
  public static void add(
      SXSSFWorkbook book, Styles styles, Shop shop, JobTotals totals, SheetLimits limits) {
    JobsSheet sheet = new JobsSheet(book, styles, shop, totals, limits);
    sheet.setUp();
    sheet.head();
    PageBreaks pages = sheet.pages();
    for (int job = 0; job < sheet.jobs; job++) {
      sheet.job(job, pages);
    }
    pages.finish();
  }

  private void setUp() {
    sheet.createFreezePane(1, FIRST_JOB);
    SheetColumns.widths(sheet, HEAD_WIDTH, MACHINE_WIDTH, machines);
    Paper.set(sheet, styles.unit(), NAMES, NAMES, 1, width());
  }

  private int width() {
    return HEAD_WIDTH + machines * MACHINE_WIDTH;
  }

  private PageBreaks pages() {
    int across = Paper.across(width());
    int machinesOnPage = (machines + across - 1) / across;
    double head = 0;
    for (int row = 0; row < FIRST_JOB; row++) {
      head += sheet.getRow(row).getHeightInPoints();
    }
    double room = Paper.down(styles.unit(), HEAD_WIDTH + machinesOnPage * MACHINE_WIDTH);
    return new PageBreaks(sheet, room, head, sheet.getRow(NAMES).getHeightInPoints());
  }

  private void head() {
    Row title = sheet.createRow(0);
    title.setHeightInPoints(26);
    Cells.text(
        title,
        0,
        "Which job is held on which machine"
            + cut(jobs, shop.jobs().size(), "JOBS")
            + cut(machines, shop.machines().size(), "MACHINES"),
        styles.title());
    for (int remark = 0; remark < REMARKS.size(); remark++) {
      boolean ranked = remark == RANKING && !totals.isDetailed();
      remark(1 + remark, ranked ? COUNTED : REMARKS.get(remark));
    }
    remark(
        1 + REMARKS.size(),
        "Lengths in "
            + styles.unit().plural()
            + ": along the jaws × between them × high; margins rounded"
            + " toward less.");
    Row names = sheet.createRow(NAMES);
    Cells.text(names, 0, "Job ▼   Machine ►", styles.matrixHeading(false, false));
    int lines = 1;
    for (int column = 1; column <= machines; column++) {
      Machine machine = shop.machines().get(column - 1);
      String name = machine.name() + (machine.candidate() ? " (candidate)" : "");
      Cells.text(names, column, name, styles.matrixHeading(false, true));
      lines = Math.max(lines, TextLines.count(name, MACHINE_WIDTH - 2));
    }
    names.setHeightInPoints(Styles.height(Math.min(lines, 6), 10));
  }

  private void remark(int index, String text) {
    List<Integer> widths = Remark.widths(HEAD_WIDTH, MACHINE_WIDTH, machines);
    Remark.write(sheet.createRow(index), 0, widths, text, styles, 15);
  }

  private static String cut(int shown, int all, String what) {
    return shown == all
        ? ""
        : "; ONLY THE FIRST "
            + shown
            + " OF "
            + all
            + " "
            + what
            + " FIT HERE, "
            + JobsCsv.FILE
            + " HAS ALL";
  }

  private void job(int index, PageBreaks pages) {
    Job job = shop.jobs().get(index);
    Row counts = sheet.createRow(FIRST_JOB + index * ROWS_EACH);
    Row reasons = sheet.createRow(FIRST_JOB + index * ROWS_EACH + 1);
    String name = job.name() + (job.quantity() == 1 ? "" : " (" + job.quantity() + " pieces)");
    Cells.text(counts, 0, name, styles.matrixHeading(false, false));
    Cells.text(reasons, 0, words.size(job), styles.matrixHeading(true, false));
    int lines = smallLines(words.size(job), HEAD_WIDTH);
    for (int machine = 0; machine < machines; machine++) {
      JobTally ofVises = totals.on(machine, index);
      Finding finding = ofVises.finding();
      String reason = reason(ofVises);
      Cells.text(counts, machine + 1, count(ofVises, finding), styles.margin(finding, false));
      Cells.text(reasons, machine + 1, reason, styles.reason(finding, false));
      lines = Math.max(lines, smallLines(reason, MACHINE_WIDTH));
    }
    counts.setHeightInPoints(
        Math.max(20, Styles.height(TextLines.count(name, HEAD_WIDTH - 4), 10)));
    reasons.setHeightInPoints(Styles.height(lines, SMALL));
    pages.add(counts.getRowNum(), counts.getHeightInPoints() + reasons.getHeightInPoints());
  }

  private static String count(JobTally ofVises, Finding finding) {
    return switch (finding) {
      case UNKNOWN -> finding.sign() + " unknown";
      case NO_PLACE -> finding.sign() + " not held";
      // Grey, as all that needs no attention; without a sign, since the pairing was not checked.
      case NO_MOUNT -> "not run here";
      default -> finding.sign() + " " + ofVises.held() + " of " + ofVises.total() + " vises";
    };
  }

  private String reason(JobTally ofVises) {
    if (ofVises.isBarred()) {
      return "";
    }
    List<String> lines = new ArrayList<>();
    ofVises
        .best()
        .ifPresentOrElse(
            best -> {
              lines.add("best: " + best.vise().name() + margin(best));
              JobWords.marks(best).forEach(mark -> lines.add("! " + mark));
            },
            () ->
                ofVises
                    .nearest()
                    .ifPresent(
                        nearest -> {
                          lines.add(
                              "nearest: "
                                  + nearest.vise().name()
                                  + ": "
                                  + words.failing(nearest).get(0));
                          JobWords.inDoubt(nearest).ifPresent(doubt -> lines.add("! " + doubt));
                        }));
    if (ofVises.unknown() > 0) {
      lines.add("unknown: " + ofVises.unknown() + " of " + ofVises.total());
    }
    return String.join("\n", lines);
  }

  private String margin(JobOutcome best) {
    return best.margin().isPresent()
        ? " (" + styles.unit().brief(best.margin().getAsLong(), Rounding.DOWN) + ")"
        : " (nothing listed to hit)";
  }

  private static int smallLines(String text, int width) {
    return TextLines.count(text, TextLines.perLine(width, SMALL));
  }
}
