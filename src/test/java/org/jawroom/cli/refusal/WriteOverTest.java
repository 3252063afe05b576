package org.jawroom.cli.refusal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jawroom.cli.CommandRun;
import org.jawroom.fixture.PartOfDemo;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a command is asked to write, nothing is lost but reports of the same kind. */
class WriteOverTest {
  private static final Path BOOK = Path.of("inputs/demo.xlsx");

  /** Each command and each file that it writes. */
  private static final String WRITTEN =
      """
      matrix, pairings.csv
      matrix, remedies.csv
      matrix, unknowns.csv
      matrix, jobs.csv
      matrix, matrix.xlsx
      assess, assess.csv
      assess, assess.xlsx
      assess, assess.pdf
      plan, plan.csv
      plan, plan.xlsx
      plan, cards.pdf
      tape, tape.pdf
      page, page.html
      page, PAGE.HTM
      draw, drawing.svg
      draw, drawing.pdf
      draw, drawing.png
      card, card.pdf
      """;

  /** The same with a command that writes nothing from tables without checks, as these are. */
  private static final String REFUSED =
      WRITTEN
          + """
          reconcile, checks.csv
          reconcile, suspects.csv
          reconcile, narrowed.csv
          reconcile, reconciliation.txt
          """;

  @TempDir private static Path shared;
  private static Path small;

  @TempDir private Path temporary;
  private Path folder;

  @BeforeAll
  static void makeTables() throws IOException {
    small = PartOfDemo.in(shared.resolve("tables"));
  }

  @BeforeEach
  void makeFolder() throws IOException {
    folder = Files.createDirectory(temporary.resolve("out"));
  }

  @ParameterizedTest
  @CsvSource(textBlock = REFUSED)
  void input_namedAsAReport_isNotOverwritten(String command, String name) throws Exception {
    Path input = Files.copy(BOOK, folder.resolve(name));
    Map<String, String> before = files(folder);
    Path link = Files.createSymbolicLink(temporary.resolve("link"), input);
    Path roundabout = folder.resolve("../out/../out").resolve(name);
    Path relative = Path.of("").toAbsolutePath().relativize(input.toAbsolutePath());
    for (Path spelt : List.of(input, link, roundabout, relative)) {
      assertRefusedAsInput(command, spelt, name);
      assertEquals(before, files(folder), spelt.toString());
    }
  }

  @ParameterizedTest
  @CsvSource(textBlock = REFUSED)
  void input_linkedToTheOutput_isNotOverwritten(String command, String name) throws Exception {
    Path input = Files.copy(BOOK, temporary.resolve("tables.xlsx"));
    byte[] before = Files.readAllBytes(input);
    Path output = folder.resolve(name);
    Files.createLink(output, input);
    assertRefusedAsInput(command, input, name);
    Files.delete(output);
    Files.createSymbolicLink(output, input);
    assertRefusedAsInput(command, input, name);
    assertTrue(Files.isSymbolicLink(output));
    assertArrayEquals(before, Files.readAllBytes(input));
  }

  @ParameterizedTest
  @CsvSource(textBlock = REFUSED)
  void input_inOtherCase_isNotOverwritten(String command, String name) throws Exception {
    Path input = Files.copy(BOOK, folder.resolve(name));
    String other = name.equals("PAGE.HTM") ? "page.htm" : name.toUpperCase(java.util.Locale.ROOT);
    assumeTrue(Files.exists(folder.resolve(other)), "needs a disk on which case does not count");
    assertRefusedAsInput(command, folder.resolve(other), name);
    assertArrayEquals(Files.readAllBytes(BOOK), Files.readAllBytes(input));
  }

  private void assertRefusedAsInput(String command, Path input, String name) {
    CommandRun run = CommandRun.of(args(command, input, name));
    assertEquals(2, run.status(), run.err());
    assertTrue(
        run.err()
            .contains(name + " is read by this run and would be overwritten; name another place"),
        run.err());
  }

  /** The report jobs.csv has the name of a table. */
  @Test
  void matrix_intoTheFolderOfItsTables_keepsJobs() throws Exception {
    Path tables = PartOfDemo.in(temporary.resolve("tables"));
    Map<String, String> before = files(tables);
    CommandRun run = CommandRun.of("matrix", tables.toString(), "-o", tables.toString());
    assertEquals(2, run.status(), run.err());
    assertTrue(run.err().startsWith(tables.resolve("jobs.csv") + " is read by this run"));
    assertEquals(before, files(tables));
  }

