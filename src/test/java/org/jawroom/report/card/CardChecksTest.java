package org.jawroom.report.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jawroom.cli.CommandRun;
import org.jawroom.shop.Check;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rows of {@code card --checks}, filled in and read back. */
class CardChecksTest {
  private static final String MILL = "small closed mill";
  private static final String VISE = "plain 160";

  @TempDir private Path folder;

  @Test
  void header_isTheTableOfChecks() {
    assertEquals(
        TableSpec.CHECKS.columns().stream().map(ColumnSpec::name).toList(), CheckSheet.HEADER);
  }

  @Test
  void sheet_asWritten_asksForEachGapFound() throws Exception {
    List<String> lines = sheet();
    Path tables = tablesWith(lines);
    List<String> faults =
        ShopReader.read(tables, Map.of()).faults().stream().map(Object::toString).toList();
    assertEquals(lines.size() - 1, faults.size(), faults.toString());
    assertTrue(faults.stream().allMatch(fault -> fault.contains("found")), faults.toString());
  }

  @Test
  void sheet_filledIn_isReadAsChecksOfThatPlace() throws Exception {
    List<String> lines = sheet();
    List<Check> checks = read(lines, "12.5").checks();
    assertEquals(lines.size() - 1, checks.size());
    for (Check check : checks) {
      assertEquals(MILL, check.machine().name());
      assertEquals(VISE, check.vise().name());
    }
  }

  /** Each gap of a card with several vises is asked for at each of them. */
  @Test
  void sheet_ofSeveralVises_hasTheGapsOfEachPlace() throws Exception {
    Path file = folder.resolve("row.csv");
    CommandRun run =
        CommandRun.of(
            "card",
            CommandRun.TABLES.toString(),
            "middle closed mill",
            "six inch",
            "--count",
            "3",
            "-o",
            folder.resolve("row.pdf").toString(),
            "--checks",
            file.toString());
    assertEquals(0, run.status(), run.err());
    List<String> lines = Files.readAllLines(file);
    // Worked by hand beside the test of the card, to 0.1 mm.
    assertEquals(
        List.of("97.8", "401.6", "705.4"),
        lines.stream()
            .skip(1)
            .map(line -> line.split(",", -1)[CheckSheet.HEADER.indexOf("from_left")])
            .map(left -> new BigDecimal(left).setScale(1, RoundingMode.HALF_UP).toPlainString())
            .distinct()
            .toList());
    assertTrue((lines.size() - 1) % 3 == 0, lines.toString());
    for (Check check : read(lines, "12.5").checks()) {
      assertEquals("six inch", check.vise().name());
    }
  }

  @Test
  void sheet_inInches_isReadInInches() throws Exception {
    List<String> lines = sheet("--show", "in");
    assertTrue(lines.get(1).endsWith(",in"), lines.get(1));
    // One inch is 25.4 mm (ISO 80000-3), in half-nanometres.
    assertEquals(50_800_000, read(lines, "1").checks().get(0).found());
  }

  @Test
  void sheet_withSomethingFound_isNotWrittenOver() throws Exception {
    sheet();
    sheet();
    Path file = folder.resolve("to-fill.csv");
    List<String> filled = fill(Files.readAllLines(file), "12.5");
    Files.write(file, filled);
    CommandRun run = card();
    assertEquals(3, run.status(), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertEquals(filled, Files.readAllLines(file));
  }

  @Test
  void sheet_ofAnotherEnding_isWrongUse() {
    CommandRun run =
        CommandRun.of(args(folder.resolve("checks.xlsx").toString()).toArray(String[]::new));
    assertEquals(2, run.status());
    assertTrue(run.err().contains("should end in .csv"), run.err());
    assertFalse(Files.exists(folder.resolve("card.pdf")));
  }

  private Shop read(List<String> lines, String found) throws Exception {
    return ShopReader.read(tablesWith(fill(lines, found)), Map.of()).shop().orElseThrow();
  }

  /** Types a gap into every row. */
  private static List<String> fill(List<String> lines, String found) {
    return Stream.concat(
            lines.stream().limit(1),
            lines.stream()
                .skip(1)
                .map(
                    line -> {
                      String[] cells = line.split(",", -1);
                      cells[CheckSheet.HEADER.indexOf("found")] = found;
                      return String.join(",", cells);
                    }))
        .toList();
  }

  private Path tablesWith(List<String> checks) throws Exception {
    Path tables = Files.createTempDirectory(folder, "tables");
    try (Stream<Path> all = Files.list(CommandRun.TABLES)) {
      for (Path table : all.toList()) {
        Files.copy(table, tables.resolve(table.getFileName()));
      }
    }
    Files.write(tables.resolve("checks.csv"), checks);
    return tables;
  }

  private List<String> sheet(String... more) throws Exception {
    CommandRun run = card(more);
    assertEquals(0, run.status(), run.err());
    List<String> lines = Files.readAllLines(folder.resolve("to-fill.csv"));
    assertTrue(lines.size() > 2, lines.toString());
    return lines;
  }

  private CommandRun card(String... more) {
    return CommandRun.of(
        Stream.concat(args(folder.resolve("to-fill.csv").toString()).stream(), Stream.of(more))
            .toArray(String[]::new));
  }

  private List<String> args(String checks) {
    return List.of(
        "card",
        CommandRun.TABLES.toString(),
        MILL,
        VISE,
        "-o",
        folder.resolve("card.pdf").toString(),
        "--checks",
        checks);
  }
}
