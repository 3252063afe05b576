package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
  private static final List<String> REPORTS =
      List.of("matrix.xlsx", "pairings.csv", "remedies.csv", "unknowns.csv");

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void matrix_exampleShop_writesEveryReportAndSaysWhere() throws Exception {
    Path reports = folder.resolve("reports");

    assertEquals(0, run("matrix", example().toString(), "-o", reports.toString()));

    assertEquals(REPORTS, names(reports));
    assertTrue(out.toString().contains("36 pairings: 6 machines x 6 vises"), out.toString());
    assertTrue(
        out.toString().contains("Written: " + reports.resolve("pairings.csv")), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void matrix_whateverTheThreads_givesTheSameBytes() throws Exception {
    assertEquals(
        0,
        run(
            "matrix",
            example().toString(),
            "-o",
            folder.resolve("a").toString(),
            "--threads",
            "1"));
    assertEquals(
        0,
        run(
            "matrix",
            example().toString(),
            "-o",
            folder.resolve("b").toString(),
            "--threads",
            "7"));

    for (String name : REPORTS) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("a").resolve(name)),
          Files.readAllBytes(folder.resolve("b").resolve(name)),
          name);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "matrix",
        "page",
        "plan",
        "explain",
        "draw",
        "card",
        "reconcile",
        "assess",
        "check",
        "compare",
        "survey",
        "tape"
      })
  void anyCommand_optionUnit_isRefusedInOneLineThatNamesShow(String command) throws Exception {
    for (String option : List.of("--unit in", "--unit=in")) {
      String[] args =
          Stream.concat(
                  Stream.of(command, example().toString(), "tight", "six inch"),
                  Stream.of(option.split(" ")))
              .toArray(String[]::new);
      err.getBuffer().setLength(0);

      assertEquals(2, run(args));

      assertEquals(
          List.of(
              "There is no option --unit: --show mm or --show in says what people read; what bare"
                  + " numbers are stands in the tables (column unit, setting unit)."),
          err.toString().lines().toList());
      assertEquals("", out.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "matrix x --threads=two",
        "matrix x --threads=2147483648",
        "matrix x --drawings=-2147483649",
        "plan x --time-limit=2s",
        "plan x --time-limit=9223372036854775808"
      })
  void number_thatIsNotWhole_isRefusedWithoutTheNameOfAType(String line) {
    CommandRun run = CommandRun.of(line.split(" "));
    String number = line.substring(line.indexOf('=') + 1);
    assertEquals(2, run.status());
    assertTrue(run.err().contains("\"" + number + "\" is not a whole number"), run.err());
  }

  @Test
  void matrix_anyUnitShown_givesTheSameTablesForPrograms() throws Exception {
    for (String unit : List.of("mm", "in")) {
      String[] args = {
        "matrix", example().toString(), "-o", folder.resolve(unit).toString(), "--show", unit
      };
      assertEquals(0, run(args));
    }
    for (String name : List.of("pairings.csv", "remedies.csv", "unknowns.csv")) {
      assertEquals(
          Files.readString(folder.resolve("mm").resolve(name)),
          Files.readString(folder.resolve("in").resolve(name)),
          name);
    }
  }

  @Test
  void matrix_optionOfASettingsName_winsOverTheTable() throws Exception {
    Path reports = folder.resolve("reports");

    assertEquals(
        0,
        run(
            "matrix",
            example().toString(),
            "-o",
            reports.toString(),
            "--clearance=8mm",
            "--hand_room=30"));

    String row =
        Files.readAllLines(reports.resolve("pairings.csv")).stream()
            .filter(line -> line.startsWith("exact,six inch,"))
            .findFirst()
            .orElseThrow();
    // 6.35 asked for leaves 0; 8 leaves 1.65 less at the front and at the rear.
    assertTrue(row.startsWith("exact,six inch,limited,"), row);
    assertTrue(row.contains(",-1.650,door,screw front,") || row.contains(",-1.650,"), row);
  }

  @Test
  void matrix_faultyTables_areRefusedWithEveryFaultAndNothingWritten() throws Exception {
    Path input = copyOfExample();
    replace(input.resolve("machines.csv"), "roomy,mm,xy,600", "roomy,mm,xy,\"1,250\"");
    replace(input.resolve("vises.csv"), "plain,mm,one,150", "plain,mm,one,-150");
    Path reports = folder.resolve("reports");

    assertEquals(1, run("matrix", input.toString(), "-o", reports.toString()));

    List<String> lines = err.toString().lines().toList();
    assertEquals(
        "machines.csv row 2, column table_length: \"1,250\" could be 1.25 or 1250; write 1250 or 1.25",
        lines.get(0));
    assertTrue(
        lines.get(1).startsWith("vises.csv row 2, column jaw_width: \"-150\" "), lines.get(1));
    assertEquals("2 faults. Nothing was written; put them right and run again.", lines.get(2));
    assertFalse(Files.exists(reports));
  }

  @Test
  void matrix_outputIsAFile_isOneLineAndStatus3() throws Exception {
    Path file = Files.writeString(folder.resolve("taken"), "mine");

    assertEquals(3, run("matrix", example().toString(), "-o", file.toString()));

    assertEquals(1, err.toString().lines().count(), err.toString());
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void matrix_noSuchInput_isOneLineAndStatus3() {
    assertEquals(3, run("matrix", folder.resolve("nowhere").toString()));
    assertEquals(1, err.toString().lines().count(), err.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"matrx", "matrix --clearence=3 x", "matrix", "matrix x --threads=0", ""})
  void run_wrongUse_isStatus2WithoutATrace(String line) {
    assertEquals(2, run(line.isEmpty() ? new String[0] : line.split(" ")));
    assertTrue(err.toString().contains("--help"), err.toString());
    assertFalse(err.toString().contains("\tat "), err.toString());
  }

  @Test
  void run_mistypedName_suggestsTheNearest() {
    run("matrx");
    assertTrue(err.toString().contains("matrix"), err.toString());
  }

  @Test
  void matrix_optionThatIsNoLength_isWrongUse() throws Exception {
    assertEquals(2, run("matrix", example().toString(), "--clearance", "wide"));
    assertTrue(err.toString().startsWith("option --clearance: \"wide\" "), err.toString());
  }

  /** What was looked for is one rule, whoever reports it. */
  @Test
  void checkAndExplain_lookedFor_agree() throws Exception {
    for (String row :
        List.of("head; Tool-changer; nozzle; column; cover", "Tool\u00a0changer;SILL")) {
      Path tables = Files.createTempDirectory(folder, "tables");
      Files.writeString(
          tables.resolve("machines.csv"),
          "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_count,looked_for\n"
              + "mill,xy,600,300,400,300,1,"
              + row
              + "\n");
      Files.writeString(
          tables.resolve("vises.csv"),
          "vise,jaw_width,jaw_height,bed_height,opening_max\nvise,150,40,60,150\n");
      Files.writeString(
          tables.resolve("guards.csv"), "machine,guard,kind,x_min\nmill,way cover,cover,500\n");
      String missing = row.startsWith("head") ? "sill" : "head, nozzle, column";
      out.getBuffer().setLength(0);
      assertEquals(0, run("check", tables.toString()), err::toString);
      assertTrue(
          out.toString().contains("looked_for: does not name " + missing + ". Look"),
          out.toString());
      out.getBuffer().setLength(0);
      assertEquals(0, run("explain", tables.toString(), "mill", "vise"), err::toString);
      String printed = out.toString().replaceAll("\\s+", " ");
      assertTrue(printed.contains("do not count: " + missing + "."), printed);
    }
  }

  @Test
  void check_workedExamplesOfATemplate_areLeftOutWithoutAWarning() throws Exception {
    Path tables = folder.resolve("tables");
    assertEquals(0, run("template", "--csv", tables.toString()));
    for (String table : List.of("machines.csv", "vises.csv")) {
      Path file = tables.resolve(table);
      String text = Files.readString(file);
      int row = text.indexOf("\n") + 1;
      int end = text.indexOf("\n", row) + 1;
      Files.writeString(file, text + text.substring(row, end).replace("e.g. ", "my "));
    }
    out.getBuffer().setLength(0);

    assertEquals(0, run("check", tables.toString()), err::toString);

    List<String> lines = out.toString().lines().toList();
    assertEquals("Left out:", lines.get(0));
    assertEquals("  machines.csv row 2: skipped: a worked example", lines.get(1));
    String warnings = out.toString().substring(out.toString().indexOf("Warnings ("));
    assertFalse(warnings.contains("worked example"), warnings);
  }

  @Test
  void check_exampleShop_listsWarningsAndWritesNothing() throws Exception {
    assertEquals(0, run("check", example().toString()));
    List<String> lines = out.toString().lines().toList();
    assertTrue(
        lines.contains(
            "  machine not-measured: rear_gap; 5 of 6 pairings unknown: plain, six inch, six"),
        out.toString());
    assertFalse(out.toString().contains("rear_gap open"), out.toString());
    assertTrue(
        lines.contains("  machines exact, exact-taped, tight, tighter, not-measured"),
        out.toString());
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), out.toString());
    assertEquals(
        "6 machines, 6 vises, 0 jobs: no faults, 6 warnings.", lines.get(lines.size() - 1));
  }

  @Test
  void template_workbook_isReadBackWithItsWorkedRowsSkipped() throws Exception {
    Path file = folder.resolve("shop.xlsx");
    assertEquals(0, run("template", file.toString()));
    assertEquals(3, run("template", file.toString()));

    err.getBuffer().setLength(0);
    assertEquals(1, run("check", file.toString()));
    assertEquals(
        List.of(
            "sheet machines: holds nothing but worked examples",
            "sheet vises: holds nothing but worked examples"),
        err.toString().lines().limit(2).toList());
  }

  @Test
  void run_help_namesTheCommandsAndTheVersionIsTheBuilds() {
    assertEquals(0, run("--help"));
    for (String command : List.of("matrix", "check", "template")) {
      assertTrue(out.toString().contains(command), out.toString());
    }
    out.getBuffer().setLength(0);
    assertEquals(0, run("--version"));
    assertTrue(out.toString().matches("jawroom \\d+\\.\\d+\\.\\d+\\R"), out.toString());
  }

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private static Path example() throws Exception {
    return GoldenTables.of("example");
  }

  private Path copyOfExample() throws Exception {
    Path copy = Files.createDirectory(folder.resolve("input"));
    for (String name : List.of("machines.csv", "vises.csv", "guards.csv", "settings.csv")) {
      Files.copy(example().resolve(name), copy.resolve(name));
    }
    return copy;
  }

  private static void replace(Path file, String old, String text) throws IOException {
    String before = Files.readString(file);
    assertTrue(before.contains(old));
    Files.writeString(file, before.replace(old, text));
  }

  private static List<String> names(Path directory) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
