package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jawroom.launch.Main;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop worked by hand in {@code checks/hand}, whose README has the arithmetic. */
class ReconcileCommandTest {
  private static final Path HAND = Path.of("src/test/resources/org/jawroom/checks/hand");

  private static final String PAGE =
      """
      What the machine says, in millimetres
      Closer than the tables allow (dangerous):
        hand vise on hand mill, handle to the front: screw rear – rear cover along y: found 70, expected
          79 to 81: 9 too close
        hand vise on hand mill, handle to the front: base – rear cover along y: found 100, expected 109 to
          111: 9 too close
      One wrong reading would explain the checks, one of these 2 choices:
        table_width of hand mill must be 289 to 291 (written 300)
        rear_gap of hand mill must be 49 to 51 (written 60)
        Measure table_width of hand mill by itself: it tells them apart.
      In doubt until the tables are put right, every pairing of:
        hand mill
      Agrees with the tables:
        hand vise on hand mill, handle to the rear: base – door along y: found 250, expected 249 to 251
      3 checks: closer 2, farther 0, agrees 1.
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void shopByHand_isWrittenWhole() throws Exception {
    assertEquals(0, run(HAND, folder), err.toString());
    assertEquals(PAGE, Files.readString(folder.resolve("reconciliation.txt")));
    assertEquals(
        List.of(
            "machine,vise,handle_to,from_left,from_front,part,guard,opening,situation,axis,found,"
                + "tolerance,source,measured,unit,expected_from_mm,expected_to_mm,says,by_mm",
            "hand mill,hand vise,front,200.000,200.000,screw rear,rear cover,closed,cutting,y,70.000,"
                + "0.000,,\"A. B., Monday\",mm,79.000,81.000,closer,9.000",
            "hand mill,hand vise,front,200.000,200.000,base,rear cover,closed,cutting,y,100.000,"
                + "0.000,,\"A. B., Monday\",mm,109.000,111.000,closer,9.000",
            "hand mill,hand vise,rear,200.000,200.000,base,door,closed,cutting,y,250.000,"
                + "0.000,,\"A. B., Monday\",mm,249.000,251.000,agrees,"),
        Files.readAllLines(folder.resolve("checks.csv")));
    assertEquals(
        List.of(
            "group,choice,table,name,reading,written_mm,must_be_from_mm,must_be_to_mm,explains",
            "1,1,machines,hand mill,table_width,300.000,289.000,291.000,2",
            "1,2,machines,hand mill,rear_gap,60.000,49.000,51.000,2"),
        Files.readAllLines(folder.resolve("suspects.csv")));
    assertEquals(
        List.of("table,name,reading,was_from_mm,was_to_mm,now_from_mm,now_to_mm"),
        Files.readAllLines(folder.resolve("narrowed.csv")));
  }

  /** By hand: rear_gap must be 49 to 51, whatever else is as written. */
  @Test
  void suspectPutIn_explainsTheChecksWithinItsRangeAlone() throws Exception {
    for (String gap : List.of("49", "50.123456", "51")) {
      assertEquals(1, suspects(gap), gap);
    }
    for (String gap : List.of("48.999999", "51.000001")) {
      assertTrue(suspects(gap) > 1, gap);
    }
  }

  /** The number of lines of suspects.csv, its header among them. */
  private int suspects(String rearGap) throws Exception {
    Path tables = hand();
    replace(tables.resolve("machines.csv"), "100,60,none,none", "100," + rearGap + ",none,none");
    assertEquals(0, run(tables, folder.resolve("out")), err.toString());
    return Files.readAllLines(folder.resolve("out/suspects.csv")).size();
  }

  /** Against the verdicts of the tables with either end typed in. */
  @Test
  void suspectPutIn_thatChangesAVerdict_isListed() throws Exception {
    Path tables = hand();
    replace(tables.resolve("machines.csv"), "100,60,none,none", "20,-30,none,none");
    Files.writeString(
        tables.resolve("checks.csv"),
        """
        machine,vise,handle_to,from_left,from_front,part,guard,axis,found
        hand mill,hand vise,front,200,200,base,rear cover,y,10
        hand mill,hand vise,rear,200,200,base,door,y,170
        """);
    assertEquals(0, run(tables, folder.resolve("out")), err.toString());
    String page =
        Files.readString(folder.resolve("out/reconciliation.txt")).replaceAll("\\s+", " ");
    assertTrue(
        page.contains(
            "rear_gap of hand mill must be -41 to -39 (written -30)"
                + " then hand vise on hand mill: fits becomes limited"),
        page);
    for (String end : List.of("-41", "-39")) {
      Path typed = hand();
      replace(typed.resolve("machines.csv"), "100,60,none,none", "20," + end + ",none,none");
      Shop shop = ShopReader.read(typed, Map.of()).shop().orElseThrow();
      assertEquals(
          Verdict.LIMITED,
          Pairing.solve(shop.settings(), shop.machines().get(0), shop.vises().get(0)).verdict());
    }
  }

  /** The base stands 110 from the cover if rear_gap is 60; 100 leaves 50, and 1 for the ends. */
  @Test
  void openReading_isNarrowed() throws Exception {
    Path tables = hand();
    replace(tables.resolve("machines.csv"), "100,60,none,none", "100,40..80,none,none");
    assertEquals(0, run(tables, folder.resolve("out")), err.toString());
    assertEquals(
        "machines,hand mill,rear_gap,40.000,80.000,49.000,51.000",
        Files.readAllLines(folder.resolve("out/narrowed.csv")).get(1));
    assertEquals(1, Files.readAllLines(folder.resolve("out/suspects.csv")).size());
  }

  @Test
  void again_replacesItsOwnFilesButNotATable() throws Exception {
    assertEquals(0, run(HAND, folder));
    assertEquals(0, run(HAND, folder), err.toString());
    Path table = folder.resolve("checks.csv");
    Files.copy(
        HAND.resolve("checks.csv"), table, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertEquals(3, run(HAND, folder));
    assertEquals(Files.readString(HAND.resolve("checks.csv")), Files.readString(table));
    Path tables = hand();
    assertEquals(2, run(tables, tables));
    assertEquals(
        Files.readString(HAND.resolve("checks.csv")),
        Files.readString(tables.resolve("checks.csv")));
  }

  @Test
  void reportAmongTheTables_isRefusedAsAReport() throws Exception {
    assertEquals(0, run(HAND, folder));
    Path tables = hand();
    Files.copy(
        folder.resolve("checks.csv"),
        tables.resolve("checks.csv"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertEquals(1, run(tables, folder.resolve("out")));
    assertTrue(err.toString().contains("is the report of checks, not the table"), err.toString());
  }

  @Test
  void noChecks_isWrongUseInOneLine() {
    assertEquals(2, run(Path.of("inputs/demo"), folder.resolve("out")));
    assertEquals(
        "There are no checks in inputs/demo: fill in the table checks; card --checks FILE.csv writes"
            + " its rows.",
        err.toString().strip());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  /** Nothing of the vise is beside the door along x, since the door fills everything there. */
  @Test
  void checkThatCannotBe_isListedAsNotCompared() throws Exception {
    Path tables = hand();
    replace(tables.resolve("checks.csv"), "door,closed,cutting,y", "door,closed,cutting,x");
    assertEquals(0, run(tables, folder.resolve("out")), err.toString());
    assertTrue(out.toString().contains("Not compared: there is no such gap"), out.toString());
    assertTrue(
        out.toString().contains("3 checks: closer 2, farther 0, agrees 0, not compared 1."),
        out.toString());
    assertTrue(
        Files.readAllLines(folder.resolve("out/checks.csv")).get(3).endsWith(",mm,,,,"),
        "empty cells");
  }

  @Test
  void faults_areAllListedWithWhatWouldBeRight() throws Exception {
    Path tables = hand();
    Files.writeString(
        tables.resolve("checks.csv"),
        """
        machine,vise,handle_to,from_left,from_front,part,guard,opening,situation,axis,found
        hand mil,hand vise,front,200,200,base,door,closed,cutting,y,1
        hand mill,hand visa,front,200,200,base,door,closed,cutting,y,1
        hand mill,hand vise,up,200,200,base,door,closed,cutting,y,1
        hand mill,hand vise,front,200,200,screw raer,dor,closed,cutting,y,1
        hand mill,hand vise,front,200,200,base,door,101,cutting,y,1
        hand mill,hand vise,front,200,200,base,door,closed,parked,u,-1
        hand mill,hand vise,front,,200,base,door,closed,cutting,y,
        """);
    assertEquals(1, run(tables, folder.resolve("out")));
    String faults = err.toString();
    assertEquals(11, faults.lines().filter(line -> line.startsWith("checks.csv")).count(), faults);
    for (String right :
        List.of(
            "did you mean \"hand mill\"?",
            "did you mean \"hand vise\"?",
            "did you mean \"screw rear\"?",
            "did you mean \"door\"?",
            "front, right, rear",
            "from opening_min to opening_max")) {
      assertTrue(faults.contains(right), right + "\n" + faults);
    }
  }

  private Path hand() throws Exception {
    Path tables = Files.createTempDirectory(folder, "tables");
    try (Stream<Path> all = Files.list(HAND)) {
      for (Path table : all.toList()) {
        Files.copy(table, tables.resolve(table.getFileName()));
      }
    }
    return tables;
  }

  private static void replace(Path file, String text, String by) throws Exception {
    String before = Files.readString(file);
    assertTrue(before.contains(text), before);
    Files.writeString(file, before.replace(text, by));
  }

  private int run(Path tables, Path output) {
    err.getBuffer().setLength(0);
    return Main.run(
        new String[] {"reconcile", tables.toString(), "-o", output.toString()},
        new PrintWriter(out, true),
        new PrintWriter(err, true));
  }
}
