package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Play;
import org.jawroom.placement.Recommendation;
import org.jawroom.shop.Column;

/**
 * {@code pairings.csv}: one row for each pairing, in codes and millimetres. UTF-8 without a byte order
 * mark, RFC 4180 with CRLF. A cell that does not apply is empty.
 */
public final class PairingsCsv {

  /** The name of the file. */
  public static final String FILE = "pairings.csv";

  private static final String[] HEADER = {
    "machine", "vise", "verdict", "margin_mm", "best_margin_mm", "limited_by", "limiting_part",
    "limiting_axis", "limiting_situation", "limiting_opening", "required_mm", "tolerance_mm", "handle_to",
    "x_mm", "y_mm", "mount", "slots", "usable_from_mm", "usable_to_mm", "reach_shortfall_mm",
    "overhang_mm", "play_left_mm", "play_right_mm", "play_front_mm", "play_rear_mm", "nose_not_below_mm",
    "room_over_jaws_mm", "load_left_kg", "missing"
  };

  /** Columns from limited_by to tolerance_mm. */
  private static final int LIMIT_COLUMNS = 7;

  /** Columns from handle_to to slots. */
  private static final int PLACE_COLUMNS = 5;

  private static final int PLAY_COLUMNS = 4;

  private PairingsCsv() {}

  /** Writes all rows in the order given; leaves {@code out} open. */
  public static void write(List<Outcome> outcomes, OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
    printer.printRecord((Object[]) HEADER);
    for (Outcome outcome : outcomes) {
      printer.printRecord(row(outcome));
    }
    printer.flush();
  }

  private static List<String> row(Outcome outcome) {
    List<String> row = new ArrayList<>(HEADER.length);
    Recommendation place = outcome.recommended().orElse(null);
    Limit limit = outcome.recommended().flatMap(Recommendation::limit).orElse(null);
    row.add(PlainText.harmless(outcome.machine().name()));
    row.add(PlainText.harmless(outcome.vise().name()));
    row.add(outcome.verdict().code());
    row.add(limit == null ? "" : down(limit.margin()));
    row.add(down(outcome.bestMargin()));
    addLimit(row, limit);
    addPlace(row, place);
    row.add(outcome.usableOpening().map(Interval::lo).map(PairingsCsv::up).orElse(""));
    row.add(outcome.usableOpening().map(Interval::hi).map(PairingsCsv::down).orElse(""));
    row.add(place == null ? "" : up(place.reachShortfall()));
    row.add(place == null ? "" : up(place.overhang()));
    addPlay(row, outcome.recommended().flatMap(Recommendation::play).orElse(null));
    row.add(place == null ? "" : up(place.noseNotBelow()));
    row.add(down(outcome.roomOverJaws()));
    row.add(outcome.loadLeft().map(Figures::kilograms).orElse(""));
    row.add(outcome.missing().stream().map(Column::path).collect(Collectors.joining(";")));
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
    row.add(up(limit.required()));
    row.add(up(limit.tolerance()));
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
    row.add(down(play.left()));
    row.add(down(play.right()));
    row.add(down(play.front()));
    row.add(down(play.rear()));
  }

  private static String down(long length) {
    return Figures.millimetres(length, Rounding.DOWN);
  }

  private static String down(OptionalLong length) {
    return length.isPresent() ? down(length.getAsLong()) : "";
  }

  private static String up(long length) {
    return Figures.millimetres(length, Rounding.UP);
  }

  private static String up(OptionalLong length) {
    return length.isPresent() ? up(length.getAsLong()) : "";
  }
}
