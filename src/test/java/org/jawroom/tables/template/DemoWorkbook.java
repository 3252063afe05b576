package org.jawroom.tables.template;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.Need;
import org.jawroom.tables.schema.TableSpec;

/**
 * Makes {@code inputs/demo.xlsx} out of the tables in {@code inputs/demo}; run after changing them.
 */
final class DemoWorkbook {
  static final Path TABLES = Path.of("inputs", "demo");
  static final Path WORKBOOK = Path.of("inputs", "demo.xlsx");

  private DemoWorkbook() {}

  public static void main(String[] arguments) throws IOException {
    Files.write(WORKBOOK, of(TABLES));
  }

  /** The same tables as a workbook: text as text, and numbers where nothing else can stand. */
  static byte[] of(Path folder) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      FixedDates.set(workbook);
      TemplateStyles styles = new TemplateStyles(workbook);
      for (TableSpec table : TableSpec.values()) {
        Path file = folder.resolve(table.tableName() + ".csv");
        if (Files.exists(file)) {
          fill(workbook.createSheet(table.tableName()), styles, table, records(file));
        }
      }
      workbook.write(bytes);
    }
    return FixedDates.inZip(bytes.toByteArray());
  }

  private static List<CSVRecord> records(Path file) throws IOException {
    try (Reader reader = Files.newBufferedReader(file)) {
      return CSVFormat.RFC4180.parse(reader).getRecords();
    }
  }

  private static void fill(
      XSSFSheet sheet, TemplateStyles styles, TableSpec table, List<CSVRecord> records) {
    List<ColumnSpec> columns =
        records.get(0).stream().map(heading -> table.column(heading).orElseThrow()).toList();
    XSSFRow headings = sheet.createRow(0);
    headings.setHeightInPoints(48);
    for (int at = 0; at < columns.size(); at++) {
      put(headings.createCell(at), CellKind.TEXT, columns.get(at).name().replace('_', ' '));
      Need need = columns.get(at).need();
      headings.getCell(at).setCellStyle(styles.heading(need));
      sheet.setDefaultColumnStyle(at, styles.entry(columns.get(at).kind()));
    }
    for (CSVRecord record : records.subList(1, records.size())) {
      XSSFRow row = sheet.createRow((int) record.getRecordNumber() - 1);
      for (int at = 0; at < columns.size(); at++) {
        if (!record.get(at).isEmpty()) {
          CellKind kind = columns.get(at).kind();
          XSSFCell cell = row.createCell(at);
          put(cell, kind, record.get(at));
          cell.setCellStyle(styles.entry(kind));
        }
      }
    }
    for (int at = 0; at < columns.size(); at++) {
      sheet.setColumnWidth(at, width(records, at) * 256);
    }
    sheet.createFreezePane(1, 1);
  }

  private static void put(XSSFCell cell, CellKind kind, String text) {
    if (kind.isPlainNumber()) {
      cell.setCellValue(Double.parseDouble(text));
    } else {
      cell.setCellValue(text);
    }
  }

  /** In characters: what stands in the column, at most 40; of the heading its longest word. */
  private static int width(List<CSVRecord> records, int at) {
    int longest = 8;
    for (String word : records.get(0).get(at).split("_")) {
      longest = Math.max(longest, word.length() + 2);
    }
    for (CSVRecord record : records.subList(1, records.size())) {
      longest = Math.max(longest, record.get(at).length() + 2);
    }
    return Math.min(longest, 40);
  }
}
