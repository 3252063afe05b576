package org.jawroom.tables.source;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.TableSpec;

/** A copy of a workbook in which single cells are replaced; formats and other sheets stay. */
public final class WorkbookEdit implements AutoCloseable {
  /** The earliest time that a ZIP can hold. */
  private static final LocalDateTime EARLIEST = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final XSSFWorkbook book;

  private WorkbookEdit(XSSFWorkbook book) {
    this.book = book;
  }

  /**
   * Opens a copy.
   *
   * @throws IOException if it is a kind of workbook that can be read, but not written again
   */
  public static WorkbookEdit of(byte[] bytes) throws IOException {
    try {
      return new WorkbookEdit(new XSSFWorkbook(new ByteArrayInputStream(bytes)));
    } catch (RuntimeException unusual) {
      throw new IOException("it is written in an unusual way; save it as XLSX once more", unusual);
    }
  }

  /**
   * Puts a text into a cell.
   *
   * @param row as the sheet shows it, the first being 1; {@code column} from 0
   * @return false, with nothing changed, if a formula stands there
   */
  public boolean put(TableSpec table, int row, int column, String text) {
    Row cells = sheet(table).getRow(row - 1);
    Cell cell = cells.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    if (cell.getCellType() == CellType.FORMULA) {
      return false;
    }
    cell.setCellValue(text);
    return true;
  }

  private Sheet sheet(TableSpec table) {
    for (Sheet sheet : book) {
      TableName name = TableName.ofSheet(sheet.getSheetName());
      if (name.kind() == TableName.Kind.TABLE && name.table().equals(Optional.of(table))) {
        return sheet;
      }
    }
    throw new IllegalStateException("the workbook has no sheet " + table.tableName());
  }

  /** The workbook, the same bytes whenever it is written: its files bear no time. */
  public byte[] bytes() throws IOException {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    book.write(written);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(written.toByteArray()));
        ZipOutputStream to = new ZipOutputStream(out)) {
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        ZipEntry timeless = new ZipEntry(entry.getName());
        timeless.setTimeLocal(EARLIEST);
        to.putNextEntry(timeless);
        from.transferTo(to);
      }
    }
    return out.toByteArray();
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
