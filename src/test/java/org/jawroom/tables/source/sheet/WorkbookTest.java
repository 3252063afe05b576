package org.jawroom.tables.source.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks, built here, read back. */
class WorkbookTest {
  private static final List<String> MACHINES =
      List.of(
          "machine",
          "table_moves",
          "table_length",
          "table_width",
          "travel_x",
          "travel_y",
          "slot_count",
          "rear_gap",
          "max_load",
          "measured");

  @TempDir Path folder;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private Row mill;
  private Row vise;

  @BeforeEach
  void oneMillAndOneVise() {
    Sheet machines = workbook.createSheet("Machines");
    // Row 1 stays blank, so that numbers of rows are seen to be the sheet's.
    fill(machines, 1, MACHINES.toArray());
    mill = fill(machines, 2, "mill", "xy", 600, 300, "400 mm", 300, 3);
    Sheet vises = workbook.createSheet("vises");
    fill(
        vises,
        0,
        "vise",
        "jaw_width",
        "jaw_height",
        "bed_height",
        "opening_max",
        "strap_flange",
        "handle");
    vise = fill(vises, 1, "vise", 150, 40, 60, 150);
  }

  @Test
  void numbers_areTakenAsTyped() throws Exception {
    set("rear_gap", 0.1 + 0.2);
    set("max_load", 300.125);
    mill.getCell(0).setCellValue(5);
    Machine machine = machine();
    assertEquals("5", machine.name());
    assertEquals(Dimension.of(300_000 * Length.NANOMETRE), machine.gap(Side.REAR));
    assertEquals(0, new BigDecimal("300.125").compareTo(machine.maxLoad().orElseThrow()));
  }

  @Test
  void numbers_underDecimalComma_keepTheirPoint() throws Exception {
    set("rear_gap", 1.25);
    fill(workbook.createSheet("settings"), 0, "setting", "value");
    fill(workbook.getSheet("settings"), 1, "decimal", "comma");
    fill(workbook.getSheet("settings"), 2, "clearance", 6.5);
    assertEquals(Dimension.of(Length.MM * 5 / 4), machine().gap(Side.REAR));
  }

  @Test
  void formulas_countByTheirCachedValue() throws Exception {
    XSSFCell cell = cell("rear_gap");
    cell.setCellFormula("2*25");
    cell.setCellValue(50);
    assertEquals(Dimension.of(50 * Length.MM), machine().gap(Side.REAR));
    cell.setCellFormula("\"6 1/2\"&\"in\"");
    cell.setCellValue("6 1/2in");
    assertEquals(Dimension.of(13 * Length.INCH / 2), machine().gap(Side.REAR));
  }

  /**
   * Programs often write formulas and leave the computing to the spreadsheet; that must never read
   * as 0.
   */
  @Test
  void formula_neverComputed_isRefusedAndNotZero() throws Exception {
    cell("rear_gap").setCellFormula("2*25");
    assertEquals(
        List.of(
            "sheet Machines row 3, column rear_gap: is a formula whose value was never computed; open the"
                + " workbook and save it, or type the value"),
        faults());
  }