  @Test
  void plan_overThePlanToKeep_isRefused() throws Exception {
    assertEquals(0, CommandRun.of("plan", small.toString(), "-o", folder.toString()).status());
    Map<String, String> before = files(folder);
    Path plan = folder.resolve("plan.csv");
    String[] again = {"plan", small.toString(), "--keep", plan.toString(), "-o"};
    CommandRun run = CommandRun.of(with(again, folder.toString()));
    assertEquals(2, run.status());
    assertTrue(run.err().startsWith(plan + " is read by this run"), run.err());
    assertEquals(before, files(folder));
    Path next = temporary.resolve("next");
    assertEquals(0, CommandRun.of(with(again, next.toString())).status());
  }

  @ParameterizedTest
  @CsvSource(textBlock = REFUSED)
  void fileOfAnotherKind_isNotOverwritten(String command, String name) throws Exception {
    Path file = folder.resolve(name);
    List<byte[]> others =
        List.of(
            "a day's work\n".getBytes(StandardCharsets.UTF_8),
            // Tables, one of which has the name of a report, and what is nearly a report.
            Files.readAllBytes(small.resolve("jobs.csv")),
            "machine,vise\nmill,plain\n".getBytes(StandardCharsets.UTF_8),
            "machine,vise,\"verdict".getBytes(StandardCharsets.UTF_8),
            Files.readAllBytes(BOOK),
            "PK\3\4 cut short".getBytes(StandardCharsets.UTF_8),
            "%PDF-1.6 cut short".getBytes(StandardCharsets.UTF_8),
            "<!DOCTYPE html><title>My shop</title>".getBytes(StandardCharsets.UTF_8),
            "<?xml version='1.0'?><svg/>".getBytes(StandardCharsets.UTF_8),
            new byte[] {(byte) 0x89, 'P', 'N', 'G'});
    for (byte[] other : others) {
      Files.write(file, other);
      CommandRun run = CommandRun.of(args(command, small, name));
      assertEquals(3, run.status(), new String(other, StandardCharsets.UTF_8));
      assertEquals(
          file
              + " could not be written: there is a file of that name that is no such report of"
              + " jawroom; move it away, or name another place\n",
          run.err());
      assertArrayEquals(other, Files.readAllBytes(file));
      assertEquals(1, files(folder).size(), files(folder).keySet().toString());
    }
  }

  /** Each report in the place of each other. */
  @Test
  void reportOfAnotherKind_isNotOverwritten() throws Exception {
    Map<String, String> commands = new TreeMap<>();
    WRITTEN.lines().map(line -> line.split(", ")).forEach(one -> commands.put(one[1], one[0]));
    for (Map.Entry<String, String> one : commands.entrySet()) {
      assertEquals(0, CommandRun.of(args(one.getValue(), small, one.getKey())).status());
    }
    Path all = Files.move(folder, temporary.resolve("all"));
    Files.createDirectory(folder);
    List<Set<String>> same =
        List.of(Set.of("page.html", "PAGE.HTM"), Set.of("cards.pdf", "card.pdf"));
    for (String name : commands.keySet()) {
      for (String other : commands.keySet()) {
        Files.copy(all.resolve(other), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        if (!name.equals(other) && !same.contains(Set.of(name, other))) {
          CommandRun run = CommandRun.of(args(commands.get(name), small, name));
          assertEquals(3, run.status(), other + " in the place of " + name);
        }
      }
      Files.delete(folder.resolve(name));
    }
  }

  /** What the first version wrote had two columns less. */
  @Test
  void matrix_overAReportOfTheFirstVersion_replacesIt() throws Exception {
    String[] matrix = {"matrix", small.toString(), "-o", folder.toString()};
    assertEquals(0, CommandRun.of(matrix).status());
    Map<String, String> now = files(folder);
    Path pairings = folder.resolve("pairings.csv");
    String header = Files.readAllLines(pairings).get(0);
    Files.writeString(pairings, header.replace(",per_table,table_positions_mm", "") + "\r\n");
    assertEquals(0, CommandRun.of(matrix).status());
    assertEquals(now, files(folder));
  }

  @ParameterizedTest
  @CsvSource(textBlock = REFUSED)
  void folderDeviceOrPipe_isNotReplaced(String command, String name) throws Exception {
    Path file = Files.createDirectory(folder.resolve(name));
    assertNotReplaced(command, name, "it is a folder");
    Files.delete(file);
    assumeTrue(Files.exists(Path.of("/dev/null")), "needs the devices of Unix");
    Files.createSymbolicLink(file, Path.of("/dev/null"));
    assertNotReplaced(command, name, "it is a device or a pipe");
    Files.delete(file);
    // Whoever opens it waits for ever.
    assumeTrue(new ProcessBuilder("mkfifo", file.toString()).start().waitFor() == 0);
    assertNotReplaced(command, name, "it is a device or a pipe");
  }

  private void assertNotReplaced(String command, String name, String why) throws IOException {
    CommandRun run = CommandRun.of(args(command, small, name));
    assertEquals(3, run.status(), run.err());
    assertEquals(
        folder.resolve(name)
            + " could not be written: "
            + why
            + "; move it away, or name another place\n",
        run.err());
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(1, all.count());
    }
  }

