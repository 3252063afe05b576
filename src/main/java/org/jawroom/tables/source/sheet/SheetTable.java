package org.jawroom.tables.source.sheet;

import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.Grid;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * One sheet of a workbook, parsed by SAX events row after row; its header row is the first row that
 * is not blank.
 *
 * <p>Rows and cells without a reference follow the previous one (ECMA-376).
 */
public final class SheetTable extends DefaultHandler {

  /** Stops the parser early: a limit is reached. */
  static final class Enough extends SAXException {
    private static final long serialVersionUID = 1L;
  }

  /** What all sheets of a workbook share. */
  public record Shared(SharedTexts texts, SheetStyles styles, boolean from1904, CellBudget room) {}

  private final TableSpec table;
  private final String origin;
  private final Shared shared;
  private final FaultList faults;

  private final NavigableMap<Integer, Grid.Row> rows = new TreeMap<>();
  private final MergedCells merged = new MergedCells();
  private final CellLetters letters = new CellLetters();
  private NavigableMap<Integer, Cell> filled = new TreeMap<>();
  private boolean whole = true;
  private boolean inData;
  private int row = -1;
  private int column = -1;
  private boolean numbered;
  private boolean placed;
  private String type = "";
  private int style;
  private boolean formula;
  private boolean valued;
  private boolean inValue;
  private int phonetic;

  public SheetTable(TableSpec table, String origin, Shared shared, FaultList faults) {
    this.table = table;
    this.origin = origin;
    this.shared = shared;
    this.faults = faults;
  }

  /** Whether the whole sheet could be read. */
  public boolean isWhole() {
    return whole && !rows.isEmpty();
  }

  /** The grid, after parsing; empty, with a fault, if the sheet is blank. */
  public Optional<Grid> grid() {
    if (rows.isEmpty()) {
      if (whole) {
        faults.add(table, origin, "", "is empty; give it a header row, or take it away");
      }
      return Optional.empty();
    }
    if (merged.areTooMany()) {
      faults.add(table, origin, "", "has thousands of merged cells; unmerge them");
    }
    for (MergedCells.Range range : merged.in(rows)) {
      faults.add(
          table,
          origin,
          range.first().row() + 1,
          "",
          "",
          "has merged cells "
              + range.written()
              + ", of which only the first holds a value; unmerge them and fill in each");
    }
    Grid.Row header = rows.get(rows.firstKey());
    return Optional.of(new Grid(table, origin, header, rows.values().stream().skip(1).toList()));
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes)
      throws SAXException {
    if (name.equals("sheetData")) {
      inData = true;
    } else if (name.equals("mergeCell")) {
      Optional.ofNullable(attributes.getValue("ref")).ifPresent(merged::add);
    } else if (inData) {
      startInData(name, attributes);
    }
  }

  private void startInData(String name, Attributes attributes) throws SAXException {
    switch (name) {
      case "row" -> startRow(attributes.getValue("r"));
      case "c" -> startCell(attributes);
      case "f" -> formula = true;
      case "rPh" -> phonetic++;
      case "v", "t" -> {
        inValue = phonetic == 0;
        valued = true;
      }
      default -> {}
    }
  }

  private void startRow(String number) throws SAXException {
    int next = row + 1;
    numbered = number != null;
    row = number == null ? next : CellPlace.of("A" + number).map(CellPlace::row).orElse(next);
    if (number != null && CellPlace.of("A" + number).isEmpty()) {
      fault("follows one whose number is none of a sheet: " + Fault.shortened(number));
    }
    column = -1;
    filled = new TreeMap<>();
    if (rows.size() > Grid.MOST_ROWS) {
      fault(Grid.TOO_MANY_ROWS);
      throw new Enough();
    }
  }

  private void startCell(Attributes attributes) throws SAXException {
    String written = attributes.getValue("r");
    CellPlace place =
        written == null
            ? new CellPlace(row, column + 1)
            : CellPlace.of(written).orElse(new CellPlace(-1, column + 1));
    // A row without a number takes that of its first cell's reference.
    if (!numbered && filled.isEmpty() && column < 0 && place.row() > row) {
      row = place.row();
    }
    column = place.column();
    placed = place.row() == row;
    if (!placed) {
      fault("has a cell that says it stands at " + Fault.shortened(written));
    }
    if (column >= Grid.MOST_COLUMNS) {
      fault(Grid.TOO_MANY_COLUMNS);
      throw new Enough();
    }
    type = Optional.ofNullable(attributes.getValue("t")).orElse("");
    style = styleOf(attributes.getValue("s"));
    formula = false;
    valued = false;
    letters.clear();
  }

  /** An invalid style index counts as a missing style. */
  private static int styleOf(String written) {
    try {
      return written == null ? 0 : Integer.parseInt(written.strip());
    } catch (NumberFormatException e) {
      return -1;
    }
  }

  @Override
  public void characters(char[] text, int start, int length) {
    if (inValue) {
      letters.add(text, start, length);
    }
  }

  @Override
  public void endElement(String uri, String name, String qualified) throws SAXException {
    if (!inData) {
      return;
    }
    switch (name) {
      case "sheetData" -> inData = false;
      case "v", "t" -> inValue = false;
      case "rPh" -> phonetic--;
      case "c" -> endCell();
      case "row" -> endRow();
      default -> {}
    }
  }

  private void endCell() throws SAXException {
    Cell cell =
        new SheetCell(type, shared.styles.format(style), formula, valued, letters.text())
            .read(shared.texts, shared.from1904);
    if (cell.isBlank() || !placed) {
      return;
    }
    if (cell.text().length() > Grid.LONGEST_CELL) {
      fault(Grid.TOO_LONG_A_CELL);
    } else if (!shared.room.take(cell)) {
      fault(shared.room.full());
      throw new Enough();
    } else if (filled.putIfAbsent(column, cell) != null) {
      fault("has two cells in one place, one of them \"" + Fault.shortened(cell.text()) + "\"");
    }
  }

  private void endRow() {
    if (filled.isEmpty()) {
      return;
    }
    Grid.Row read = new Grid.Row(row + 1, filled.lastKey() + 1, filled);
    if (rows.putIfAbsent(row, read) != null) {
      fault("is there twice");
    }
  }

  /** Adds a fault of the row as a whole. */
  private void fault(String message) {
    faults.add(table, origin, row + 1, "", "", message);
    whole = false;
  }
}
