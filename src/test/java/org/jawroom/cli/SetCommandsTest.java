package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code explain}, {@code draw} and {@code card} with {@code --set}, on the demo shop. */
class SetCommandsTest {
  private static final String MACHINE = "middle closed mill";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String command, String machine, String... more) {
    List<String> words = new ArrayList<>(List.of(command, "inputs/demo", machine));
    words.addAll(List.of(more));
    return Main.run(
        words.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  @Test
  void explain_setThatFits_listsPlacesLimitsAndCaution() {
    assertEquals(0, run("explain", MACHINE, "--set", "mixed row"));
    String text = out.toString();
    for (String words :
        List.of(
            "mixed row (plain 125, six inch, 2 × centring 80) on middle closed mill: ○ fits,",
            "1. plain 125: handle to the front",
            "4. centring 80",
            "65.3 to the next",
            "2. six inch: 7.5, fixed jaw to coolant nozzles",
            "Lock out before reaching in.")) {
      assertTrue(text.contains(words), words + " in " + text);
    }
    assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
  }

  @Test
  void explain_setThatDoesNotFit_saysWhy() {
    assertEquals(0, run("explain", "bench mill", "--set", "roughing and finishing"));
    assertTrue(
        out.toString().contains("× does not fit\n  neither bolts nor clamps hold plain 160\n"),
        out.toString());
  }

  @Test
  void explain_json_isOneObject() {
    assertEquals(0, run("explain", MACHINE, "--set", "mixed row", "--json"));
    String json = out.toString();
    assertTrue(JsonCheck.isValid(json), json);
    assertTrue(json.contains("\"fits\": \"yes\""), json);
    assertTrue(json.contains("\"to_next_mm\": 65."), json);
  }

  @Test
  void draw_set_numbersTheOthers() throws Exception {
    Path file = folder.resolve("set.svg");
    assertEquals(0, run("draw", MACHINE, "--set", "mixed row", "-o", file.toString()));
    String svg = Files.readString(file);
    assertTrue(svg.contains("vise-4-part-1"), "a fourth vise");
    assertTrue(svg.contains("no. 4"), "its number");
  }

  @Test
  void card_set_hasThePageOfTheTableAndACardForEach() throws Exception {
    Path file = folder.resolve("set.pdf");
    Path checks = folder.resolve("checks.csv");
    assertEquals(
        0,
        run(
            "card",
            MACHINE,
            "--set",
            "mixed row",
            "-o",
            file.toString(),
            "--checks",
            checks.toString()));
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertEquals(9, document.getNumberOfPages());
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (String words :
          List.of(
              "Set mixed row on middle closed mill",
              "leave 6 or more between any two vises",
              "No. 2 of 4:",
              "the vises beside it are not counted")) {
        assertTrue(text.contains(words), words + " in " + text);
      }
    }
    List<String> rows = Files.readAllLines(checks);
    for (String vise : List.of("plain 125", "six inch", "centring 80")) {
      assertTrue(rows.stream().anyMatch(row -> row.contains("," + vise + ",")), vise);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "explain, --set names the vises, plain 125, --set, mixed row",
    "draw, --set names the vises, plain 125, --set, mixed row",
    "card, --set names the vises, plain 125, --set, mixed row",
    "card, --set names how many, --set=mixed row, --count, 2",
    "explain, leave out --set or --job, --set=mixed row, --job, x",
    "explain, There is no set \"row\", --set=row, --show, mm",
    "draw, There is no set \"row\", --set=row, --show, mm",
    "card, There is no set \"row\", --set=row, --show, mm",
  })
  void wrongUse_isOneClearLine(
      String command, String message, String first, String second, String third) {
    assertEquals(2, run(command, MACHINE, first, second, third));
    assertTrue(err.toString().contains(message), err.toString());
  }

  @ParameterizedTest
  @CsvSource({"draw, set.svg", "card, set.pdf"})
  void setWithoutPlace_isNotDrawn(String command, String name) {
    Path file = folder.resolve(name);
    assertEquals(
        2, run(command, "bench mill", "--set", "pair for long parts", "-o", file.toString()));
    assertTrue(err.toString().contains("jawroom explain --set"), err.toString());
    assertFalse(Files.exists(file));
  }

  /** However many there are, the place of each stands beside the views. */
  @Test
  void draw_eightVises_losesNoMeasure() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    for (String table :
        List.of("machines", "vises", "guards", "mounts", "vise_parts", "settings")) {
      Files.copy(Path.of("inputs/demo", table + ".csv"), tables.resolve(table + ".csv"));
    }
    List<String> rows = new ArrayList<>(List.of("set,vise"));
    for (String vise :
        List.of(
            "toolroom 80",
            "plain 125",
            "plain 160",
            "six inch",
            "six inch swivel",
            "long stroke 160",
            "centring 80",
            "centring 125")) {
      rows.add("eight," + vise);
    }
    Files.write(tables.resolve("sets.csv"), rows);
    Path file = folder.resolve("eight.svg");
    String[] draw = {
      "draw", tables.toString(), "bridge mill", "--set", "eight", "-o", file.toString()
    };
    assertEquals(0, Main.run(draw, new PrintWriter(out, true), new PrintWriter(err, true)));
    String svg = Files.readString(file);
    for (int number = 1; number <= 8; number++) {
      assertTrue(svg.contains(">" + number + ". "), "no. " + number);
    }
    assertTrue(svg.contains("Drawn in full: no. "), "the last line");
  }
}
