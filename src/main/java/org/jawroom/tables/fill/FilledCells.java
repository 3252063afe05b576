package org.jawroom.tables.fill;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Column;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.cell.LengthRange;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.cell.name.NearestName;
import org.jawroom.tables.row.Notation;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.Source;
import org.jawroom.tables.source.csv.FilledRow;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.Grid;

/**
 * Finds the cell of a figure in the tables.
 *
 * @param notation how the tables write numbers
 */
record FilledCells(Source source, Notation notation) {
  private static final Pattern READING = Pattern.compile("([A-Za-z_]+)(?: ?\\((.*)\\))?");
  private static final Pattern NUMBERED = Pattern.compile("(.*) bolt (\\d{1,4})");

  /** The tables whose readings are taped. */
  private static final List<TableSpec> TABLES =
      List.of(TableSpec.MACHINES, TableSpec.GUARDS, TableSpec.VISES, TableSpec.MOUNTS);

  FilledCell of(FilledRow row) throws Refused {
    TableSpec table = table(row.table());
    Matcher reading = READING.matcher(row.reading());
    List<String> columns = columns(table);
    String column = reading.matches() ? ColumnSpec.normal(reading.group(1)) : "";
    if (!columns.contains(column)) {
      throw new Refused(
          "reading",
          row.reading(),
          "is no reading of "
              + table.tableName()
              + " that may be open"
              + NearestName.hint(reading.matches() ? reading.group(1) : row.reading(), columns));
    }
    Grid grid =
        source
            .grid(table)
            .orElseThrow(
                () ->
                    new Refused(
                        "table", row.table(), "is no table of these; check the table's name"));
    String item = reading.group(2) == null ? "" : reading.group(2);
    Grid.Row found = row(grid, table, row.name(), item);
    int place = place(grid, table, column);
    if (place < 0) {
      throw new Refused(
          "reading",
          column,
          "is no column of " + grid.origin() + " yet; add it to the header there");
    }
    Cell now = found.cells().get(place);
    String text = text(row.value(), now, found, grid, table.column(column).orElseThrow());
    return new FilledCell(table, grid.origin(), found.number(), place, text);
  }

