package org.jawroom.report.csv;

import static org.jawroom.report.format.Rounding.DOWN;
import static org.jawroom.report.format.Rounding.NEAREST;
import static org.jawroom.report.format.Rounding.UP;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.report.tally.PerTable;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Measurand;

/** {@code pairings.csv}: one row for each pairing, in codes and millimetres. */
public final class PairingsCsv {

  /** The name of the file. */
  public static final String FILE = "pairings.csv";

  private static final List<String> HEADER =
      List.of(
          "machine",
          "vise",
          "verdict",
          "margin_mm",
          "best_margin_mm",
          "limited_by",
          "limiting_part",
          "limiting_axis",
          "limiting_situation",
          "limiting_opening",
          "required_mm",
          "tolerance_mm",
          "handle_to",
          "x_mm",
          "y_mm",
          "mount",
          "slots",
          "usable_from_mm",
          "usable_to_mm",
          "reach_shortfall_mm",
          "overhang_mm",
          "play_left_mm",
          "play_right_mm",
          "play_front_mm",
          "play_rear_mm",
          "nose_not_below_mm",
          "room_over_jaws_mm",
          "load_left_kg",
          "missing",
          "per_table",
          "table_positions_mm",
          "settable",
          "bolt_thread",
          "hand_mm",
          "margin_at_worst_mm",
          "margin_at_best_mm",
          "in_doubt",
          "checked");

  public static final ReportKind KIND = ReportMarks.csv(HEADER, PairingsCsv::isRow);

  /** The number of columns in the first version of the file. */
  private static final int FEWEST = 29;

  /** Columns from limited_by to tolerance_mm. */
  private static final int LIMIT_COLUMNS = 7;

  /** Columns from handle_to to slots. */
  private static final int PLACE_COLUMNS = 5;

  private static final int PLAY_COLUMNS = 4;

  private PairingsCsv() {}

  /** The names of the columns. */
  public static List<String> columns() {
    return HEADER;
  }

  /** The header row, UTF-8. */
  public static byte[] header() {
    CsvRows rows = new CsvRows(1);
    HEADER.forEach(rows::text);
    rows.end();
    return rows.bytes();
  }

  /** The rows of pairings in the order given, without header row; UTF-8. */
  public static byte[] rows(List<Advice> advice) {
    CsvRows rows = new CsvRows(advice.size());
    for (Advice pairing : advice) {
      row(rows, pairing);
    }
    return rows.bytes();
  }

  /** Writes header and rows in the order given; does not close {@code out}. */
  public static void write(List<Advice> advice, OutputStream out) throws IOException {
    out.write(header());
    out.write(rows(advice));
  }

  private static boolean isRow(List<String> cells) {
    return cells.size() >= FEWEST
        && Arrays.stream(Verdict.values()).anyMatch(one -> one.code().equals(cells.get(2)));
  }

  private static void row(CsvRows row, Advice pairing) {
    Outcome outcome = pairing.outcome();
    Recommendation place = outcome.recommended().orElse(null);
    Limit limit = place == null ? null : place.limit().orElse(null);
    row.text(PlainText.harmless(outcome.machine().name()));
    row.text(PlainText.harmless(outcome.vise().name()));
    row.code(outcome.verdict().code());
    row.length(outcome.margin(), DOWN);
    row.length(outcome.bestMargin(), DOWN);
    limit(row, limit);
    place(row, place);
    Interval open = outcome.usableOpening().orElse(null);
    row.length(open == null ? OptionalLong.empty() : OptionalLong.of(open.lo()), UP);
    row.length(open == null ? OptionalLong.empty() : OptionalLong.of(open.hi()), DOWN);
    row.length(place == null ? OptionalLong.empty() : OptionalLong.of(place.reachShortfall()), UP);
    row.length(place == null ? OptionalLong.empty() : place.overhang(), UP);
    play(row, place == null ? null : place.play().orElse(null));
    row.length(place == null ? OptionalLong.empty() : place.noseNotBelow(), UP);
    row.length(outcome.roomOverJaws(), DOWN);
    row.kilograms(outcome.loadLeft());
    row.text(CsvRows.joined(outcome.missing(), Column::path));
    row.text(pairing.sideBySide().map(many -> String.valueOf(many.count())).orElse(""));
    row.text(PerTable.positions(pairing, ";", position -> Figures.millimetres(position, NEAREST)));
    row.code(place == null ? "" : settable(place));
    row.code(place == null ? "" : ThreadWords.of(place.thread()));
    row.length(CaveatWords.handGap(outcome), DOWN);
    row.length(outcome.bounds().atWorst(), DOWN);
    row.length(outcome.bounds().atBest(), DOWN);
    row.text(PlainText.harmless(CsvRows.joined(outcome.inDoubt(), Measurand::path)));
    row.text(PlainText.harmless(outcome.checked().orElse("")));
    row.end();
  }

  private static String settable(Recommendation place) {
    if (place.play().isEmpty()) {
      return "";
    }
    return place.settable() ? "yes" : "no";
  }

  private static void limit(CsvRows row, Limit limit) {
    if (limit == null) {
      row.empty(LIMIT_COLUMNS);
      return;
    }
    row.text(PlainText.harmless(limit.guard().name()));
    row.text(PlainText.harmless(limit.part().name()));
    row.code(limit.axis().letter());
    row.code(limit.situation().word());
    row.code(limit.opening().word());
    row.length(limit.required(), UP);
    row.length(limit.tolerance(), UP);
  }

  private static void place(CsvRows row, Recommendation place) {
    if (place == null) {
      row.empty(PLACE_COLUMNS);
      return;
    }
    row.code(place.handleTo().word());
    row.length(place.x(), NEAREST);
    row.length(place.y(), NEAREST);
    row.text(PlainText.harmless(place.mount()));
    row.code(slots(place.slots()));
  }

  private static String slots(List<Integer> slots) {
    StringBuilder text = new StringBuilder();
    for (int slot : slots) {
      text.append(text.isEmpty() ? "" : ";").append(slot);
    }
    return text.toString();
  }

  private static void play(CsvRows row, Play play) {
    if (play == null) {
      row.empty(PLAY_COLUMNS);
      return;
    }
    row.length(play.left(), DOWN);
    row.length(play.right(), DOWN);
    row.length(play.front(), DOWN);
    row.length(play.rear(), DOWN);
  }
}
