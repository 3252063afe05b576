package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Play;
import org.jawroom.placement.Recommendation;
import org.jawroom.shop.Column;

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
          "table_positions_mm");

  /** Columns from limited_by to tolerance_mm. */
  private static final int LIMIT_COLUMNS = 7;

  /** Columns from handle_to to slots. */
  private static final int PLACE_COLUMNS = 5;

  private static final int PLAY_COLUMNS = 4;

  private PairingsCsv() {}

  /** Writes all rows in the order given; leaves {@code out} open. */
  public static void write(List<Advice> advice, OutputStream out) throws IOException {
    CsvTable table = new CsvTable(out, HEADER);
    for (Advice pairing : advice) {
      table.row(row(pairing));
    }
    table.finish();
  }

  private static List<String> row(Advice pairing) {
    Outcome outcome = pairing.outcome();
    List<String> row = new ArrayList<>(HEADER.size());
    Recommendation place = outcome.recommended().orElse(null);
    Limit limit = outcome.recommended().flatMap(Recommendation::limit).orElse(null);
    row.add(PlainText.harmless(outcome.machine().name()));
    row.add(PlainText.harmless(outcome.vise().name()));
    row.add(outcome.verdict().code());
    row.add(limit == null ? "" : CsvTable.down(limit.margin()));
    row.add(CsvTable.down(outcome.bestMargin()));
    addLimit(row, limit);
    addPlace(row, place);
    row.add(outcome.usableOpening().map(Interval::lo).map(CsvTable::up).orElse(""));
    row.add(outcome.usableOpening().map(Interval::hi).map(CsvTable::down).orElse(""));
    row.add(place == null ? "" : CsvTable.up(place.reachShortfall()));
    row.add(place == null ? "" : CsvTable.up(place.overhang()));
    addPlay(row, outcome.recommended().flatMap(Recommendation::play).orElse(null));
    row.add(place == null ? "" : CsvTable.up(place.noseNotBelow()));
    row.add(CsvTable.down(outcome.roomOverJaws()));
    row.add(outcome.loadLeft().map(Figures::kilograms).orElse(""));
    row.add(outcome.missing().stream().map(Column::path).collect(Collectors.joining(";")));
    row.add(pairing.sideBySide().map(many -> String.valueOf(many.count())).orElse(""));
    row.add(
        PerTable.positions(
            pairing, ";", position -> Figures.millimetres(position, Rounding.NEAREST)));
    return row;
  }

  private static void addLimit(List<String> row, Limit limit) {
    if (limit == null) {
      row.addAll(Collections.nCopies(LIMIT_COLUMNS, ""));
      return;
    }
    row.add(PlainText.harmless(limit.guard()));
    row.add(PlainText.harmless(limit.part()));
    row.add(limit.axis().letter());
    row.add(limit.situation().word());
    row.add(limit.opening().word());
    row.add(CsvTable.up(limit.required()));
    row.add(CsvTable.up(limit.tolerance()));
  }

  private static void addPlace(List<String> row, Recommendation place) {
    if (place == null) {
      row.addAll(Collections.nCopies(PLACE_COLUMNS, ""));
      return;
    }
    row.add(place.handleTo().word());
    row.add(Figures.millimetres(place.x(), Rounding.NEAREST));
    row.add(Figures.millimetres(place.y(), Rounding.NEAREST));
    row.add(PlainText.harmless(place.mount()));
    row.add(place.slots().stream().map(String::valueOf).collect(Collectors.joining(";")));
  }

  private static void addPlay(List<String> row, Play play) {
    if (play == null) {
      row.addAll(Collections.nCopies(PLAY_COLUMNS, ""));
      return;
    }
    row.add(CsvTable.down(play.left()));
    row.add(CsvTable.down(play.right()));
    row.add(CsvTable.down(play.front()));
    row.add(CsvTable.down(play.rear()));
  }
}