  @Test
  void formula_inError_isRefused() throws Exception {
    XSSFCell cell = cell("rear_gap");
    cell.setCellFormula("1/0");
    cell.setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.DIV0);
    assertEquals(
        List.of(
            "sheet Machines row 3, column rear_gap: \"#DIV/0!\" is an error of the spreadsheet; mend the"
                + " formula or type the value"),
        faults());
  }

  @Test
  void date_isRefusedInLengthsButNotInFreeText() throws Exception {
    date("measured");
    assertEquals(List.of(), faults());
    date("rear_gap");
    assertEquals(
        List.of(
            "sheet Machines row 3, column rear_gap: \"2026-01-04\" is a date, as spreadsheets make of"
                + " fractions; type 0.25, or '1/4 to keep it as text"),
        faults());
  }

  @Test
  void truthValues_areYesAndNoAndNothingElse() throws Exception {
    vise.createCell(5).setCellValue(true);
    assertTrue(read().shop().orElseThrow().vises().get(0).strapFlange());
    vise.createCell(6).setCellValue(false);
    cell("rear_gap").setCellValue(true);
    assertEquals(
        List.of(
            "sheet Machines row 3, column rear_gap: \"TRUE\" is a truth value; what belongs here is a length",
            "sheet vises row 2, column handle: \"FALSE\" is a truth value; write one of off, on"),
        faults());
  }

  @Test
  void sheets_otherThanTables_areLeftAloneAndNamed() throws Exception {
    fill(workbook.createSheet("Legend"), 0, "anything");
    assertEquals(
        List.of("sheet Legend: left alone: none of the tables"),
        read().notes(Note.Kind.LEFT_ALONE).stream().map(Note::toString).toList());
    assertEquals("shop.xlsx", read().files().get(0).name());
  }

  @Test
  void sheets_sameTableTwiceOrEmpty_areRefused() throws Exception {
    workbook.createSheet("vise parts");
    workbook.createSheet("VISE-PARTS");
    assertEquals(
        List.of(
            "sheet vise parts: is empty; give it a header row, or take it away",
            "sheet VISE-PARTS: is the same table as sheet vise parts; keep one of the two"),
        faults());
  }

  @Test
  void sheet_missing_isRefused() throws Exception {
    workbook.removeSheetAt(1);
    assertEquals(List.of("sheet vises: is missing; a shop needs machines and vises"), faults());
  }

  @Test
  void cell_underNoHeader_isRefused() throws Exception {
    mill.createCell(20).setCellValue("stray");
    assertEquals(List.of("sheet Machines row 3: \"stray\" stands under no header"), faults());
  }

  /** Whatever a damaged file does to the library, it must come out as a reading or as one line. */
  @Test
  void workbook_damagedAnywhere_isReadOrRefused() throws Exception {
    byte[] sound = bytes();
    Random random = new Random(7);
    Path file = folder.resolve("damaged.xlsx");
    int refused = 0;
    for (int i = 0; i < 60; i++) {
      byte[] damaged =
          i % 5 == 0 ? Arrays.copyOf(sound, random.nextInt(sound.length)) : sound.clone();
      for (int hit = 0; hit < 3 && damaged.length > 0; hit++) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
      }
      Files.write(file, damaged);
      try {
        ShopReader.read(file, Map.of());
      } catch (UnreadableInput e) {
        assertTrue(e.getMessage().startsWith(file + " could not be read: "), e.getMessage());
        refused++;
      }
    }
    assertTrue(refused > 20, "only " + refused + " refused");
  }

  /** The same for damage inside the parts, which the archive's own checks do not see. */
  @Test
  void workbook_partsDamaged_isReadOrRefused() throws Exception {
    byte[] sound = bytes();
    Random random = new Random(11);
    Path file = folder.resolve("damaged.xlsx");
    int refused = 0;
    for (int i = 0; i < 100; i++) {
      Files.write(file, withDamagedParts(sound, random));
      try {
        ShopReader.read(file, Map.of());
      } catch (UnreadableInput e) {
        assertTrue(e.getMessage().startsWith(file + " could not be read: "), e.getMessage());
        refused++;
      }
    }
    assertTrue(refused > 20, "only " + refused + " refused");
  }

  private static byte[] withDamagedParts(byte[] workbook, Random random) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] part = in.readAllBytes();
        for (int hit = random.nextInt(3); hit > 0; hit--) {
          part[random.nextInt(part.length)] = (byte) "<>\"/=0129 aZs".charAt(random.nextInt(13));
        }
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(part);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static Row fill(Sheet sheet, int number, Object... values) {
    Row row = sheet.createRow(number);
    for (int i = 0; i < values.length; i++) {
      if (values[i] instanceof Number value) {
        row.createCell(i).setCellValue(value.doubleValue());
      } else {
        row.createCell(i).setCellValue((String) values[i]);
      }
    }
    return row;
  }

  private void set(String column, double value) {
    cell(column).setCellValue(value);
  }

  private void date(String column) {
    cell(column).setCellValue(LocalDate.of(2026, 1, 4));
    cell(column).setCellStyle(style("d-mmm"));
  }

  private XSSFCell cell(String column) {
    Row.MissingCellPolicy create = Row.MissingCellPolicy.CREATE_NULL_AS_BLANK;
    return (XSSFCell) mill.getCell(MACHINES.indexOf(column), create);
  }

  private CellStyle style(String format) {
    CellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    return style;
  }

  private Machine machine() throws Exception {
    assertEquals(List.of(), faults());
    return read().shop().orElseThrow().machines().get(0);
  }

  private List<String> faults() throws Exception {
    return read().faults().stream().map(Fault::toString).toList();
  }

  private byte[] bytes() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    workbook.write(bytes);
    return bytes.toByteArray();
  }

  private Reading read() throws Exception {
    return ShopReader.read(Files.write(folder.resolve("shop.xlsx"), bytes()), Map.of());
  }
}
