package org.jawroom.tables.template;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;

/** Writes empty tables to fill in. What is there already is never overwritten. */
public final class Template {
  private Template() {}

  /**
   * Writes a workbook with a sheet for each table and a legend.
   *
   * @throws FileAlreadyExistsException if {@code file} is there
   * @throws IOException if it cannot be written; nothing is left behind then
   */
  public static void writeWorkbook(Path file) throws IOException {
    refuseIfThere(file);
    write(file, workbook());
  }

  /**
   * Writes a CSV file for each table into {@code folder}, which is made if need be.
   *
   * @throws FileAlreadyExistsException if a table's file is there; none is written then
   * @throws IOException if a file cannot be written
   */
  public static void writeFolder(Path folder) throws IOException {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    for (TableSpec table : TableSpec.values()) {
      files.put(folder.resolve(table.tableName() + ".csv"), csv(table));
    }
    for (Path file : files.keySet()) {
      refuseIfThere(file);
    }
    Files.createDirectories(folder);
    for (Map.Entry<Path, byte[]> file : files.entrySet()) {
      write(file.getKey(), file.getValue());
    }
  }

  private static byte[] workbook() throws IOException {
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

  private static void refuseIfThere(Path file) throws FileAlreadyExistsException {
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString());
    }
  }

  /** Written beside its place and moved there, so that no file ever stands there half done. */
  private static void write(Path file, byte[] bytes) throws IOException {
    Path target = file.toAbsolutePath();
    Path beside = target.resolveSibling(target.getFileName() + ".part");
    try {
      Files.write(beside, bytes);
      Files.move(beside, target);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
