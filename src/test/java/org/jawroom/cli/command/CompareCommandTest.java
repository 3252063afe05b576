package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
  /** The machine with 2 in left before the door. */
  private static final String TIGHT = "tight,in,xy,30,10 1/4,24,12,3,5/8,3.25,2,";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path example;
  private Path reports;
  private Path changed;

  @BeforeEach
  void copy() throws Exception {
    example = GoldenTables.of("example");
    reports = folder.resolve("reports");
    changed = Files.createDirectory(folder.resolve("changed"));
    for (String name : List.of("machines.csv", "vises.csv", "guards.csv", "settings.csv")) {
      Files.copy(example.resolve(name), changed.resolve(name));
    }
  }

  @Test
  void compare_aReportWithTheTablesItCameFrom_findsNothingChanged() {
    report();
    assertEquals(0, compare(reports, example));
    assertEquals(
        List.of(
            "Old: " + reports + " (a report, as it stands)",
            "New: " + example + " (tables, solved now)",
            "      0  got worse",
            "      0  got better",
            "     36  unchanged"),
        out.toString().lines().toList());
    assertEquals("", err.toString());
  }

  /**
   * The door moved in by 0.03 in = 0.762 mm. Where the door alone limits and the vise may be moved
   * both ways between door and cover, half of that is lost; the golden shop has what there was. A
   * limited one keeps the room to tap it square, 2 mm, over a narrower opening.
   */
  @Test
  void compare_aDoorMovedIn_listsWhatItCost() throws IOException {
    report();
    edit("machines.csv", TIGHT, TIGHT.replace(",2,", ",1.97,"));

    assertEquals(0, compare(reports, changed, "--csv"));

    assertEquals(
        List.of(
            "machine,vise,change,old_verdict,new_verdict,old_margin_mm,new_margin_mm,limited_by",
            "tight,six inch,worse,limited,limited,2.000,2.000,door",
            "tight,six inch handle,worse,limited,limited,2.000,2.000,door",
            "tight,six inch full swing,worse,limited,limited,2.000,2.000,door",
            "tight,centred,worse,fits,fits,39.575,39.194,door"),
        out.toString().lines().toList());
  }

  @Test
  void compare_bothTablesTheOtherWayRound_listsTheGains() throws IOException {
    edit("machines.csv", TIGHT, TIGHT.replace(",2,", ",1.97,"));

    assertEquals(0, compare(changed, example, "--show", "mm"));

    List<String> lines = out.toString().lines().toList();
    assertTrue(lines.contains("      4  got better"), out.toString());
    assertTrue(lines.contains("  tight x six inch: still limited"), out.toString());
    assertTrue(
        lines.contains(
            "      margin over the full opening -10.0 → -9.6 mm; usable 95.3 to 152.4 → 92.2"),
        out.toString());
    assertTrue(lines.stream().skip(2).allMatch(line -> line.length() <= 80), out.toString());
  }

  @Test
  void compare_withAnOption_appliesItToTablesOnly() {
    report();
    assertEquals(0, compare(reports, example, "--clearance", "8mm", "--show", "in"));
    assertTrue(
        out.toString()
            .contains("  exact x six inch: fits → limited\n      margin 0.00 → 0.07 in; "),
        out.toString());

    out.getBuffer().setLength(0);
    assertEquals(0, compare(reports, reports, "--clearance", "8mm"));
    assertTrue(out.toString().contains("     36  unchanged"), out.toString());
    assertEquals(
        "Note: both are reports, taken as they stand; the settings given change nothing.",
        err.toString().strip());
  }

  @Test
  void compare_aMeasurementTaken_isNowKnown() throws IOException {
    edit(
        "machines.csv",
        "3,14,100,80,,none,none,100,500,300,0",
        "3,14,100,80,20,none,none,100,500,300,0");

    assertEquals(0, compare(example, changed));

    assertTrue(out.toString().contains("      5  now known\n"), out.toString());
    assertTrue(
        out.toString().contains("  not-measured x six inch: unknown → fits\n"), out.toString());
  }

  @Test
  void compare_aMachineTakenAwayAndAViseRenamed_namesThem() throws IOException {
    edit("vises.csv", "wide bolts,", "wide,");
    edit("machines.csv", "tighter,", "tightest,");

    assertEquals(0, compare(example, changed));

    assertTrue(
        out.toString()
            .endsWith(
                "Only in the old:\n  machine tighter\n  vise wide bolts\n"
                    + "Only in the new:\n  machine tightest\n  vise wide\n"),
        out.toString());
  }

  @Test
  void compare_columnsOfALaterVersion_disturbNothing() throws IOException {
    report();
    Path file = reports.resolve("pairings.csv");
    List<String> longer =
        Files.readAllLines(file).stream()
            .map(line -> line + (line.startsWith("machine,") ? ",remedy" : ",\"raise, by 3\""))
            .toList();
    Files.write(file, longer);

    assertEquals(0, compare(file, example));

    assertTrue(out.toString().contains("     36  unchanged"), out.toString());
  }

  /** As a spreadsheet saves it after sorting, where people write a decimal comma. */
  @Test
  void compare_aReportSortedAndSavedByASpreadsheet_findsNothingChanged() throws IOException {
    report();
    Path file = reports.resolve("pairings.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    assertTrue(lines.stream().noneMatch(line -> line.contains("\"")), "no cell needs quotes");
    Collections.reverse(lines.subList(1, lines.size()));
    Files.write(
        file,
        lines.stream()
            .map(line -> line.replace(".000,", ",").replaceAll("\\b;", " "))
            .map(line -> line.replace(',', ';').replaceAll("(\\d)\\.(\\d)", "$1,$2"))
            .toList());

    assertEquals(0, compare(reports, example));

    assertTrue(out.toString().contains("     36  unchanged"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void compare_aReportThatHasAPairingTwice_isOneLineAndStatus3() throws IOException {
    report();
    Path file = reports.resolve("pairings.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    lines.add(lines.get(1));
    Files.write(file, lines);

    assertEquals(3, compare(example, reports));

    assertTrue(
        err.toString()
            .startsWith(
                file + " is no report of jawroom's: row 38 has the same pairing as row 2, "),
        err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void compare_aReportThatIsNone_isOneLineAndStatus3() throws IOException {
    Path file = Files.createDirectory(reports).resolve("pairings.csv");
    Files.writeString(file, "machine,vise,verdict\nroomy,plain,fits\n");

    assertEquals(3, compare(example, reports));

    assertEquals(
        file
            + " is no report of jawroom's: it has no columns margin_mm, best_margin_mm, limited_by,"
            + " limiting_part, limiting_situation, limiting_opening, usable_from_mm, usable_to_mm, missing",
        err.toString().strip());
    assertEquals("", out.toString());
    assertEquals(3, compare(folder.resolve("nowhere"), example));
  }

  @Test
  void compare_faultyTables_listsTheFaultsOfBoth() throws IOException {
    Path other = Files.createDirectory(folder.resolve("empty"));
    Files.writeString(other.resolve("machines.csv"), "machine\n");
    edit("machines.csv", "roomy,mm,xy,600", "roomy,mm,xy,-600");

    assertEquals(1, compare(changed, other));

    List<String> lines = err.toString().lines().toList();
    assertEquals("In " + changed + ":", lines.get(0));
    assertTrue(
        lines.get(1).startsWith("machines.csv row 2, column table_length: \"-600\" "),
        lines.get(1));
    assertTrue(lines.contains("In " + other + ":"), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void compare_wrongOption_isNamedOnceAndStatus2() {
    assertEquals(2, compare(example, changed, "--clearance", "wide"));
    assertEquals(1, err.toString().lines().count(), err.toString());
    report();
    assertEquals(2, compare(reports, reports, "--show", "furlong"));
    assertEquals(2, run("compare", example.toString()));
  }

  @Test
  void compare_aReportAmongTables_saysThatItWasTaken() throws IOException {
    report();
    Files.copy(reports.resolve("pairings.csv"), changed.resolve("pairings.csv"));
    edit("machines.csv", TIGHT, TIGHT.replace(",2,", ",1.97,"));

    assertEquals(0, compare(example, changed));

    assertTrue(out.toString().contains("     36  unchanged"), out.toString());
    assertEquals(
        "Note: "
            + changed
            + " holds tables too; its pairings.csv was taken as it stands, the tables were"
            + " not solved.",
        err.toString().strip());
  }

  @Test
  void compare_writesNoFile() throws IOException {
    assertEquals(0, compare(example, changed));
    try (Stream<Path> files = Files.list(changed)) {
      assertEquals(4, files.count());
    }
    assertFalse(Files.exists(reports));
  }

  private void report() {
    assertEquals(0, run("matrix", example.toString(), "-o", reports.toString()));
    out.getBuffer().setLength(0);
  }

  private int compare(Path old, Path now, String... options) {
    return run(
        Stream.concat(Stream.of("compare", old.toString(), now.toString()), Stream.of(options))
            .toArray(String[]::new));
  }

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private void edit(String name, String old, String text) throws IOException {
    Path file = changed.resolve(name);
    String before = Files.readString(file);
    assertTrue(before.contains(old));
    Files.writeString(file, before.replace(old, text));
  }
}
