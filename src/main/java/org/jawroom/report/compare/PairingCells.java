package org.jawroom.report.compare;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PlainText;

/** One row of {@code pairings.csv}, cell by cell; faults name row and column. */
final class PairingCells {
  private static final List<String> READ =
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
          "missing");

  /** Reports of earlier versions lack it. */
  private static final String SETTABLE = "settable";

  /**
   * Accepts more decimals than this program writes, so that reading rounds nothing; no exponents,
   * no thousands separators. Spreadsheets write a decimal comma in some locales.
   */
  private static final Pattern MILLIMETRES = Pattern.compile("-?[0-9]{1,9}(?:([.,])[0-9]{1,6})?");

  private static final int LONGEST_SHOWN = 40;

  /** The positions of the columns read, and the file's decimal sign once a number has shown it. */
  static final class Columns {
    private final int count;
    private final Map<String, Integer> places;
    private char decimal;

    Columns(int count, Map<String, Integer> places) {
      this.count = count;
      this.places = places;
    }

    /** Whether earlier numbers have another decimal sign. */
    boolean isOther(char sign) {
      char before = decimal == 0 ? sign : decimal;
      decimal = before;
      return before != sign;
    }
  }

  private final Columns columns;
  private final CSVRecord cells;

  PairingCells(Columns columns, CSVRecord cells) {
    this.columns = columns;
    this.cells = cells;
  }

  static Columns columns(CSVRecord header) throws UnreadablePairings {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      boolean isRead = READ.contains(header.get(i)) || header.get(i).equals(SETTABLE);
      if (isRead && places.put(header.get(i), i) != null) {
        throw new UnreadablePairings("it has the column " + header.get(i) + " twice");
      }
    }
    List<String> lacking = READ.stream().filter(name -> !places.containsKey(name)).toList();
    if (!lacking.isEmpty()) {
      throw new UnreadablePairings(
          "it has no column" + (lacking.size() == 1 ? " " : "s ") + String.join(", ", lacking));
    }
    return new Columns(header.size(), places);
  }

  PairingRow row() throws UnreadablePairings {
    if (cells.size() != columns.count) {
      throw new UnreadablePairings(
          "row "
              + cells.getRecordNumber()
              + " has "
              + cells.size()
              + " cells, but the header has "
              + columns.count);
    }
    String missing = text("missing");
    return new PairingRow(
        filled("machine"),
        filled("vise"),
        oneOf("verdict", Verdict.values(), Verdict::code),
        millimetres("margin_mm"),
        millimetres("best_margin_mm"),
        limiting(),
        usable(),
        settable(),
        missing.isEmpty() ? List.of() : List.of(missing.split(";")));
  }

  private Optional<PairingRow.Limiting> limiting() throws UnreadablePairings {
    if (text("limited_by").isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PairingRow.Limiting(
            text("limited_by"),
            filled("limiting_part"),
            oneOf("limiting_situation", Situation.values(), Situation::word),
            oneOf("limiting_opening", JawEnd.values(), JawEnd::word)));
  }

  private Optional<PairingRow.Usable> usable() throws UnreadablePairings {
    OptionalLong from = millimetres("usable_from_mm");
    OptionalLong to = millimetres("usable_to_mm");
    if (from.isPresent() != to.isPresent()) {
      throw fault(
          from.isPresent() ? "usable_to_mm" : "usable_from_mm",
          "is blank, but its other end is not");
    }
    return from.isPresent()
        ? Optional.of(new PairingRow.Usable(from.getAsLong(), to.getAsLong()))
        : Optional.empty();
  }

  private Optional<Boolean> settable() throws UnreadablePairings {
    if (!columns.places.containsKey(SETTABLE) || text(SETTABLE).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(oneOf(SETTABLE, new String[] {"yes", "no"}, word -> word).equals("yes"));
  }

  private OptionalLong millimetres(String column) throws UnreadablePairings {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalLong.empty();
    }
    Matcher number = MILLIMETRES.matcher(text);
    if (!number.matches()) {
      throw fault(column, "is no number of millimetres");
    }
    // A comma in a file with decimal points could be a thousands separator.
    if (number.group(1) != null && columns.isOther(number.group(1).charAt(0))) {
      throw fault(
          column,
          "has a decimal "
              + (number.group(1).equals(",")
                  ? "comma, but numbers before it a point"
                  : "point, but numbers before it a comma")
              + "; write all alike");
    }
    return OptionalLong.of(
        new BigDecimal(text.replace(',', '.'))
            .multiply(BigDecimal.valueOf(Length.MM))
            .longValueExact());
  }

  private <T> T oneOf(String column, T[] values, Function<T, String> word)
      throws UnreadablePairings {
    String text = text(column);
    Optional<T> found =
        Arrays.stream(values).filter(one -> word.apply(one).equals(text)).findFirst();
    return found.orElseThrow(
        () ->
            fault(
                column,
                "is none of " + String.join(", ", Arrays.stream(values).map(word).toList())));
  }

  private String filled(String column) throws UnreadablePairings {
    if (text(column).isEmpty()) {
      throw fault(column, "is blank");
    }
    return text(column);
  }

  private String text(String column) {
    return cells.get(columns.places.get(column));
  }

  private UnreadablePairings fault(String column, String why) {
    String text = text(column);
    String shown = text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    return new UnreadablePairings(
        "row "
            + cells.getRecordNumber()
            + ", column "
            + column
            + ": "
            + (shown.isEmpty() ? "" : "\"" + PlainText.forTerminal(shown) + "\" ")
            + why);
  }
}
