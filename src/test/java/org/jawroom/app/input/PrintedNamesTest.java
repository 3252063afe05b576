package org.jawroom.app.input;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.drawing.ScriptFonts;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The golden shop <i>example</i> with a vise, a machine or a guard named in letters that are rare.
 */
class PrintedNamesTest {
  /** No font has a letter that everybody may make their own. */
  private static final String LACKING = "\ue000\ue001";

  private static final String ADVICE =
      "no font on this computer has \ue000 (U+E000), \ue001 (U+E001): install one that has, or use"
          + " letters that print.";

  @TempDir private Path folder;
  private Path tables;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void copyTables() throws Exception {
    tables = Files.createDirectory(folder.resolve("tables"));
    try (Stream<Path> files = Files.list(GoldenTables.of("example"))) {
      for (Path file : files.toList()) {
        Files.copy(file, tables.resolve(file.getFileName()));
      }
    }
  }

  @Test
  void card_ofAViseThatCannotBePrinted_isRefusedAndTheOthersAreMade() throws Exception {
    int row = rename("vises.csv", "plain", LACKING);
    assertEquals(2, run("card", "roomy", LACKING));
    assertEquals(
        List.of("No card for \"" + LACKING + "\": " + ADVICE), err.toString().lines().toList());
    assertFalse(Files.exists(file("card")));
    assertTrue(row > 1);

    assertEquals(0, run("card", "roomy", LACKING, "six inch"));
    assertTrue(text("card").contains("six inch on roomy"));
  }

  @Test
  void card_onAMachineThatCannotBePrinted_isRefused() throws Exception {
    rename("machines.csv", "roomy", "roomy " + LACKING);
    Files.deleteIfExists(tables.resolve("guards.csv"));
    Files.deleteIfExists(tables.resolve("jobs.csv"));
    assertEquals(2, run("card", "roomy " + LACKING, "plain"));
    assertEquals(
        List.of("No card for \"roomy " + LACKING + "\": " + ADVICE),
        err.toString().lines().toList());
    assertFalse(Files.exists(file("card")));
  }

  @Test
  void draw_ofAViseThatCannotBePrinted_namesItsRow() throws Exception {
    int row = rename("vises.csv", "plain", LACKING);
    assertEquals(0, run("draw", "roomy", LACKING), err.toString());
    assertEquals(
        List.of("\"" + LACKING + "\" (vises.csv row " + row + ") is printed with dots: " + ADVICE),
        err.toString().lines().toList());
    assertTrue(text("draw").contains("·· (row " + row + ") on roomy"), text("draw"));
  }

  @Test
  void card_withAGuardThatCannotBePrinted_namesItsRow() throws Exception {
    Files.writeString(
        tables.resolve("guards.csv"),
        "machine,guard,side,gap\nroomy,\ue000,rear,20\nroomy,\ue001,front,20\n");
    assertEquals(0, run("card", "roomy", "plain"), err.toString());
    assertTrue(text("card").contains("· (row 2)"), text("card"));
    assertTrue(text("card").contains("· (row 3)"), text("card"));
    assertEquals(2, err.toString().lines().count(), err.toString());
  }

  /** Hebrew is in the built-in typeface, the other way round. */
  @Test
  void cardAndDrawing_ofAViseInAnotherScript_areMadeAndTheSameEachTime() throws Exception {
    String name = "\u05de\u05dc\u05d7\u05e6\u05d9\u05d9\u05dd";
    rename("vises.csv", "plain", name);
    for (String command : List.of("card", "draw")) {
      assertEquals(0, run(command, "roomy", name), err.toString());
      byte[] once = Files.readAllBytes(file(command));
      assertEquals(0, run(command, "roomy", name));
      assertArrayEquals(once, Files.readAllBytes(file(command)), command);
      assertFalse(text(command).contains("·· "), text(command));
    }
    assertEquals("", err.toString());
  }

  @Test
  void card_ofAViseInAScriptThatAFontOfTheMachineHas_isMade() throws Exception {
    ScriptFonts.want(ScriptFonts.DEVANAGARI);
    rename("vises.csv", "plain", ScriptFonts.DEVANAGARI);
    assertEquals(0, run("card", "roomy", ScriptFonts.DEVANAGARI), err.toString());
    assertEquals("", err.toString());
  }

  /** Two names may differ in their last letter alone. */
  @Test
  void draw_ofNamesOfAHundredWideLetters_hasEveryLetterOfBoth() throws Exception {
    String name = "W".repeat(99) + "1";
    rename("vises.csv", "plain", name);
    assertEquals(0, run("draw", "roomy", name), err.toString());
    assertTrue(text("draw").replace(" ", "").contains(name + "onroomy"), text("draw"));
  }

  /** Returns the row, as people count. */
  private int rename(String table, String from, String to) throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(tables.resolve(table)));
    for (int i = 1; i < lines.size(); i++) {
      if (lines.get(i).startsWith(from + ",")) {
        lines.set(i, to + lines.get(i).substring(from.length()));
        Files.write(tables.resolve(table), lines);
        return i + 1;
      }
    }
    throw new IllegalArgumentException(from + " is not in " + table);
  }

  private Path file(String command) {
    return folder.resolve(command + ".pdf");
  }

  private String text(String command) throws Exception {
    try (PDDocument document = Loader.loadPDF(file(command).toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private int run(String command, String machine, String... vises) {
    List<String> args = new ArrayList<>(List.of(command, tables.toString(), machine));
    args.addAll(List.of(vises));
    args.addAll(List.of("-o", file(command).toString()));
    return Main.run(
        args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
