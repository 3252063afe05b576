package org.jawroom.report.plan;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.ShopCell;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;

/**
 * {@code plan.csv}: one row for each machine of the cell, in millimetres; a machine without a vise
 * has empty cells.
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

  static final ReportKind KIND = ReportMarks.csv(HEADER);

  private PlanCsv() {}

  /** Writes all rows in the order of the cell; does not close {@code out}. */
  public static void write(CellPlan plan, OutputStream out) throws IOException {
    CsvReport table = new CsvReport(out, HEADER);
    for (CellPlan.Row row : plan.rows()) {
      table.row(row(plan, row));
    }
    table.finish();
  }

  private static List<String> row(CellPlan plan, CellPlan.Row planned) {
    List<String> row = new ArrayList<>(HEADER.size());
    row.add(PlainText.harmless(plan.machine(planned).name()));
    if (planned.given().isEmpty()) {
      row.addAll(Collections.nCopies(HEADER.size() - 1, ""));
      return row;
    }
    CellPairing pairing = plan.pairing(planned);
    Recommendation place = pairing.place().orElseThrow();
    row.add(PlainText.harmless(pairing.outcome().vise().name()));
    row.add(String.valueOf(planned.given().get().count()));
    row.add(CsvReport.down(pairing.margin()));
    row.add(CsvReport.up(place.openings().lo()));
    row.add(CsvReport.down(place.openings().hi()));
    row.add(place.handleTo().word());
    row.add(Figures.millimetres(place.x(), Rounding.NEAREST));
    row.add(Figures.millimetres(place.y(), Rounding.NEAREST));
    row.add(PlainText.harmless(place.mount()));
    row.add(
        PlainText.harmless(
            pairing.held().stream().map(job -> job.job().name()).collect(Collectors.joining(";"))));
    List<String> buy = new ArrayList<>();
    if (planned.boughtMachine()) {
      buy.add(MACHINE);
    }
    if (planned.boughtVise()) {
      buy.add(VISE);
    }
    row.add(String.join(";", buy));
    row.add(planned.cost() == 0 ? "" : ShopCell.money(planned.cost()));
    return row;
  }
}
