package org.jawroom.tables.template;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;

/** Empty tables to fill in, as the bytes of files. */
public final class Template {
  private Template() {}

  /** A workbook with a sheet for each table and a legend. */
  public static byte[] workbook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      FixedDates.set(workbook);
      TemplateStyles styles = new TemplateStyles(workbook);
      LegendSheet.add(workbook, styles);
      for (TableSpec table : TableSpec.values()) {
        TemplateSheet.add(workbook, styles, table);
      }
      workbook.write(bytes);
    }
    return FixedDates.inZip(bytes.toByteArray());
  }

  /** A CSV file for each table, by file name. */
  public static Map<String, byte[]> csvFiles() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (TableSpec table : TableSpec.values()) {
      files.put(table.tableName() + ".csv", csv(table));
    }
    return files;
  }

  private static byte[] csv(TableSpec table) throws IOException {
    List<String> headings = ColumnOrder.of(table).all().stream().map(ColumnSpec::name).toList();
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(headings);
      for (Map<String, String> row : WorkedRows.of(table)) {
        printer.printRecord(headings.stream().map(heading -> row.getOrDefault(heading, "")));
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
