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
import org.jawroom.app.choice.MachineRange;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Length;
import org.jawroom.launch.Main;
import org.jawroom.reference.random.BigShop;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run cut by machine, and how much of it is written. */
class PartsTest {
  private static final Shop SHOP = BigShop.shop(7, 6, 5);

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void write() throws IOException {
    BigShop.write(SHOP, folder.resolve("in"));
  }

  @Test
  void parts_joined_areTheWholeRun() throws IOException {
    run("whole", "--threads", "1");
    run("part1", "--machines", "machine 0001…machine 0003", "--threads", "2");
    run("part2", "--machines", "machine 0004", "--no-workbook", "--threads", "3");
    run("part3", "--machines", "MACHINE 0005..machine 0007", "--no-workbook");

    for (String file : List.of("pairings.csv", "remedies.csv", "unknowns.csv")) {
      String joined = text("part1", file) + text("part2", file) + text("part3", file);
      assertEquals(text("whole", file), joined, file);
    }
  }

  @Test
  void noWorkbook_writesCsvOnly() throws IOException {
    run("out", "--no-workbook");

    assertFalse(Files.exists(folder.resolve("out/matrix.xlsx")));
    assertTrue(Files.exists(folder.resolve("out/remedies.csv")));
  }

  /** They stay, being somebody's, but must not be taken for those of this run. */
  @Test
  void reportsOfAnEarlierRun_thatThisOneDoesNotReplace_areNamed() throws IOException {
    run("out");
    assertFalse(out.toString().contains("earlier run"), out::toString);
    byte[] workbook = Files.readAllBytes(folder.resolve("out/matrix.xlsx"));

    run("out", "--no-remedies", "--no-workbook");

    for (String left : List.of("remedies.csv", "unknowns.csv", "matrix.xlsx")) {
      String line = folder.resolve("out").resolve(left) + " is of an earlier run: do not read it";
      assertTrue(out.toString().contains(line), out::toString);
    }
    assertFalse(out.toString().contains("pairings.csv is of an earlier"), out::toString);
    assertArrayEquals(workbook, Files.readAllBytes(folder.resolve("out/matrix.xlsx")));
  }

  @Test
  void noRemedies_leavesTheirFilesOutAndSaysSo() throws IOException {
    run("out", "--no-remedies");

    assertFalse(Files.exists(folder.resolve("out/remedies.csv")));
    assertFalse(Files.exists(folder.resolve("out/unknowns.csv")));
    assertTrue(out.toString().contains("were not worked out"), out::toString);
    run("full", "--remedies");
    List<String> bare = text("out", "pairings.csv").lines().toList();
    List<String> full = text("full", "pairings.csv").lines().toList();
    assertEquals(full.size(), bare.size());
    for (int i = 1; i < full.size(); i++) {
      assertEquals(counted(full.get(i)), counted(bare.get(i)));
      assertTrue(bare.get(i).endsWith(",,"), bare.get(i));
    }
  }

  /** All but the last two columns, which count how many stand on one table. */
  private static List<String> counted(String row) {
    return List.of(row.split(",", -1)).subList(0, 29);
  }

  @Test
  void machines_nobodyKnows_areNamedInOneLineWithASuggestion() throws IOException {
    assertEquals(2, tried("--machines", "machine 0001…machine 008"));
    assertEquals(
        "There is no machine \"machine 008\" in these tables; did you mean \"machine 0001\"?\n",
        err.toString());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void machines_inTheWrongOrder_areRefused() {
    assertEquals(2, tried("--machines", "machine 0003...machine 0002"));
    assertEquals(
        "\"machine 0002\" stands before \"machine 0003\" in these tables; name it first.\n",
        err.toString());
  }

  @Test
  void machines_withDotsInTheirNames_areFound() {
    Shop dotted =
        new Shop(
            Settings.DEFAULTS,
            List.of(named("no..1"), named("no…2"), named("3")),
            SHOP.vises(),
            List.of());
    PrintWriter lines = new PrintWriter(err, true);

    assertEquals(1, MachineRange.of(dotted, "no..1", lines).orElseThrow().shop().machines().size());
    assertEquals(
        2, MachineRange.of(dotted, "no..1..no…2", lines).orElseThrow().shop().machines().size());
    assertEquals(
        2, MachineRange.of(dotted, "no…2…3", lines).orElseThrow().shop().machines().size());
    assertFalse(MachineRange.of(dotted, "no…2…3", lines).orElseThrow().isFirst());
    assertEquals("", err.toString());
  }

  private static Machine named(String name) {
    MachineDraft draft = new MachineDraft();
    draft.name = name;
    draft.tableLength = 600 * Length.MM;
    draft.tableWidth = 300 * Length.MM;
    return draft.build();
  }

  private String text(String part, String file) throws IOException {
    return Files.readString(folder.resolve(part).resolve(file));
  }

  private void run(String to, String... more) {
    assertEquals(0, tried(to, more), err::toString);
  }

  private int tried(String... more) {
    return tried("out", more);
  }

  private int tried(String to, String[] more) {
    List<String> args =
        new java.util.ArrayList<>(
            List.of(
                "matrix", folder.resolve("in").toString(), "-o", folder.resolve(to).toString()));
    args.addAll(List.of(more));
    return Main.run(
        args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
