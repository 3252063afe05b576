package org.jawroom.tables.source;

import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;
import org.jawroom.tables.schema.TableSpec;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * One sheet of a workbook, read by events, row after row; its header is the first row that is not
 * blank.
 *
 * <p>Rows and cells that do not tell where they stand follow the one before, as ECMA-376 has it.
 */
final class SheetTable extends DefaultHandler {

  /** Ends the reading early: there is enough. */
  private static final class Enough extends SAXException {
    private static final long serialVersionUID = 1L;
  }

  private final TableSpec table;
  private final String origin;
  private final SharedTexts texts;
  private final SheetStyles styles;
  private final boolean from1904;
  private final Room room;
  private final FaultList faults;

  private final NavigableMap<Integer, Grid.Row> rows = new TreeMap<>();
  private final CellLetters letters = new CellLetters();
  private NavigableMap<Integer, Cell> filled = new TreeMap<>();
  private boolean whole = true;
  private int row = -1;
  private int column = -1;
  private String type = "";
  private int style;
  private boolean formula;
  private boolean inValue;
  private int phonetic;

  SheetTable(
      TableSpec table,
      String sheet,
      SharedTexts texts,
      SheetStyles styles,
      boolean from1904,
      Room room,
      FaultList faults) {
    this.table = table;
    this.origin = "sheet " + sheet;
    this.texts = texts;
    this.styles = styles;
    this.from1904 = from1904;
    this.room = room;
    this.faults = faults;
  }

  /** What of an XML reader's failure is only that there was enough. */
  static boolean isEnough(SAXException stop) {
    return stop instanceof Enough;
  }

  /** Whether all of it could be read. */
  boolean isWhole() {
    return whole && !rows.isEmpty();
  }

  /** The grid, once everything was read; empty, with a fault, if the sheet is blank. */
  Optional<Grid> grid() {
    if (rows.isEmpty()) {
      faults.add(table, origin, "", "is empty; give it a header row, or take it away");
      return Optional.empty();
    }
    Grid.Row header = rows.get(rows.firstKey());
    return Optional.of(new Grid(table, origin, header, rows.values().stream().skip(1).toList()));
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes)
      throws SAXException {
    switch (name) {
      case "row" -> startRow(attributes.getValue("r"));
      case "c" -> startCell(attributes);
      case "f" -> formula = true;
      case "rPh" -> phonetic++;
      case "v", "t" -> inValue = phonetic == 0;
      default -> {}
    }
  }

  private void startRow(String number) throws SAXException {
    row = number == null ? row + 1 : Integer.parseInt(number) - 1;
    column = -1;
    filled = new TreeMap<>();
    if (rows.size() > Grid.MOST_ROWS) {
      fault(Grid.TOO_MANY_ROWS);
      throw new Enough();
    }
  }

  private void startCell(Attributes attributes) {
    String place = attributes.getValue("r");
    column = place == null ? column + 1 : new CellReference(place).getCol();
    if (column < 0 || column >= Grid.MOST_COLUMNS) {
      throw new IllegalArgumentException("cell " + place);
    }
    String told = attributes.getValue("t");
    type = told == null ? "" : told;
    String styled = attributes.getValue("s");
    style = styled == null ? 0 : Integer.parseInt(styled);
    formula = false;
    letters.clear();
  }

  @Override
  public void characters(char[] text, int start, int length) {
    if (inValue) {
      letters.add(text, start, length);
    }
  }

  @Override
  public void endElement(String uri, String name, String qualified) throws SAXException {
    switch (name) {
      case "v", "t" -> inValue = false;
      case "rPh" -> phonetic--;
      case "c" -> endCell();
      case "row" -> endRow();
      default -> {}
    }
  }

  private void endCell() throws SAXException {
    Cell cell =
        new SheetCell(type, styles.format(style), formula, letters.text()).read(texts, from1904);
    if (cell.text().length() > Grid.LONGEST_CELL) {
      fault(Grid.TOO_LONG_A_CELL);
    } else if (!cell.isBlank() && !room.take(cell)) {
      fault(Room.FULL);
      throw new Enough();
    } else if (!cell.isBlank()) {
      filled.put(column, cell);
    }
  }

  private void endRow() {
    if (!filled.isEmpty()) {
      rows.put(row, new Grid.Row(row + 1, filled.lastKey() + 1, filled));
    }
  }

  /** Of the row as a whole. */
  private void fault(String message) {
    faults.add(table, origin, row + 1, "", "", message);
    whole = false;
  }
}
