package org.jawroom.tables.source.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.Fault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A number whose format shows something else than the number is refused: people fill in and check
 * what they see. Codes of formats: ECMA-376 part 1, 18.8.30 and 18.8.31.
 */
class NumberFormatTest {
  private static final String PUT_RIGHT =
      " by its number format; write it as text with its unit, or format the cell as a plain number";

  /** Far longer than any of it takes. */
  private static final Duration HANGS = Duration.ofSeconds(60);

  @TempDir private Path folder;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private Sheet machines;

  @BeforeEach
  void oneMillAndOneVise() {
    machines = workbook.createSheet("machines");
    fill(
        machines,
        "machine",
        "table_moves",
        "table_length",
        "table_width",
        "travel_x",
        "travel_y",
        "slot_count",
        "rear_gap",
        "max_load",
        "price",
        "unit",
        "description",
        "slot_positions");
    fill(machines, "mill", "xy", 600, 300, 400, 300, 3);
    Sheet vises = workbook.createSheet("vises");
    fill(vises, "vise", "jaw_width", "jaw_height", "bed_height", "opening_max");
    fill(vises, "vise", 150, 40, 60, 150);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "0.000''               | ''",
        "0.0\u201d             | \u201d",
        "0.000\\\"             | \"",
        "0.0\" in\"            | in",
        "0.0\\i\\n             | in",
        "0.0\" Zoll\"          | Zoll",
        "0\"thou\"             | thou",
        "0.0\"ft\"             | ft",
        "0.0\" cm\"            | cm",
        "0.0\" m\"             | m",
        "0.0\" mmm\"           | mmm",
        "[$ cm]0.0             | cm",
        "0.0[$in]              | in",
        "0.0[$in-409]          | in",
        "#,##0.00\\ [$\u20ac-407] | \u20ac",
        "$0.00                 | $",
        "0.0*x                 | x",
        "0.0_ \"in\"           | in",
        "[Red]0.0\"in\"        | in",
        "[>100]0.0;0.0\"in\"   | in",
        "[>100]0.0\"in\";0.0   | in",
        "-0.0                  | -",
        "\"~\"0.0              | ~",
        "0\".\"0               | .",
        "0.0\"5\"              | 5",
        "[DBNum1]0.0           | [DBNum1]",
        "0.0 k                 | k",
        "@\" in\"              | in",
        "0.0\"0123456789012345678901234567890\" | 01234567890123456789\u2026",
        "0%                    | a percentage",
        "0.00%                 | a percentage",
        "0,                    | it divided by 1000",
        "0.0,,                 | it divided by 1000",
        "0,.0                  | it divided by 1000",
        "#,##0,                | it divided by 1000",
        ";;;                   | nothing",
        "\"many\"              | text instead of the number",
        "0.0 mm                | a date mixed with a number"
      })
  void length_shownAsAnythingElse_isRefused(String code, String shown) throws Exception {
    set("rear_gap", 12.5, code);
    assertEquals(List.of(refusal("rear_gap", "12.5", shown)), faults());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "General",
        "0",
        "0.00",
        "@",
        "#,##0.000",
        "#,##0.00_ ",
        "0.0_\"",
        "* 0.0",
        "0.0\" mm\"",
        "0.0\\ \\m\\m",
        "0.0[$mm]",
        "General\" MM\"",
        "0.00E+00",
        "[Red]0.0;[Blue]-0.0",
        "[Color12]0.0",
        "[$-409]0.00",
        "[>100]0;0.0",
        "0.0;-0.0\" in\"",
        "0.0;-0.0;\"none\"",
        "0.0;-0.0;0.0;@\" in\"",
        "_(* #,##0.00_);_(* \\(#,##0.00\\);_(* \"-\"??_);_(@_)"
      })
  void length_shownAsItIs_isTaken(String code) throws Exception {
    set("rear_gap", 12.5, code);
    assertEquals(List.of(), faults());
    assertEquals(
        Dimension.of(Length.MM * 25 / 2),
        ShopReader.read(written(), Map.of()).shop().orElseThrow().machines().get(0).gap(Side.REAR));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "0.0;0.0          | no minus",
        "0.0;(0.0)        | ()",
        "0.0;\"- in\"0    | in",
        "0.0;             | nothing",
        "[>0]0.0;0.0      | it with or without its minus, by conditions,"
      })
  void length_belowZeroWithoutItsMinus_isRefused(String code, String shown) throws Exception {
    set("rear_gap", -5, code);
    assertEquals(List.of(refusal("rear_gap", "-5", shown)), faults());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0", "0.0;-0.0", "0.0\" mm\";-0.0\" mm\"", "0.0;[Red]-0.0;0"})
  void length_belowZeroWithItsMinus_isTaken(String code) throws Exception {
    set("rear_gap", -5, code);
    assertEquals(List.of(), faults());
  }

  /** A blank is never zero, and zero no blank. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {"#.## | nothing for 0", "0.0;-0.0; | nothing", "0;-0;\"-\"0 | -"})
  void zero_shownAsNoZero_isRefused(String code, String shown) throws Exception {
    set("rear_gap", 0, code);
    assertEquals(List.of(refusal("rear_gap", "0", shown)), faults());
  }

  /** A spreadsheet makes a number of 12 1/2 typed; as text it is refused in a row of mm, too. */
  @Test
  void fraction_isForInchesAlone() throws Exception {
    set("rear_gap", 12.5, "# ?/?");
    assertEquals(
        List.of(refusal("rear_gap", "12.5", "a fraction") + "; fractions are for inches"),
        faults());
    cell("unit").setCellValue("in");
    assertEquals(List.of(), faults());
    set("rear_gap", 12.5, "# ?/16");
    assertEquals(List.of(), faults());
  }

  @Test
  void millimetresShown_inARowOfInches_areRefused() throws Exception {
    cell("unit").setCellValue("in");
    set("rear_gap", 12.5, "0.0\" mm\"");
    assertEquals(List.of(refusal("rear_gap", "12.5", "mm")), faults());
  }

  @Test
  void text_thatItsFormatGivesAUnit_isRefused() throws Exception {
    cell("rear_gap").setCellValue("12.5");
    cell("rear_gap").setCellStyle(style("0;-0;0;@\" in\""));
    assertEquals(List.of(refusal("rear_gap", "12.5", "in")), faults());
  }

  @Test
  void otherNumbers_mayShowTheirOwnUnitsOnly() throws Exception {
    set("max_load", 300, "0\" kg\"");
    set("slot_count", 3, "0\" slots\"");
    set("description", 3, "0\" in\"");
    assertEquals(List.of(), faults());
    set("max_load", 300, "0\" lb\"");
    set("slot_count", 3, "0%");
    assertEquals(
        List.of(refusal("slot_count", "3", "a percentage"), refusal("max_load", "300", "lb")),
        faults());
  }

  @Test
  void setting_shownInAnotherUnit_isRefused() throws Exception {
    Sheet settings = workbook.createSheet("settings");
    fill(settings, "setting", "value");
    fill(settings, "clearance", 0.25);
    settings.getRow(1).getCell(1).setCellStyle(style("0.00\" in\""));
    assertEquals(
        List.of("sheet settings row 2, column value: \"0.25\" shows in" + PUT_RIGHT), faults());
  }

  /** A code longer than spreadsheets allow is not looked into. */
  @ParameterizedTest
  @ValueSource(strings = {"\"a ", "\\\"", "mm", "[", "0.", ",0", "?/", "\"", "m-"})
  void code_thatIsEndless_isRefusedAtOnce(String again) throws Exception {
    String code = "0" + again.repeat(21_000);
    set("rear_gap", 12.5, code);
    set("table_length", 600, code);
    String why = "what a code of more than 255 characters says";
    assertTimeoutPreemptively(
        HANGS,
        () ->
            assertEquals(
                List.of(refusal("table_length", "600", why), refusal("rear_gap", "12.5", why)),
                faults()));
  }

  private static String refusal(String column, String found, String shown) {
    return "sheet machines row 2, column "
        + column
        + ": \""
        + found
        + "\" shows "
        + shown
        + PUT_RIGHT;
  }

  private static void fill(Sheet sheet, Object... values) {
    Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
    for (int i = 0; i < values.length; i++) {
      if (values[i] instanceof Number value) {
        row.createCell(i).setCellValue(value.doubleValue());
      } else {
        row.createCell(i).setCellValue((String) values[i]);
      }
    }
  }

  private void set(String column, double value, String code) {
    cell(column).setCellValue(value);
    cell(column).setCellStyle(style(code));
  }

  private Cell cell(String column) {
    int place = 0;
    while (!machines.getRow(0).getCell(place).getStringCellValue().equals(column)) {
      place++;
    }
    return machines.getRow(1).getCell(place, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  private CellStyle style(String code) {
    CellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(code));
    return style;
  }

  private Path written() throws IOException {
    Path file = folder.resolve("shop.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
    return file;
  }

  private List<String> faults() throws Exception {
    return ShopReader.read(written(), Map.of()).faults().stream().map(Fault::toString).toList();
  }
}
