package org.jawroom.tables.row;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.cell.Angles;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.cell.LengthRange;
import org.jawroom.tables.cell.Masses;
import org.jawroom.tables.cell.Numerals;
import org.jawroom.tables.cell.Prices;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.size.KnownAmounts;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.Grid;

/**
 * One row, with a getter for each kind of cell.
 *
 * <p>A getter that finds an invalid cell records a fault, marks the row unsound and returns what it
 * would for a blank; so does a blank cell of a required column. Build nothing from an unsound row.
 * A column with a literal default returns it for a blank cell.
 */
public final class Row {
  private final TableSpec table;
  private final String origin;
  private final Grid.Row row;
  private final Map<String, Integer> places;
  private final Set<String> missing;
  private final Ledger ledger;
  private final Set<String> reported = new LinkedHashSet<>();
  private final LengthCells lengths;
  private final WordCells words;
  private boolean sound = true;

  /**
   * @param places the position of each column of the header
   * @param missing the columns whose absence from the header is already a fault, so that no row
   *     repeats it
   */
  Row(
      TableSpec table,
      String origin,
      Grid.Row row,
      Map<String, Integer> places,
      Set<String> missing,
      Ledger ledger) {
    this.table = table;
    this.origin = origin;
    this.row = row;
    this.places = places;
    this.missing = missing;
    this.ledger = ledger;
    this.lengths = new LengthCells(table, ledger, this::unit);
    this.words = new WordCells(ledger);
  }

  public String origin() {
    return origin;
  }

  public int number() {
    return row.number();
  }

  public boolean isSound() {
    return sound;
  }

  /** The columns read so far in which a bare number other than 0 stands for a length. */
  public Set<String> bareColumns() {
    return lengths.bareColumns();
  }

  /**
   * Records a fault of one cell, without duplicates; the message continues the text found there.
   */
  public void fault(String column, String message) {
    sound = false;
    if (reported.add(column + "\n" + message)) {
      ledger.faults.add(table, origin, number(), column, raw(column), message);
    }
  }

  /** Records a fault of the row as a whole. */
  public void fault(String message) {
    sound = false;
    ledger.faults.add(table, origin, number(), "", "", message);
  }

  /** The text as in the file; empty if blank. */
  public String raw(String column) {
    return raw(spec(column)).map(Cell::text).orElse("");
  }

  public boolean isBlank(String column) {
    return raw(spec(column)).isEmpty();
  }

  /** A name; empty if it is blank or invalid. */
  public Optional<String> name(String column) {
    return read(column, cell -> Names.parse(cell.text()));
  }

  /** Text, empty by default; free text may be a date. */
  public String text(String column) {
    Optional<Cell> date = raw(spec(column)).filter(cell -> cell.kind() == Cell.Kind.DATE);
    if (date.isPresent() && spec(column).kind() == CellKind.TEXT) {
      return date.get().text();
    }
    return CellText.trimmed(freeText(column));
  }

  /** Empty, with a fault, if the text contains forbidden characters. */
  private String freeText(String column) {
    return cell(column)
        .flatMap(cell -> parsed(column, () -> Names.freeText(cell.text())))
        .orElse("");
  }

  /** One of the column's words, in its standard spelling. */
  public Optional<String> word(String column) {
    ColumnSpec spec = spec(column);
    Optional<String> word =
        cell(column).flatMap(cell -> parsed(column, () -> words.word(spec, cell)));
    return word.isPresent() || !isBlank(column) ? word : spec.standard();
  }

  /** Whether the word of a column is this one. */
  public boolean says(String column, String word) {
    return word(column).filter(word::equals).isPresent();
  }

  /** A length; empty if blank. */
  public OptionalLong length(String column) {
    ColumnSpec spec = spec(column);
    Optional<Long> length = read(column, cell -> lengths.length(spec, cell));
    if (length.isEmpty() && isBlank(column) && spec.standard().isPresent()) {
      length =
          read(
              column,
              spec,
              Cell.standard(spec.standard().get()),
              cell -> lengths.length(spec, cell));
    }
    return length.map(OptionalLong::of).orElse(OptionalLong.empty());
  }

  /** A length that may be unknown, or {@code none} where the column allows it. */
  public Dimension dimension(String column) {
    if (spec(column).noneAllowed() && CellText.trimmed(raw(column)).equalsIgnoreCase("none")) {
      return Dimension.NONE;
    }
    ColumnSpec spec = spec(column);
    if (spec.takesRanges() && LengthRange.isRange(raw(column))) {
      return read(column, cell -> lengths.range(spec, cell)).orElse(Dimension.BLANK);
    }
    OptionalLong length = length(column);
    return length.isPresent() ? Dimension.of(length.getAsLong()) : Dimension.BLANK;
  }

  /** Lengths separated by {@code ;}; empty if blank. */
  public List<Long> lengths(String column) {
    ColumnSpec spec = spec(column);
    return read(column, cell -> lengths.lengths(spec, cell)).orElse(List.of());
  }

  /** Angles in degrees, each below 90 either way; see {@link Angles}. */
  public Set<BigDecimal> angles(String column) {
    return read(column, cell -> Angles.parse(cell.text(), ledger.sign().isCommaIn(cell)))
        .orElse(Set.of());
  }

