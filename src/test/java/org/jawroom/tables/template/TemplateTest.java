package org.jawroom.tables.template;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.LengthRange;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.Need;
import org.jawroom.tables.schema.TableSpec;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TemplateTest {
  @TempDir static Path shared;
  @TempDir Path folder;

  private static Path empty;
  private static XSSFWorkbook workbook;

  @BeforeAll
  static void writeOnce() throws IOException {
    empty = shared.resolve("empty.xlsx");
    Files.write(empty, Template.workbook());
    workbook = workbook();
  }

  @AfterAll
  static void close() throws IOException {
    workbook.close();
  }

  private static XSSFWorkbook workbook() throws IOException {
    try (var in = Files.newInputStream(empty)) {
      return new XSSFWorkbook(in);
    }
  }

  private void writeFolder() throws IOException {
    for (Map.Entry<String, byte[]> file : Template.csvFiles().entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue());
    }
  }

  private static long workedRows() {
    return Stream.of(TableSpec.values())
        .filter(table -> table != TableSpec.SETTINGS)
        .mapToLong(table -> WorkedRows.of(table).size())
        .sum();
  }

  @Test
  void workbook_writtenTwice_isTheSameBytes() throws IOException {
    assertArrayEquals(Files.readAllBytes(empty), Template.workbook());
  }

  @Test
  void folder_written_holdsTheTablesAndNothingElse() throws IOException {
    writeFolder();
    assertEquals(
        Stream.of(TableSpec.values())
            .map(table -> folder.resolve(table.tableName() + ".csv"))
            .collect(Collectors.toSet()),
        contents());
  }

  private Set<Path> contents() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.collect(Collectors.toSet());
    }
  }

  @ParameterizedTest
  @EnumSource(TableSpec.class)
  void sheet_hasEveryColumnWithAComment_thoseForEveryoneFirstAndOpen(TableSpec table) {
    XSSFSheet sheet = workbook.getSheet(table.tableName());
    Set<String> names = new TreeSet<>();
    boolean rest = false;
    for (Cell heading : sheet.getRow(0)) {
      ColumnSpec column = table.column(heading.getStringCellValue()).orElseThrow();
      names.add(column.name());
      boolean shut = sheet.isColumnHidden(heading.getColumnIndex());
      assertEquals(!column.everyone() && table != TableSpec.SETTINGS, shut, column.name());
      assertTrue(shut || !rest, column.name());
      rest |= shut;
      String comment = heading.getCellComment().getString().getString();
      assertTrue(comment.contains(column.help()), comment);
    }
    assertEquals(
        table.columns().stream()
            .map(ColumnSpec::name)
            .collect(Collectors.toCollection(TreeSet::new)),
        names);
  }

  /** Headings and legend show each form where a range may stand, and nowhere else. */
  @ParameterizedTest
  @EnumSource(TableSpec.class)
  void columnsThatTakeRanges_showHowOneIsWritten(TableSpec table) {
    String forms = "50..60, at most 60, at least 50, 60 ± 2";
    Map<String, String> legend = legend(table);
    for (Cell heading : workbook.getSheet(table.tableName()).getRow(0)) {
      ColumnSpec column = table.column(heading.getStringCellValue()).orElseThrow();
      String comment = heading.getCellComment().getString().getString();
      assertEquals(column.takesRanges(), comment.contains(forms), comment);
      String listed = legend.get(column.name());
      assertEquals(column.takesRanges(), listed.contains(forms), column.name() + ": " + listed);
    }
  }

  /** What stands in each column of a table, as the legend lists it below the table's name. */
  private static Map<String, String> legend(TableSpec table) {
    Map<String, String> listed = new HashMap<>();
    boolean own = false;
    for (Row row : workbook.getSheet(LegendSheet.NAME)) {
      Cell name = row.getCell(0);
      Cell column = row.getCell(1);
      if (name != null && !name.getStringCellValue().isEmpty()) {
        own = name.getStringCellValue().equals(table.tableName());
      } else if (own && column != null) {
        listed.put(column.getStringCellValue(), row.getCell(2).getStringCellValue());
      }
    }
    return listed;
  }

  @Test
  void rangesShown_areReadAsRanges() throws BadCell {
    for (String form : ColumnSpec.RANGES) {
      assertTrue(LengthRange.isRange(form), form);
      LengthRange range = LengthRange.parse(form, Unit.MM, false);
      assertTrue(range.lo().isPresent() || range.hi().isPresent(), form);
    }
  }

  @ParameterizedTest
  @EnumSource(TableSpec.class)
  void sheet_columnsOfLengths_areText(TableSpec table) {
    XSSFSheet sheet = workbook.getSheet(table.tableName());
    for (Cell heading : sheet.getRow(0)) {
      CellKind kind = table.column(heading.getStringCellValue()).orElseThrow().kind();
      if (kind.isLength() || kind == CellKind.NAME) {
        assertEquals("@", sheet.getColumnStyle(heading.getColumnIndex()).getDataFormatString());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(TableSpec.class)
  void sheet_columnsOfWords_offerThem(TableSpec table) {
    XSSFSheet sheet = workbook.getSheet(table.tableName());
    for (Cell heading : sheet.getRow(0)) {
      ColumnSpec column = table.column(heading.getStringCellValue()).orElseThrow();
      if (column.kind() == CellKind.WORD) {
        DataValidation offered =
            sheet.getDataValidations().stream()
                .filter(
                    v ->
                        v.getRegions()
                            .getCellRangeAddress(0)
                            .isInRange(1, heading.getColumnIndex()))
                .findFirst()
                .orElseThrow();
        assertEquals(
            column.words(),
            Arrays.asList(offered.getValidationConstraint().getExplicitListValues()));
      }
    }
  }

  /** A reader of the sheet must see everything that makes an example of a guard. */
  @Test
  void guards_everyCellOfAWorkedRow_isInSight() {
    Set<String> shown =
        ColumnOrder.of(TableSpec.GUARDS).everyone().stream()
            .map(ColumnSpec::name)
            .collect(Collectors.toSet());
    for (Map<String, String> row : WorkedRows.of(TableSpec.GUARDS)) {
      assertTrue(shown.containsAll(row.keySet()), row::toString);
    }
  }

  /**
   * Printed letters are 8 points high. A Letter page, 279.4 mm wide with margins of 0.4 inch, holds
   * 734 points; a character of the default font is 5.25 points wide (7 pixels at 96 a inch).
   */
  @ParameterizedTest
  @EnumSource(TableSpec.class)
  void sheet_printed_isLegibleAndFitsAcrossEachPage(TableSpec table) {
    XSSFSheet sheet = workbook.getSheet(table.tableName());
    assertFalse(sheet.getFitToPage());
    assertEquals(80, sheet.getPrintSetup().getScale());
    double room = 734 / 0.80;
    double used = points(sheet, 0);
    for (int column = 1; column < ColumnOrder.of(table).everyone().size(); column++) {
      used += points(sheet, column);
      assertTrue(used <= room, table + " " + column + ": " + used);
      if (sheet.isColumnBroken(column)) {
        used = points(sheet, 0);
      }
    }
  }

  private static double points(XSSFSheet sheet, int column) {
    return sheet.getColumnWidth(column) / 256.0 * 5.25;
  }

  @Test
  void legend_bearsFiveSketches() {
    assertEquals(5, workbook.getAllPictures().size());
    assertEquals(
        5,
        workbook
            .getSheet(LegendSheet.NAME)
            .getDrawingPatriarch()
            .getCTDrawing()
            .sizeOfOneCellAnchorArray());
  }

  @Test
  void workbook_readBackEmpty_hasNoFaultButTheEmptyTables() throws Exception {
    assertOnlyEmpty(ShopReader.read(empty, Map.of()));
  }

  @Test
  void folder_readBackEmpty_hasNoFaultButTheEmptyTables() throws Exception {
    writeFolder();
    assertOnlyEmpty(ShopReader.read(folder, Map.of()));
  }

  private void assertOnlyEmpty(Reading reading) {
    List<String> faults = reading.faults().stream().map(Object::toString).toList();
    assertEquals(2, faults.size(), faults::toString);
    assertTrue(
        faults.stream().allMatch(fault -> fault.endsWith("holds nothing but worked examples")),
        faults::toString);
    assertEquals(workedRows(), reading.notes(Note.Kind.WORKED_ROW).size());
  }

  /** The worked rows must be right: with their names changed they read as a shop. */
  @Test
  void workedRows_renamed_readWithoutAFault() throws Exception {
    writeFolder();
    for (Path file : contents()) {
      Files.writeString(file, Files.readString(file).replace(TableSpec.WORKED, "the "));
    }
    Reading reading = ShopReader.read(folder, Map.of());
    assertEquals(List.of(), reading.faults());
    Shop shop = reading.shop().orElseThrow();
    assertEquals(2, shop.machines().size());
    assertEquals(2, shop.vises().size());
    assertEquals(List.of(2, 1), shop.machines().stream().map(m -> m.guardRows().size()).toList());
    assertEquals(List.of(2, 1), shop.vises().stream().map(v -> v.mounts().size()).toList());
  }

  @Test
  void workbook_filledWithFractionsAsText_isReadExactly() throws Exception {
    Path file = folder.resolve("filled.xlsx");
    try (XSSFWorkbook own = workbook();
        OutputStream out = Files.newOutputStream(file)) {
      for (TableSpec table : List.of(TableSpec.MACHINES, TableSpec.VISES)) {
        XSSFSheet sheet = own.getSheet(table.tableName());
        Row row = sheet.createRow(sheet.getLastRowNum() + 1);
        for (Cell heading : sheet.getRow(0)) {
          ColumnSpec column = table.column(heading.getStringCellValue()).orElseThrow();
          if (column.need() != Need.OPTIONAL || column.kind() == CellKind.UNIT) {
            row.createCell(heading.getColumnIndex()).setCellValue(filled(column));
          }
        }
      }
      own.write(out);
    }
    Reading reading = ShopReader.read(file, Map.of());
    assertEquals(List.of(), reading.faults());
    Shop shop = reading.shop().orElseThrow();
    assertEquals(Length.INCH * 25 / 4, shop.vises().get(0).jaws().width());
    assertEquals(Length.INCH * 25 / 4, shop.machines().get(0).tableWidth());
  }

  private static String filled(ColumnSpec column) {
    return switch (column.kind()) {
      case NAME -> "mine";
      case AXES -> "xy";
      case COUNT -> "3";
      case MASS -> "30";
      case UNIT -> "in";
      default ->
          "slot_width".equals(column.name())
              ? "3/4"
              : "slot_pitch".equals(column.name()) ? "1" : "6 1/4";
    };
  }
}