  /** An empty file has nothing to lose, nor has an older report. */
  @ParameterizedTest
  @CsvSource(textBlock = WRITTEN)
  void ownReportOrEmptyFile_isReplaced(String command, String name) throws Exception {
    Path file = Files.createFile(folder.resolve(name));
    assertEquals(new CommandRun(0, ""), CommandRun.of(args(command, small, name)).without("Note"));
    byte[] first = Files.readAllBytes(file);
    assertTrue(first.length > 0);
    assertEquals(new CommandRun(0, ""), CommandRun.of(args(command, small, name)).without("Note"));
    assertArrayEquals(first, Files.readAllBytes(file));
  }

  /** As a spreadsheet saves it; then a part, which has no header. */
  @Test
  void matrix_overReportsSavedBySpreadsheetsAndOverParts_replacesThem() throws Exception {
    String[] matrix = {"matrix", small.toString(), "--no-workbook", "-o", folder.toString()};
    assertEquals(0, CommandRun.of(matrix).status());
    Map<String, String> first = files(folder);
    for (String name : first.keySet()) {
      Path file = folder.resolve(name);
      Files.writeString(file, "\ufeff" + Files.readString(file).replace(',', ';'));
    }
    assertEquals(0, CommandRun.of(matrix).status());
    assertEquals(first, files(folder));
    assertEquals(0, CommandRun.of(with(matrix, "--machines", PartOfDemo.MILL)).status());
    assertEquals(0, CommandRun.of(matrix).status());
    assertEquals(first, files(folder));
  }

  @Test
  void matrix_ofNoJobs_callsNoForeignFileAnEarlierReport() throws Exception {
    Path tables = PartOfDemo.in(temporary.resolve("tables"));
    Path jobs = Files.move(tables.resolve("jobs.csv"), folder.resolve("jobs.csv"));
    byte[] before = Files.readAllBytes(jobs);
    StringWriter out = new StringWriter();
    int status =
        Main.run(
            new String[] {"matrix", tables.toString(), "-o", folder.toString()},
            new PrintWriter(out, true),
            new PrintWriter(new StringWriter()));
    assertEquals(0, status);
    assertTrue(!out.toString().contains("earlier run"), out.toString());
    assertArrayEquals(before, Files.readAllBytes(jobs));
  }

  @Test
  void demoReports_areReplaced() throws Exception {
    for (Path report : list(Path.of("reports"))) {
      Files.copy(report, folder.resolve(report.getFileName()));
    }
    Map<String, String> before = files(folder);
    assertEquals(
        0, CommandRun.of("matrix", CommandRun.TABLES.toString(), "-o", folder.toString()).status());
    assertEquals(
        0, CommandRun.of("assess", CommandRun.TABLES.toString(), "-o", folder.toString()).status());
    assertEquals(before.keySet(), files(folder).keySet());
  }

  private String[] args(String command, Path input, String name) {
    return CommandRun.args(command, input, folder, name);
  }

  private static String[] with(String[] args, String... more) {
    return Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new);
  }

  private static List<Path> list(Path directory) throws IOException {
    try (Stream<Path> all = Files.list(directory)) {
      return all.toList();
    }
  }

  private static Map<String, String> files(Path directory) throws IOException {
    Map<String, String> files = new TreeMap<>();
    for (Path file : list(directory)) {
      files.put(file.getFileName().toString(), hash(file));
    }
    return files;
  }

  private static String hash(Path file) throws IOException {
    return Integer.toHexString(java.util.Arrays.hashCode(Files.readAllBytes(file)));
  }
}