  public OptionalInt count(String column) {
    ColumnSpec spec = spec(column);
    Optional<Integer> count =
        read(
            column,
            cell ->
                Numerals.count(
                    ledger.sign().unambiguous(cell, false), ledger.sign().isCommaIn(cell)));
    if (count.isEmpty() && isBlank(column) && spec.standard().isPresent()) {
      return OptionalInt.of(Integer.parseInt(spec.standard().get()));
    }
    return count.map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  /** A mass in kg. */
  public Optional<BigDecimal> mass(String column) {
    return read(
        column,
        cell ->
            KnownAmounts.checked(
                table,
                column,
                Masses.parse(
                    ledger.sign().unambiguous(cell, false), ledger.sign().isCommaIn(cell))));
  }

  public Optional<BigDecimal> number(String column) {
    return read(
        column,
        cell ->
            KnownAmounts.checked(
                table,
                column,
                Numerals.number(
                    ledger.sign().unambiguous(cell, false), ledger.sign().isCommaIn(cell))));
  }

  /** A price, above 0, in whole hundredths. */
  public Optional<BigDecimal> price(String column) {
    return read(
        column,
        cell -> Prices.parse(ledger.sign().unambiguous(cell, true), ledger.sign().isCommaIn(cell)));
  }

  /** Turns; all of them if blank. */
  public Set<Orientation> turns(String column) {
    Set<Orientation> turns = EnumSet.noneOf(Orientation.class);
    List<String> known = Arrays.stream(Orientation.values()).map(Orientation::word).toList();
    String whole = CellText.trimmed(raw(column));
    for (String written : cell(column).map(Cell::text).orElse("").split("[\\s\\p{Zs},;]+")) {
      if (!written.isEmpty()) {
        boolean alone = written.equals(whole);
        parsed(column, () -> words.known(written, known, alone))
            .ifPresent(word -> turns.add(Orientation.values()[known.indexOf(word)]));
      }
    }
    return isBlank(column) ? EnumSet.allOf(Orientation.class) : turns;
  }

  /** The items between {@code separators}, a set of characters, trimmed and without blank ones. */
  public List<String> list(String column, String separators) {
    List<String> items = new ArrayList<>();
    for (String item : freeText(column).split("[" + separators + "]")) {
      String trimmed = CellText.trimmed(item);
      if (trimmed.equalsIgnoreCase("none")) {
        fault(column, "is not allowed here; leave the cell blank");
      } else if (!trimmed.isEmpty()) {
        items.add(trimmed);
      }
    }
    return items;
  }

  /** The row's own unit, or else the setting's. */
  public Unit unit() {
    return cell("unit").isEmpty() ? ledger.unit : writtenUnit();
  }

  private Unit writtenUnit() {
    Optional<Unit> unit = Unit.named(raw("unit"));
    if (unit.isEmpty()) {
      fault("unit", "is not a unit of length; write mm, cm, m or in");
    }
    return unit.orElse(ledger.unit);
  }

  /** Parses one cell that is not blank. */
  private interface Reader<T> {
    T read(Cell cell) throws BadCell;
  }

  private <T> Optional<T> read(String column, Reader<T> reader) {
    return cell(column).flatMap(cell -> read(column, spec(column), cell, reader));
  }

  private <T> Optional<T> read(String column, ColumnSpec spec, Cell cell, Reader<T> reader) {
    if (cell.kind() == Cell.Kind.TRUTH) {
      fault(column, "is a truth value; what belongs here is " + spec.kind().words());
      return Optional.empty();
    }
    if (showsOtherwise(column, spec, cell)) {
      return Optional.empty();
    }
    return parsed(column, () -> reader.read(cell));
  }

  /** Parses what is no blank. */
  private interface Parser<T> {
    T parse() throws BadCell;
  }

  /** What {@code parser} returns; empty, with a fault of the column, if it refuses. */
  private <T> Optional<T> parsed(String column, Parser<T> parser) {
    try {
      return Optional.of(parser.parse());
    } catch (BadCell e) {
      fault(column, e.getMessage());
      return Optional.empty();
    }
  }

  /** Whether the cell displays another number than it holds, which is a fault. */
  private boolean showsOtherwise(String column, ColumnSpec spec, Cell cell) {
    if (cell.look().isPlain()) {
      return false;
    }
    Unit unit = spec.kind().isLength() ? unit() : ledger.unit;
    String trouble = cell.look().trouble(spec.kind(), unit);
    if (!trouble.isEmpty()) {
      fault(column, trouble);
    }
    return !trouble.isEmpty();
  }

  /**
   * The cell if it is neither blank nor unreadable; records unreadable cells, and blanks in
   * required columns, as faults.
   */
  public Optional<Cell> cell(String column) {
    ColumnSpec spec = spec(column);
    Optional<Cell> cell = raw(spec);
    if (cell.isEmpty() && spec.isRequired()) {
      sound = false;
      if (!missing.contains(column)) {
        fault(column, "is blank; what belongs here is " + spec.kind().words());
      }
    }
    if (cell.isPresent() && !cell.get().trouble().isEmpty()) {
      fault(column, cell.get().trouble());
      return Optional.empty();
    }
    return cell;
  }

  private Optional<Cell> raw(ColumnSpec spec) {
    return Optional.ofNullable(places.get(spec.name())).map(row.cells()::get);
  }

  private ColumnSpec spec(String column) {
    return table
        .column(column)
        .orElseThrow(() -> new IllegalArgumentException(table + " has no column " + column));
  }
}