  private static TableSpec table(String name) throws Refused {
    List<String> known = TABLES.stream().map(TableSpec::tableName).toList();
    return TABLES.stream()
        .filter(table -> Names.key(table.tableName()).equals(Names.key(name)))
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "table",
                    name,
                    "is no table with readings; write machines, guards, vises or mounts"
                        + NearestName.hint(name, known)));
  }

  /** The lengths of a table that may be open. */
  private static List<String> columns(TableSpec table) {
    Stream<String> own = table == TableSpec.MOUNTS ? Stream.of("u", "v") : Stream.empty();
    return Stream.concat(
            own,
            Stream.of(Column.values())
                .filter(column -> column != Column.MAX_LOAD && column != Column.VISE_MASS)
                .filter(column -> column.table().equals(table.tableName()))
                .map(Column::column))
        .toList();
  }

  private Grid.Row row(Grid grid, TableSpec table, String name, String item) throws Refused {
    boolean ofMachine = table == TableSpec.MACHINES || table == TableSpec.GUARDS;
    String owner = ofMachine ? "machine" : "vise";
    List<Grid.Row> rows = named(grid, table, grid.rows(), owner, name);
    if (rows.isEmpty()) {
      throw new Refused(
          "name",
          name,
          "is no "
              + owner
              + " in "
              + grid.origin()
              + NearestName.hint(name, names(grid, table, grid.rows(), owner)));
    }
    if (table == TableSpec.MACHINES || table == TableSpec.VISES) {
      if (!item.isEmpty()) {
        throw new Refused(
            "reading", item, "names a part of a row, but " + table.tableName() + " has none");
      }
      return rows.get(0);
    }
    return item(grid, table, rows, item);
  }

  private Grid.Row item(Grid grid, TableSpec table, List<Grid.Row> rows, String item)
      throws Refused {
    String column = table == TableSpec.GUARDS ? "guard" : "mount";
    List<Grid.Row> found = named(grid, table, rows, column, item);
    Matcher numbered = NUMBERED.matcher(item);
    if (found.isEmpty() && table == TableSpec.MOUNTS && numbered.matches()) {
      List<Grid.Row> bolts = named(grid, table, rows, column, numbered.group(1));
      int number = Integer.parseInt(numbered.group(2));
      found = number >= 1 && number <= bolts.size() ? List.of(bolts.get(number - 1)) : List.of();
    }
    if (found.isEmpty()) {
      throw new Refused(
          "reading",
          item,
          "is no "
              + column
              + " of it in "
              + grid.origin()
              + "; write it in brackets after the column, as gap (sill)"
              + NearestName.hint(item, names(grid, table, rows, column)));
    }
    if (found.size() > 1) {
      throw new Refused(
          "reading",
          item,
          "has " + found.size() + " bolts; write which: " + item + " bolt 1, … bolt 2");
    }
    return found.get(0);
  }

  private static List<Grid.Row> named(
      Grid grid, TableSpec table, List<Grid.Row> rows, String column, String name) {
    int place = place(grid, table, column);
    return rows.stream().filter(row -> Names.key(raw(row, place)).equals(Names.key(name))).toList();
  }

  private static Collection<String> names(
      Grid grid, TableSpec table, List<Grid.Row> rows, String column) {
    int place = place(grid, table, column);
    return rows.stream().map(row -> CellText.trimmed(raw(row, place))).distinct().toList();
  }

  private static String raw(Grid.Row row, int place) {
    Cell cell = row.cells().get(place);
    return cell == null ? "" : cell.text();
  }

  /** The position of a column; −1 if the header does not have it. */
  private static int place(Grid grid, TableSpec table, String column) {
    for (Map.Entry<Integer, Cell> cell : grid.header().cells().entrySet()) {
      Optional<ColumnSpec> meant = table.column(CellText.trimmed(cell.getValue().text()));
      if (meant.isPresent() && meant.get().name().equals(column)) {
        return cell.getKey();
      }
    }
    return -1;
  }

  /** What to write: with its unit, since a bare number would be in the row's. */
  private String text(String value, Cell now, Grid.Row row, Grid grid, ColumnSpec column)
      throws Refused {
    String where = grid.origin() + " row " + row.number();
    boolean none = CellText.trimmed(value).equalsIgnoreCase("none");
    if (now == null && none && column.noneAllowed()) {
      return "none";
    }
    boolean range = LengthRange.isRange(value);
    if (range && !column.takesRanges()) {
      throw new Refused(
          "value",
          value,
          "is a range, but " + column.name() + " takes one length; write that length");
    }
    LengthRange read = known(value, range);
    Unit unit = unit(grid, row);
    List<Lengths.Read> ends = Stream.of(read.lo(), read.hi()).flatMap(Optional::stream).toList();
    if (unit != Unit.MM && ends.stream().anyMatch(end -> end.bare() && end.value() != 0)) {
      // A form shows the figures of such a row in its unit, so nobody can know which is meant.
      String number = range ? CellText.trimmed(value) : ends.get(0).number();
      throw new Refused(
          "value",
          value,
          "has no unit, but "
              + where
              + " is not in mm; write "
              + number
              + " mm or "
              + number
              + " "
              + unit.sign());
    }
    if (now != null) {
      refuseContradiction(value, read, now.text(), where, unit);
    }
    if (ends.stream().noneMatch(Lengths.Read::bare)) {
      return CellText.trimmed(value);
    }
    if (range) {
      return CellText.trimmed(value) + " mm";
    }
    String written = Lengths.inMillimetres(ends.get(0).value());
    return notation.decimalComma() ? written.replace('.', ',') : written;
  }

  /** What a value says; one length is a range of its own. */
  private LengthRange known(String value, boolean range) throws Refused {
    try {
      if (range) {
        return LengthRange.parse(value, Unit.MM, notation.decimalComma());
      }
      Optional<Lengths.Read> one =
          Optional.of(Lengths.parse(value, Unit.MM, notation.decimalComma()));
      return new LengthRange(one, one);
    } catch (BadCell bad) {
      Optional<String> meant = range ? Optional.empty() : LengthRange.hyphenated(value);
      throw new Refused(
          "value",
          value,
          meant
              .map(text -> "has a hyphen between two numbers; if it is a range, write " + text)
              .orElse(bad.getMessage()));
    }
  }

  private Unit unit(Grid grid, Grid.Row row) {
    int place = place(grid, grid.table(), "unit");
    return Unit.named(raw(row, place)).orElse(notation.bare());
  }

  private void refuseContradiction(
      String value, LengthRange read, String now, String where, Unit unit) throws Refused {
    if (!LengthRange.isRange(now)) {
      throw new Refused(
          "value",
          value,
          "is for a reading that is known: " + now + " in " + where + "; clear it there first");
    }
    boolean within;
    try {
      LengthRange range = LengthRange.parse(now, unit, notation.decimalComma());
      within = low(range) <= low(read) && high(read) <= high(range);
    } catch (BadCell ours) {
      throw new IllegalStateException("was read without a fault: " + now, ours);
    }
    if (!within) {
      throw new Refused(
          "value",
          value,
          "contradicts "
              + where
              + ", which says "
              + now
              + ": measure again, or correct it there first");
    }
  }

  private static long low(LengthRange range) {
    return range.lo().map(Lengths.Read::value).orElse(-Length.ENDLESS);
  }

  private static long high(LengthRange range) {
    return range.hi().map(Lengths.Read::value).orElse(Length.ENDLESS);
  }
}
