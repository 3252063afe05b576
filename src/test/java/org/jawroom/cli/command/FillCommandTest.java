package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FillCommandTest {
  private static final String MACHINES =
      "machine;unit;table_moves;table_length;table_width;travel_x;travel_y;slot_count;slot_width;"
          + "slot_pitch;front_gap;rear_gap;left_gap;right_gap;nose_min;nose_max;source\r\n"
          + "mill;mm;xy;900;400;600;400;3;18;100;none;50..90;none;none;0;500;caliper\r\n"
          + "\r\n"
          + "knee;in;xy;40;16;24;12;3;5/8;2 1/2;none;;\"at most 6 1/2\"\"\";none;0;20\n";
  private static final String VISES =
      """
      vise,unit,jaw_width,jaw_height,bed_height,opening_max,base_width,rear_reach,front_reach,fixed_jaw_thickness,moving_jaw_thickness,rear_projection_closed,rear_projection_open,front_projection_closed,front_projection_open,screw_height,screw_diameter,handle_radius,handle_depth,bolt_spacing,bolt_u,bolt_hole_u,bolt_hole_v
      plain,mm,160,50,70,165,205,70,280,30,60,none,none,36,36,46,28,120,42,none,,,
      """;
  private static final String MOUNTS =
      """
      vise,mount,u,v,hole_u,hole_v
      plain,pair,105,-90,,18
      plain,pair,105,90,40,18
      """;
  private static final String GUARDS =
      """
      machine,guard,side,gap
      mill,sill,front,30 to 80
      """;

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path tables;

  @BeforeEach
  void write() throws IOException {
    tables = Files.createDirectory(folder.resolve("tables"));
    Files.writeString(tables.resolve("machines.csv"), "\ufeff" + MACHINES);
    Files.writeString(tables.resolve("vises.csv"), VISES);
    Files.writeString(tables.resolve("mounts.csv"), MOUNTS);
    Files.writeString(tables.resolve("guards.csv"), GUARDS);
  }

  private int fill(Path input, Path to, String... rows) throws IOException {
    Path filled = folder.resolve("tape-filled.csv");
    Files.writeString(filled, "table,name,reading,value\r\n" + String.join("\r\n", rows) + "\r\n");
    return run("fill", input.toString(), filled.toString(), "-o", to.toString());
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private Path to() {
    return folder.resolve("filled");
  }

  @Test
  void fill_bareNumberInARowOfInches_isRefused() throws Exception {
    assertEquals(
        1, fill(tables, to(), "machines,knee,left_gap,6.25", "machines,knee,rear_gap,1 to 2"));
    assertEquals(
        List.of(
            "tape-filled.csv row 2, column value: \"6.25\" has no unit, but machines.csv row 4 is not in mm;"
                + " write 6.25 mm or 6.25 in",
            "tape-filled.csv row 3, column value: \"1 to 2\" has no unit, but machines.csv row 4 is not in mm;"
                + " write 1 to 2 mm or 1 to 2 in"),
        err.toString().lines().limit(2).toList());
    assertFalse(Files.exists(to()));

    assertEquals(0, fill(tables, to(), "machines,knee,left_gap,0"), err.toString());
  }

  @Test
  void fill_folder_isThatFilledByHand() throws Exception {
    Map<String, byte[]> before = files(tables);
    int status =
        fill(
            tables,
            to(),
            "machines,mill,rear_gap,71.25",
            "machines,Knee,rear_gap,41.3 mm",
            "machines,knee,left_gap,\"6 1/4\"\"\"",
            "machines,knee,right_gap,",
            "guards,mill,gap (Sill),4.1 cm",
            "mounts,plain,hole_u (pair bolt 1),40");
    assertEquals(0, status, err.toString());

    assertEquals(
        "\ufeff"
            + MACHINES
                .replace("50..90", "71.25 mm")
                .replace("none;;\"at most 6 1/2\"\"\"", "none;41.3 mm;\"6 1/4\"\"\""),
        text("machines.csv"));
    assertEquals(GUARDS.replace("30 to 80", "4.1 cm"), text("guards.csv"));
    assertEquals(MOUNTS.replace("-90,,18", "-90,40 mm,18"), text("mounts.csv"));
    assertEquals(VISES, text("vises.csv"));
    Map<String, byte[]> after = files(tables);
    before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
    List<String> printed = out.toString().lines().toList();
    assertEquals("Filled in: 5; without a value: 1. Written: " + to(), printed.get(0));
    assertTrue(printed.get(1).startsWith("Old: " + tables), printed.get(1));
    assertEquals(0, run("compare", tables.toString(), to().toString()));
    List<String> compared = out.toString().lines().toList();
    assertEquals(compared.subList(2, compared.size()), printed.subList(3, printed.size()));
  }

  /** As the form says: known within bounds. */
  @Test
  void fill_ranges_narrowWhatWasKnown() throws Exception {
    int status =
        fill(
            tables,
            to(),
            "machines,mill,rear_gap,60..90",
            "machines,knee,rear_gap,at least 1 in",
            "machines,knee,left_gap,\"4..6 1/2\"\"\"",
            "guards,mill,gap (sill),40 ± 5",
            "mounts,plain,hole_u (pair bolt 1),at most 45");
    assertEquals(0, status, err.toString());
    assertEquals(
        "\ufeff"
            + MACHINES
                .replace("50..90", "60..90 mm")
                .replace("none;;\"at most 6 1/2\"\"\"", "none;at least 1 in;\"4..6 1/2\"\"\""),
        text("machines.csv"));
    assertEquals(GUARDS.replace("30 to 80", "40 ± 5 mm"), text("guards.csv"));
    assertEquals(MOUNTS.replace("-90,,18", "-90,at most 45 mm,18"), text("mounts.csv"));
  }

  @Test
  void fill_rangesBeyondTheBoundsOrWhereNoneIsTaken_areRefused() throws Exception {
    assertEquals(
        1,
        fill(
            tables,
            to(),
            "machines,mill,rear_gap,49.999..60",
            "machines,mill,rear_gap,60..90.001",
            "machines,mill,rear_gap,at least 60",
            "machines,mill,rear_gap,at most 60",
            "machines,mill,slot_width,17..18",
            "machines,mill,slot_pitch,90..100",
            "guards,mill,gap (sill),60..50",
            "guards,mill,gap (sill),50-60"));
    String bounds =
        " contradicts machines.csv row 2, which says 50..90: measure again, or correct it there"
            + " first";
    assertEquals(
        List.of(
            "row 2, column value: \"49.999..60\"" + bounds,
            "row 3, column value: \"60..90.001\"" + bounds,
            "row 4, column value: \"at least 60\"" + bounds,
            "row 5, column value: \"at most 60\"" + bounds,
            "row 6, column value: \"17..18\" is a range, but slot_width takes one length; write that length",
            "row 7, column value: \"90..100\" is for a reading that is known: 100 in machines.csv row 2; clear it"
                + " there first",
            "row 8, column value: \"60..50\" begins above its end; write the smaller number first",
            "row 9, column value: \"50-60\" has a hyphen between two numbers; if it is a range, write 50..60"),
        err.toString().lines().limit(8).map(line -> line.replace("tape-filled.csv ", "")).toList());
    assertFalse(Files.exists(to()));
  }

  private String text(String name) throws IOException {
    return Files.readString(to().resolve(name));
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (var all = Files.list(folder)) {
      for (Path one : all.toList()) {
        files.put(one.getFileName().toString(), Files.readAllBytes(one));
      }
    }
    return files;
  }

  /** The ends of a range are within it; what is beyond contradicts the tables. */
  @Test
  void fill_atAndBeyondTheBounds_contradictsOnlyBeyond() throws Exception {
    assertEquals(0, fill(tables, folder.resolve("a"), "machines,mill,rear_gap,50"));
    assertEquals(0, fill(tables, folder.resolve("b"), "machines,mill,rear_gap,9 cm"));
    for (String beyond : List.of("49.999", "90.001", "2 in")) {
      int status = fill(tables, to(), "machines,mill,rear_gap," + beyond);
      assertEquals(beyond.equals("2 in") ? 0 : 1, status, beyond + err);
    }
    assertEquals(1, fill(tables, folder.resolve("c"), "machines,mill,rear_gap,90.001"));
    assertEquals(
        List.of(
            "tape-filled.csv row 2, column value: \"90.001\" contradicts machines.csv row 2, which says 50..90:"
                + " measure again, or correct it there first",
            "1 fault. Nothing was written; put it right and run again."),
        err.toString().lines().toList());
    assertFalse(Files.exists(folder.resolve("c")));
  }

  @Test
  void fill_hostileRows_listsEveryFault() throws Exception {
    assertEquals(
        1,
        fill(
            tables,
            to(),
            "machine,mill,rear_gap,60",
            "machines,mil,rear_gap,60",
            "machines,mill,rear_gab,60",
            "machines,mill,table_width,60",
            "machines,mill,rear_gap (x),60",
            "machines,mill,slot_pitch,60",
            "machines,mill,rear_gap,about 60",
            "machines,mill,rear_gap,=60",
            "machines,mill,rear_gap,\"60,5\"",
            "machines,mill,rear_gap,none",
            "guards,mill,gap,40",
            "guards,mill,gap (silk),40",
            "mounts,plain,hole_u (pair),40",
            "mounts,plain,hole_u (pair bolt 9999999999),40",
            "mounts,plain,hole_u (pair bolt 0),40",
            "machines,mill,rear_gap,60",
            "machines,mill,rear_gap,61",
            ",,,5",
            "a,b,c,d,e"));
    List<String> faults = err.toString().lines().toList();
    assertEquals(18 + 1, faults.size(), err.toString());
    assertTrue(faults.get(0).contains("did you mean \"machines\"?"), faults.get(0));
    assertFalse(Files.exists(to()));
  }

  @Test
  void fill_overTheTablesOrOtherFiles_isRefused() throws Exception {
    for (Path over : List.of(tables, folder, tables.resolve("../tables"))) {
      assertEquals(2, fill(tables, over, "machines,mill,rear_gap,60"), over.toString());
    }
    assertEquals(0, fill(tables, to(), "machines,mill,rear_gap,60"), err.toString());
    Map<String, byte[]> before = files(to());
    assertEquals(3, fill(tables, to(), "machines,mill,rear_gap,61"));
    before.forEach(
        (name, bytes) -> {
          try {
            assertArrayEquals(bytes, Files.readAllBytes(to().resolve(name)), name);
          } catch (IOException e) {
            throw new AssertionError(e);
          }
        });
  }

  @Test
  void fill_noValues_writesNothing() throws Exception {
    assertEquals(0, fill(tables, to(), "machines,mill,rear_gap,"));
    assertTrue(out.toString().startsWith("Nothing to fill in"), out.toString());
    assertFalse(Files.exists(to()));
  }

  /** What the figures make of the tables is read before anything is written. */
  @Test
  void fill_tablesRefusedAfterwards_writesNothing() throws Exception {
    assertEquals(1, fill(tables, to(), "mounts,plain,hole_u (pair bolt 1),-5"));
    assertTrue(err.toString().startsWith("With the figures filled in:"), err.toString());
    assertFalse(Files.exists(to()));
  }

  @Test
  void fill_workbook_changesOneCellAlone() throws Exception {
    Path book = folder.resolve("shop.xlsx");
    int row;
    int column;
    try (InputStream in = Files.newInputStream(Path.of("inputs/demo.xlsx"));
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream to = Files.newOutputStream(book)) {
      Sheet sheet = workbook.getSheet("machines");
      row = rowOf(sheet, "knee mill");
      column = columnOf(sheet, "rear_gap");
      sheet.getRow(row).getCell(column).setCellValue("1..3");
      workbook.createSheet("notes of mine").createRow(4).createCell(2).setCellFormula("1+1");
      workbook.write(to);
    }
    Map<String, String> before = cells(book);

    assertEquals(0, fill(book, to(), "machines,knee mill,rear_gap,41.3 mm"), err.toString());

    Map<String, String> after = cells(to().resolve("shop.xlsx"));
    assertEquals("1..3", before.put("machines " + row + " " + column, "41.3 mm"));
    assertEquals(before, after);
  }

  private static int rowOf(Sheet sheet, String name) {
    for (Row row : sheet) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(name)) {
        return row.getRowNum();
      }
    }
    throw new AssertionError(name);
  }

  private static int columnOf(Sheet sheet, String name) {
    for (Cell cell : sheet.getRow(sheet.getFirstRowNum())) {
      if (cell.toString().strip().replace(' ', '_').equalsIgnoreCase(name)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError(name);
  }

  /** Every cell with its type and format. */
  private static Map<String, String> cells(Path file) throws IOException {
    Map<String, String> cells = new TreeMap<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            cells.put(
                sheet.getSheetName() + " " + row.getRowNum() + " " + cell.getColumnIndex(),
                cell.toString());
          }
        }
      }
    }
    return cells;
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "sep=;\r\n", "\"sep=;\"\n", "sep=;;;;;\r"})
  void fill_whatTapeWrites_canBeReadBackHoweverItIsSaved(String firstLine) throws Exception {
    assertEquals(0, run("tape", tables.toString(), "-o", folder.resolve("tape.pdf").toString()));
    String tape = Files.readString(folder.resolve("tape.csv"));
    assertTrue(tape.contains("machines,knee,left_gap,,165.100"), tape);
    List<String> rows = new ArrayList<>();
    tape.lines()
        .map(line -> line.startsWith("machines,knee,left_gap") ? line + "71.25 mm" : line)
        .forEach(rows::add);
    String saved = String.join("\r\n", rows).replace(";", "|").replace(",", ";");
    Path filled = folder.resolve("saved.csv");
    Files.write(
        filled, ("\ufeff" + firstLine + saved + "\r\n;;;;;\r\n").getBytes(StandardCharsets.UTF_8));
    assertEquals(
        0,
        run("fill", tables.toString(), filled.toString(), "-o", to().toString()),
        err.toString());
    assertTrue(text("machines.csv").contains("71.25 mm"), text("machines.csv"));
  }
}
