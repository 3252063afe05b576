package org.jawroom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jawroom.report.PairingRow;
import org.jawroom.report.PairingRows;
import org.jawroom.report.PairingsCsv;
import org.jawroom.report.PeopleUnit;
import org.jawroom.report.UnreadablePairings;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.FileRead;
import org.jawroom.tables.source.UnreadableInput;

/**
 * One of the two that are compared: a report as it stands, or tables to be solved.
 *
 * @param path as it was given
 * @param report the rows of a report; empty for tables
 * @param reading what came of the tables; empty for a report
 */
record CompareSide(Path path, Optional<List<PairingRow>> report, Optional<Reading> reading) {

  /**
   * Reads, but does not yet solve. A folder that holds {@code pairings.csv} is a report, and so is
   * such a file.
   *
   * @param settings win over those of tables; a report stays as it is
   */
  static CompareSide read(Path path, Map<String, String> settings) throws UnreadableInput {
    Path file = Files.isDirectory(path) ? path.resolve(PairingsCsv.FILE) : path;
    boolean named = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    return named && Files.isRegularFile(file)
        ? new CompareSide(path, Optional.of(rows(file)), Optional.empty())
        : new CompareSide(path, Optional.empty(), Optional.of(Input.read(path, settings)));
  }

  private static List<PairingRow> rows(Path file) throws UnreadableInput {
    try {
      return PairingRows.read(FileRead.bytes(file));
    } catch (UnreadablePairings wrong) {
      throw new UnreadableInput(file + " is no report of jawroom's: " + wrong.getMessage(), wrong);
    }
  }

  /** Whether faults were found in its tables. */
  boolean isRefused() {
    return reading.isPresent() && shop().isEmpty();
  }

  /** What people of this shop read; empty for a report. */
  Optional<PeopleUnit> unit() {
    return reading.map(PeopleUnits::ofShop);
  }

  /** The pairings, solved now if need be; to be asked only where nothing was refused. */
  List<PairingRow> pairings(int threads, Progress progress) throws UnreadableInput {
    if (report.isPresent()) {
      return report.get();
    }
    try {
      return PairingRows.of(Solving.all(shop().orElseThrow(), threads, progress));
    } catch (UnreadablePairings alike) {
      throw new UnreadableInput(path + " cannot be compared: " + alike.getMessage(), alike);
    }
  }

  /** For a heading. */
  String told() {
    return path + (report.isPresent() ? " (a report, as it stands)" : " (tables, solved now)");
  }

  /** Whether this is a report that lies among tables, which may have changed since. */
  boolean liesAmongTables() {
    return report.isPresent() && Files.exists(path.resolve("machines.csv"));
  }

  private Optional<Shop> shop() {
    return reading.flatMap(Reading::shop);
  }
}
