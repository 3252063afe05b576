package org.jawroom.app.run;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jawroom.advice.Advice;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.input.ReportFile;
import org.jawroom.app.output.Progress;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.compare.ComparedSide;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.rows.PairingRows;
import org.jawroom.report.rows.UnreadablePairings;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;

/**
 * One side of a comparison: an existing report, or tables to solve.
 *
 * @param path as given by the user
 * @param pairings of a report those read; of tables those solved, once they are
 * @param reading the result of reading the tables; empty for a report
 */
public record CompareSide(Path path, ComparedSide pairings, Optional<Reading> reading) {

  /**
   * Reads the input without solving it. A folder that contains {@code pairings.csv} is a report,
   * and so is such a file.
   *
   * @param settings override those of tables; a report is compared as it is
   * @param err receives a line for each ignored file or sheet
   */
  public static CompareSide read(Path path, Map<String, String> settings, PrintWriter err)
      throws UnreadableInput, IOException {
    Path file = ReportFile.in(path);
    boolean named = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    return named && Files.isRegularFile(file)
        ? new CompareSide(path, rows(file), Optional.empty())
        : new CompareSide(path, new ComparedSide(), Optional.of(Input.read(path, settings, err)));
  }

  private static ComparedSide rows(Path file) throws UnreadableInput, IOException {
    ComparedSide side = new ComparedSide();
    ReportFile.read(file, columns -> cells -> side.add(cells.row(), cells.number()));
    return side;
  }

  /** Whether its tables have faults. */
  public boolean isRefused() {
    return reading.isPresent() && shop().isEmpty();
  }

  /** The unit for people in this shop; empty for a report. */
  public Optional<PeopleUnit> unit() {
    return reading.map(PeopleUnits::ofShop);
  }

  /**
   * The pairings, solved by this call if they come from tables. Call it once, and only without
   * faults.
   */
  public ComparedSide pairings(int threads, Progress progress) throws UnreadableInput, IOException {
    if (reading.isPresent()) {
      long[] row = {1};
      Solving.stream(shop().orElseThrow(), threads, progress, some -> add(some, row));
    }
    return pairings;
  }

  private void add(List<Outcome> some, long[] row) throws IOException {
    try {
      PairingRows.of(
          some.stream().map(Advice::bare).toList(),
          (pairing, number) -> pairings.add(pairing, ++row[0]));
    } catch (UnreadablePairings ours) {
      throw new IllegalStateException("our own CSV could not be parsed", ours);
    }
  }

  /** Refuses duplicate pairings; call it when all pairings have been compared. */
  public void refuseTwins() throws UnreadableInput {
    try {
      pairings.refuseTwins();
    } catch (UnreadablePairings alike) {
      throw reading.isEmpty()
          ? ReportFile.refusal(ReportFile.in(path), alike)
          : new UnreadableInput(path + " cannot be compared: " + alike.getMessage(), alike);
    }
  }

  /** The name of this side for a heading. */
  public String heading() {
    return path + (reading.isEmpty() ? " (a report, as it stands)" : " (tables, solved now)");
  }

  /** Whether this is a report in a folder of tables, which may have changed since. */
  public boolean liesAmongTables() {
    return reading.isEmpty() && Files.exists(path.resolve("machines.csv"));
  }

  private Optional<Shop> shop() {
    return reading.flatMap(Reading::shop);
  }
}
