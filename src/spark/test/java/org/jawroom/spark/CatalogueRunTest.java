package org.jawroom.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jawroom.reference.random.BigShop;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The joined parts are the reports of one machine, also where tasks fail. */
class CatalogueRunTest {
  private static final Path DEMO = Path.of("inputs/demo");

  /** A shop with a check that disagrees, so that its pairing is in doubt. */
  private static final Path HAND = Path.of("src/test/resources/org/jawroom/checks/hand");

  @TempDir private Path folder;

  @Test
  void demo_joined_isTheReportOfOneMachine() throws IOException {
    Path one = SparkRun.oneMachine(DEMO, folder.resolve("one"));
    Path out = folder.resolve("out");
    SparkRun run = SparkRun.local(DEMO, out, "--remedies");
    assertEquals(0, run.status(), run.err());
    assertEquals("", run.err());
    assertTrue(SparkRun.assertSame(one, out, PairingsCsv.FILE).size() > 1);
    SparkRun.assertSame(one, out, RemediesCsv.FILE);
    assertTrue(Files.exists(out.resolve("_SUCCESS")));
  }

  @Test
  void workbook_joined_isTheReportOfOneMachine() throws IOException {
    Path workbook = Path.of("inputs/demo.xlsx");
    Path one = SparkRun.oneMachine(workbook, folder.resolve("one"));
    Path out = folder.resolve("out");
    SparkRun run = SparkRun.local(workbook, out);
    assertEquals(0, run.status(), run.err());
    SparkRun.assertSame(one, out, PairingsCsv.FILE);
    SparkRun.assertSame(one, out, RemediesCsv.FILE);
  }

  @Test
  void checks_markTheirPairings() throws IOException {
    Path one = SparkRun.oneMachine(HAND, folder.resolve("one"));
    Path out = folder.resolve("out");
    assertEquals(0, SparkRun.local(HAND, out).status());
    List<Path> parts = SparkRun.assertSame(one, out, PairingsCsv.FILE);
    assertTrue(Files.readString(parts.get(0)).contains("machines.table_width"));
  }

  /** More pairings than remedies are computed for unasked; machines and slices end apart. */
  @Test
  void manyPairings_joined_areTheReportOfOneMachine() throws IOException {
    Path tables = folder.resolve("tables");
    BigShop.write(BigShop.shop(107, 191, 5), tables);
    Path one = SparkRun.oneMachine(tables, folder.resolve("one"));
    Path out = folder.resolve("out");
    SparkRun run = SparkRun.local(tables, out);
    assertEquals(0, run.status(), run.err());
    assertEquals(8, SparkRun.assertSame(one, out, PairingsCsv.FILE).size());
    assertFalse(Files.exists(out.resolve(RemediesCsv.FILE)));
    assertTrue(run.out().startsWith(107 * 191 + " pairings\n"), run.out());
    assertEquals(107 * 191, counted(run));
  }

  /** Each part is lost three times in its middle, the fourth attempt of local[2,4] is whole. */
  @Test
  void failedTasks_loseNothing() throws IOException {
    Path one = SparkRun.oneMachine(DEMO, folder.resolve("one"));
    Path out = folder.resolve("out");
    FailingDisk.FAILED.set(0);
    SparkRun run =
        failing(PairingsCsv.FILE, 3, () -> SparkRun.local(DEMO, out, "--master", "local[2,4]"));
    assertEquals(0, run.status(), run.err());
    List<Path> parts = SparkRun.assertSame(one, out, PairingsCsv.FILE);
    SparkRun.assertSame(one, out, RemediesCsv.FILE);
    assertEquals(3 * parts.size(), FailingDisk.FAILED.get());
    // A pairing that was solved four times counts once.
    assertEquals(Integer.parseInt(run.out().substring(0, run.out().indexOf(' '))), counted(run));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pairings.csv", "pairings.parquet"})
  void alwaysFailingTasks_leaveNothing(String report) {
    Path out = folder.resolve("out");
    SparkRun run =
        failing(
            report,
            Integer.MAX_VALUE,
            () -> SparkRun.local(DEMO, out, "--parquet", "--master", "local[2,4]"));
    assertEquals("A file could not be read or written: the disk is full\n", run.err());
    assertEquals(3, run.status());
    assertFalse(Files.exists(out));
  }

  private interface Run {
    SparkRun run();
  }

  private static SparkRun failing(String report, int times, Run run) {
    // Spark takes these properties into its configuration.
    String disk = "spark.hadoop.fs.file.impl";
    String noCache = "spark.hadoop.fs.file.impl.disable.cache";
    FailingDisk.report = report;
    FailingDisk.times = times;
    System.setProperty(disk, FailingDisk.class.getName());
    System.setProperty(noCache, "true");
    try {
      return run.run();
    } finally {
      System.clearProperty(disk);
      System.clearProperty(noCache);
    }
  }

  /** The sum of the counts of all findings. */
  private static int counted(SparkRun run) {
    return run.out()
        .lines()
        .filter(line -> line.matches(" +[0-9]+  .*"))
        .mapToInt(line -> Integer.parseInt(line.trim().split(" ")[0]))
        .sum();
  }
}
