package org.jawroom.report.plan;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.CellSet;
import org.jawroom.cell.ShopCell;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;

/**
 * {@code plan.csv}: one row for each machine of the cell, in millimetres; a machine without a vise
 * has empty cells. Where a machine may have several kinds, it has one row for each of them, and the
 * file a last column {@code place}: 1 for the leftmost of a row of several kinds (slots along y:
 * the one in front), empty for one kind alone. What is bought for a machine stands in its first
 * row.
 *
 * <p>{@code margin_mm} to {@code mount} describe the place that the margin belongs to, the opening
 * columns what the jaws may use there; with several vises side by side they describe one alone
 * ({@link PairingsCsv} has the positions). {@code jobs} lists the jobs it holds, separated by
 * {@code ;}. {@code buy} is what to buy for the row, {@code machine}, {@code vise} or {@code
 * machine;vise}, and {@code cost} its price.
 *
 * <p>{@link PlanRows} reads {@code machine} and {@code vise} back.
 */
public final class PlanCsv {

  /** The name of the file. */
  public static final String FILE = "plan.csv";

  static final String MACHINE = "machine";
  static final String VISE = "vise";

  private static final List<String> HEADER =
      List.of(
          MACHINE,
          VISE,
          "count",
          "margin_mm",
          "opening_from_mm",
          "opening_to_mm",
          "handle_to",
          "x_mm",
          "y_mm",
          "mount",
          "jobs",
          "buy",
          "cost");

  private static final String PLACE = "place";

  static final ReportKind KIND = ReportMarks.csv(HEADER);

  private PlanCsv() {}

  /** Writes all rows in the order of the cell; does not close {@code out}. */
  public static void write(CellPlan plan, OutputStream out) throws IOException {
    List<String> header = new ArrayList<>(HEADER);
    if (plan.of().kinds() > 1) {
      header.add(PLACE);
    }
    CsvReport table = new CsvReport(out, header);
    for (CellPlan.Row row : plan.rows()) {
      for (List<String> cells : rows(plan, row)) {
        cells.addAll(Collections.nCopies(header.size() - cells.size(), ""));
        table.row(cells);
      }
    }
    table.finish();
  }

  private static List<List<String>> rows(CellPlan plan, CellPlan.Row planned) {
    String machine = PlainText.harmless(plan.machine(planned).name());
    if (planned.given().isEmpty()) {
      return List.of(new ArrayList<>(List.of(machine)));
    }
    if (plan.set(planned).isEmpty()) {
      return List.of(row(plan, planned, machine));
    }
    CellSet set = plan.set(planned).get();
    List<List<String>> rows = new ArrayList<>();
    for (int at = 0; at < set.row().stands().size(); at++) {
      rows.add(row(plan, planned, set, at));
    }
    return rows;
  }

  private static List<String> row(CellPlan plan, CellPlan.Row planned, String machine) {
    CellPairing pairing = plan.pairing(planned);
    List<String> row = new ArrayList<>(HEADER.size());
    row.add(machine);
    row.add(PlainText.harmless(pairing.outcome().vise().name()));
    row.add(String.valueOf(planned.given().orElseThrow().count()));
    row.add(CsvReport.down(pairing.margin()));
    row.addAll(place(pairing.place().orElseThrow()));
    row.add(jobs(pairing.held()));
    row.add(buy(planned.boughtMachine(), !planned.boughtVises().isEmpty()));
    row.add(money(planned.cost()));
    return row;
  }

  private static List<String> row(CellPlan plan, CellPlan.Row planned, CellSet set, int at) {
    SetOutcome.Stand stand = set.row().stands().get(at);
    boolean isMachine = at == 0 && planned.boughtMachine();
    boolean isVise = plan.isBought(planned, stand.vise());
    List<String> row = new ArrayList<>(HEADER.size() + 1);
    row.add(PlainText.harmless(plan.machine(planned).name()));
    row.add(PlainText.harmless(stand.vise().name()));
    row.add("1");
    row.add(CsvReport.down(stand.place().margin()));
    row.addAll(place(stand.place()));
    row.add(jobs(set.held().get(at)));
    row.add(buy(isMachine, isVise));
    row.add(
        money((isMachine ? planned.machineCost() : 0) + (isVise ? plan.price(stand.vise()) : 0)));
    row.add(String.valueOf(at + 1));
    return row;
  }

  private static List<String> place(Recommendation place) {
    return List.of(
        CsvReport.up(place.openings().lo()),
        CsvReport.down(place.openings().hi()),
        place.handleTo().word(),
        Figures.millimetres(place.x(), Rounding.NEAREST),
        Figures.millimetres(place.y(), Rounding.NEAREST),
        PlainText.harmless(place.mount()));
  }

  private static String jobs(List<JobOutcome> held) {
    return PlainText.harmless(
        held.stream().map(job -> job.job().name()).collect(Collectors.joining(";")));
  }

  private static String buy(boolean machine, boolean vise) {
    List<String> buy = new ArrayList<>();
    if (machine) {
      buy.add(MACHINE);
    }
    if (vise) {
      buy.add(VISE);
    }
    return String.join(";", buy);
  }

  private static String money(long coins) {
    return coins == 0 ? "" : ShopCell.money(coins);
  }
}
