package org.jawroom.report.survey.count;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.rows.PairingRows;
import org.jawroom.report.rows.UnreadablePairings;

/** A report with pairings drawn by lot, many of them alike, as plain rows and as the file. */
final class RandomReport {
  static final List<String> HEADER =
      List.of(
          "machine",
          "vise",
          "verdict",
          "margin_mm",
          "best_margin_mm",
          "limited_by",
          "limiting_part",
          "limiting_situation",
          "limiting_opening",
          "usable_from_mm",
          "usable_to_mm",
          "room_over_jaws_mm",
          "load_left_kg",
          "missing",
          "in_doubt",
          "shed");

  /** Names that a library might take for nothing. */
  private static final List<String> MACHINES =
      List.of("NA", "null", "mill", "*", "-", "knee mill", "N/A", "é mill");

  private static final List<String> GUARDS = List.of("door", "sill", "rear cover");
  private static final List<String> PARTS = List.of("handle", "base");

  /** The cells of each row, as {@link #HEADER} has them. */
  final List<List<String>> rows = new ArrayList<>();

  RandomReport(Random lot, int vises) {
    for (String machine : MACHINES) {
      for (int vise = 0; vise < vises; vise++) {
        if (lot.nextInt(5) > 0) {
          rows.add(row(lot, machine, "vise " + vise));
        }
      }
    }
  }

  private static List<String> row(Random lot, String machine, String vise) {
    Verdict verdict = Verdict.values()[lot.nextInt(Verdict.values().length)];
    boolean blank = lot.nextInt(4) == 0;
    // Few values about the comfort of 3 mm, so that many are equal to it or to a bound.
    String margin = blank ? "" : BigDecimal.valueOf(2990 + lot.nextInt(21), 3).toPlainString();
    if (!blank && lot.nextInt(3) == 0) {
      margin = BigDecimal.valueOf(lot.nextInt(40_000) - 20_000, 3).toPlainString();
    }
    boolean limited = !blank && lot.nextInt(5) > 0;
    return List.of(
        machine,
        vise,
        verdict.code(),
        margin,
        "",
        limited ? GUARDS.get(lot.nextInt(GUARDS.size())) : "",
        limited ? PARTS.get(lot.nextInt(PARTS.size())) : "",
        limited ? "cutting" : "",
        limited ? "any" : "",
        "",
        "",
        lot.nextInt(8) == 0 ? "0.000" : lot.nextInt(8) == 0 ? "" : "0.001",
        lot.nextInt(8) == 0 ? "-0.001" : lot.nextInt(8) == 0 ? "" : "0.000",
        "",
        lot.nextInt(8) == 0 ? "vises.base_width" : "",
        lot.nextInt(3) == 0 ? "" : "shed " + lot.nextInt(3));
  }

  static String cell(List<String> row, String column) {
    return row.get(HEADER.indexOf(column));
  }

  /** In half-nanometres; null for a blank cell. */
  static Long length(List<String> row, String column) {
    String text = cell(row, column);
    return text.isEmpty()
        ? null
        : new BigDecimal(text).multiply(BigDecimal.valueOf(Length.MM)).longValueExact();
  }

  /** As the tables of README and DEVELOPERS have it, cell by cell. */
  static boolean isOfUse(List<String> row) {
    return List.of("fits", "awkward", "limited").contains(cell(row, "verdict"))
        && !cell(row, "room_over_jaws_mm").equals("0.000")
        && !cell(row, "load_left_kg").startsWith("-");
  }

  static boolean isComfortable(List<String> row, long comfort) {
    Long margin = length(row, "margin_mm");
    return isOfUse(row) && margin != null && margin >= comfort && cell(row, "in_doubt").isEmpty();
  }

  String csv() throws IOException {
    StringBuilder text = new StringBuilder();
    CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180);
    printer.printRecord(HEADER);
    printer.printRecords(rows);
    return text.toString();
  }

  SurveySide side(Asked asked) throws IOException, UnreadablePairings {
    SurveyRows[] read = {null};
    PairingRows.readCells(
        new ByteArrayInputStream(csv().getBytes(StandardCharsets.UTF_8)),
        line -> Optional.empty(),
        columns -> {
          read[0] = new SurveyRows(columns, asked);
          return read[0];
        });
    return new SurveySide("report", read[0], asked);
  }
}
