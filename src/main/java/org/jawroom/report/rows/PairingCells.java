package org.jawroom.report.rows;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.PlainText;

/**
 * One row of {@code pairings.csv}, cell by cell; faults name row and column. Lengths are
 * half-nanometres.
 */
public final class PairingCells {
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
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,9}(?:([.,])[0-9]{1,6})?");

  private static final int LONGEST_SHOWN = 40;

  /** The columns of a file, and its decimal sign once a number has shown it. */
  public static final class Columns {

    /** Those of {@link PairingsCsv} that hold one length in each cell. */
    private static final Set<String> LENGTHS =
        PairingsCsv.columns().stream()
            .filter(name -> name.endsWith("_mm") && !name.equals("table_positions_mm"))
            .collect(Collectors.toUnmodifiableSet());

    private final int count;
    private final Map<String, Integer> places;
    private char decimal;

    private Columns(int count, Map<String, Integer> places) {
      this.count = count;
      this.places = places;
    }

    /** In the order of the file; without those that have no name or another's. */
    public List<String> names() {
      return List.copyOf(places.keySet());
    }

    public boolean has(String column) {
      return places.containsKey(column);
    }

    /** Whether each cell of the column is a length or blank. */
    public static boolean isLength(String column) {
      return LENGTHS.contains(column);
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

  PairingCells(Columns columns, CSVRecord cells) throws UnreadablePairings {
    this.columns = columns;
    this.cells = cells;
    if (cells.size() != columns.count) {
      throw new UnreadablePairings(
          "row "
              + cells.getRecordNumber()
              + " has "
              + cells.size()
              + " cells, but the header has "
              + columns.count);
    }
  }

  /** The row number in the file. */
  public long number() {
    return cells.getRecordNumber();
  }

  static Columns columns(CSVRecord header) throws UnreadablePairings {
    Map<String, Integer> places = new LinkedHashMap<>();
    Set<String> unclear = new HashSet<>(Set.of(""));
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i);
      if (places.putIfAbsent(name, i) != null) {
        if (PairingsCsv.columns().contains(name)) {
          throw new UnreadablePairings("it has the column " + name + " twice");
        }
        unclear.add(name);
      }
    }
    places.keySet().removeAll(unclear);
    List<String> lacking = READ.stream().filter(name -> !places.containsKey(name)).toList();
    if (!lacking.isEmpty()) {
      throw new UnreadablePairings(
          "it has no column" + (lacking.size() == 1 ? " " : "s ") + String.join(", ", lacking));
    }
    return new Columns(header.size(), places);
  }

  /** The columns that a comparison uses. */
  public PairingRow row() throws UnreadablePairings {
    String missing = text("missing");
    return new PairingRow(
        filled("machine"),
        filled("vise"),
        verdict(),
        millimetres("margin_mm"),
        millimetres("best_margin_mm"),
        limiting(),
        usable(),
        settable(),
        missing.isEmpty() ? List.of() : List.of(missing.split(";")));
  }

  public Verdict verdict() throws UnreadablePairings {
    return oneOf("verdict", Verdict.values(), Verdict::code);
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

  /** The length in a column of millimetres; empty if the cell is blank. */
  public OptionalLong millimetres(String column) throws UnreadablePairings {
    Optional<BigDecimal> number = number(column, "millimetres");
    return number.isPresent()
        ? OptionalLong.of(number.get().multiply(BigDecimal.valueOf(Length.MM)).longValueExact())
        : OptionalLong.empty();
  }

  /** The mass in a column of kilograms; empty if the cell is blank. */
  public Optional<BigDecimal> kilograms(String column) throws UnreadablePairings {
    return number(column, "kilograms");
  }

  private Optional<BigDecimal> number(String column, String units) throws UnreadablePairings {
    String text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.matches()) {
      throw fault(column, "is no number of " + units);
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
    return Optional.of(new BigDecimal(text.replace(',', '.')));
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

  /** A text that must not be blank. */
  public String filled(String column) throws UnreadablePairings {
    if (text(column).isEmpty()) {
      throw fault(column, "is blank");
    }
    return text(column);
  }

  /** The cell as it stands in the file; the file must have the column. */
  public String text(String column) {
    return cells.get(columns.places.get(column));
  }

  /** A fault of that cell, whose text it shows. */
  public UnreadablePairings fault(String column, String why) {
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
