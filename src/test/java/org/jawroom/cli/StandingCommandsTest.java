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
import org.junit.jupiter.params.provider.ValueSource;

/**
 * {@code matrix} with standing vises, and {@code explain}, {@code draw} and {@code card} with
 * {@code --at}, on the demo shop.
 */
class StandingCommandsTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String command, String... more) {
    List<String> words = new ArrayList<>(List.of(command, "inputs/demo"));
    words.addAll(List.of(more));
    return Main.run(
        words.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private int small(String command, String at, String... more) {
    List<String> words = new ArrayList<>(List.of("bench mill", "toolroom 80", "--at", at));
    words.addAll(List.of(more));
    return run(command, words.toArray(String[]::new));
  }

  private void has(String... words) {
    for (String one : words) {
      assertTrue(out.toString().contains(one), one + " in " + out);
    }
  }

  @Test
  void matrix_standingVises_hasALineForEachMachineAndAReport() throws Exception {
    String[] some = {"--machines", "knee mill..middle closed mill", "--no-workbook"};
    List<String> words = new ArrayList<>(List.of(some));
    words.addAll(List.of("-o", folder.toString()));

    assertEquals(0, run("matrix", words.toArray(String[]::new)));

    has(
        "Standing now:\n",
        "\n  knee mill: plain 160 hits: rear cover - screw rear, closed\n",
        "\n  middle closed mill: plain 160 fits, 2.5 mm to spare; centring 80 fits, 24.5 mm to spare\n");
    assertFalse(out.toString().contains("bench mill"), out.toString());
    assertEquals(5, Files.readString(folder.resolve("standing.csv")).lines().count());
  }

  @Test
  void explain_placeThatFits_listsPlaceGapsWayAndCautions() {
    assertEquals(0, small("explain", "front, left 242.5, front 94"));

    has(
        "toolroom 80 on bench mill, where it stands: ○ fits\nmargin 56 mm,",
        "  base's left side 242.5 from the table's left edge\n",
        "  both bolts in slot 1 (of 3, counted from the front)\n",
        "  to the recommended place: 2.5 to the right\n",
        "   56.00   63.00  handle to table",
        "\n! base overhangs the table by 56, more than a quarter of it\n",
        "Lock out before reaching in.");
    assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80), out.toString());
  }

  /** However the place is written, it is the same. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "front,left 242.5,front 94",
        " Front; LEFT 24.25 cm; front 94 mm",
        "front left 242.5 front 94",
        "front, left 242.5, front 94, mount Base Bolts",
        "front, left 242.5, front 3 89/127 in"
      })
  void explain_placeWrittenOtherwise_isThatPlaceOrRefused(String at) {
    int status = small("explain", at);

    if (at.contains("127")) {
      assertEquals(2, status);
    } else {
      assertEquals(0, status, err.toString());
      has("margin 56 mm", "  fixed-jaw face 94.0 from the table's front edge\n");
    }
  }

  @Test
  void explain_placeOffTheSlots_namesTheNearestThatHolds() {
    assertEquals(0, small("explain", "front, left 242.5, front 245"));
    has("≠ off the slots", "! held nearest with base's left side 242.5 from", "151 to the front");
  }

  /** Nobody has measured how far its screw sticks out behind: no figure stands for that. */
  @Test
  void explain_placeThatRestsOnABlank_printsNoGapForIt() {
    String at = "front, left 300, front 252";
    assertEquals(0, run("explain", "middle closed mill", "swivelling old vise", "--at", at));
    has("       ?       ?  screw rear to ");
    assertFalse(out.toString().contains("-9999"), out.toString());
  }

  @Test
  void explain_json_isOneObject() {
    assertEquals(0, small("explain", "front, left 242.5, front 94", "--json"));
    assertTrue(JsonCheck.isValid(out.toString()), out.toString());
    has("\"says\": \"fits\"", "\"margin_mm\": 56.000", "\"move\": {", "\"x_mm\": 2.500");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "front 3 | is no place; write where the handle points and the two measures of the setup card, as \"front, left 242.5, front 245\", and if need be \", mount NAME\"",
        "rear, left 3, front 4 | has the handle to the rear, which turns of bench mill does not allow",
        "left, left 3x, front 4 | has left \"3x\", which has a unit that is not known; write mm, cm, m or in",
        "left, left 1e3, front 4 | has left \"1e3\", which has an exponent; write it out",
        "left, left 3, front 360.1 | has front \"360.1\", which is far off the table; it measures 180 mm that way",
        "left, left 3, front 4, mount clmps | has mount \"clmps\", which is no mount of toolroom 80; did you mean \"clamps\"?",
      })
  void at_noPlace_isWrongUseInOneLine(String at, String message) {
    for (String command : List.of("explain", "draw", "card")) {
      err.getBuffer().setLength(0);
      List<String> more = new ArrayList<>();
      if (!command.equals("explain")) {
        more.addAll(
            List.of("-o", folder.resolve(command.equals("draw") ? "a.svg" : "a.pdf").toString()));
      }
      assertEquals(2, small(command, at, more.toArray(String[]::new)));
      assertEquals(List.of("--at \"" + at + "\" " + message), err.toString().lines().toList());
    }
    assertEquals("", out.toString());
  }

  /** The setting unit is mm, but the card of a machine given in inches shows inches. */
  @Test
  void at_bareNumberWhereTheCardShowsAnotherUnit_isWrongUse() {
    String at = "front, left 17.5, front 8 in";
    assertEquals(2, run("explain", "knee mill", "plain 160", "--at", at));
    assertEquals(
        "--at \""
            + at
            + "\" has left \"17.5\" without a unit, but the card is in inches; write 17.5 in or 17.5"
            + " mm",
        err.toString().strip());
    assertEquals(
        0, run("explain", "knee mill", "plain 160", "--at", at.replace("17.5,", "17.5 in,")));
    assertEquals(
        0,
        run(
            "explain",
            "knee mill",
            "plain 160",
            "--at",
            "front, left 431, front 203",
            "--show",
            "mm"));
  }

  @Test
  void at_withSomethingElse_isWrongUse() {
    assertEquals(2, small("explain", "front, left 3, front 4", "--job", "bracket"));
    assertEquals(2, small("card", "front, left 3, front 4", "--count", "2"));
    assertEquals(2, small("card", "front, left 3, front 4", "plain 125"));
    assertEquals(
        2, run("draw", "bench mill", "--set", "mixed row", "--at", "front, left 3, front 4"));
    assertEquals(
        4,
        err.toString()
            .lines()
            .filter(
                "--at is the place of one vise: leave it out, or everything but one VISE."::equals)
            .count());
  }

  @Test
  void draw_placeThatFitsOrHits_isDrawn_offTheSlotsIsNot() throws Exception {
    Path file = folder.resolve("there.svg");
    assertEquals(0, small("draw", "front, left 242.5, front 94", "-o", file.toString()));
    assertTrue(Files.readString(file).contains("side 242.5 from the table"));
    Path hits = folder.resolve("hits.svg");
    String there = "front, left 16 31/32 in, front 7 31/32 in";
    assertEquals(0, run("draw", "knee mill", "plain 160", "--at", there, "-o", hits.toString()));
    assertTrue(Files.readString(hits).contains("short by"));
    Path off = folder.resolve("off.svg");
    assertEquals(2, small("draw", "front, left 242.5, front 60", "-o", off.toString()));
    assertEquals(
        List.of(
            "There is nothing to draw: it stands off the slots; jawroom explain --at says more."),
        err.toString().lines().toList());
    assertFalse(Files.exists(off));
  }

  @Test
  void draw_besideOthersOnTheTable_showsThem() throws Exception {
    Path file = folder.resolve("there.svg");
    String there = "front, left 290, front 292";
    assertEquals(
        0, run("draw", "middle closed mill", "plain 160", "--at", there, "-o", file.toString()));
    assertTrue(Files.readString(file).contains("centring 80"));
  }

  @Test
  void draw_besideAnotherOfItsKind_showsThat() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    for (String table : List.of("machines", "guards", "vises", "vise_parts", "mounts")) {
      Files.copy(Path.of("inputs/demo", table + ".csv"), tables.resolve(table + ".csv"));
    }
    Files.writeString(
        tables.resolve("standing.csv"),
        """
        machine,vise,handle_to,from_left,from_front
        middle closed mill,plain 160,front,290,292
        middle closed mill,plain 160,front,700,292
        """);
    Path file = folder.resolve("there.svg");
    List<String> words =
        List.of(
            "draw",
            tables.toString(),
            "middle closed mill",
            "plain 160",
            "--at",
            "front, left 290, front 292",
            "-o",
            file.toString());
    assertEquals(
        0,
        Main.run(
            words.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true)),
        err.toString());
    assertTrue(Files.readString(file).contains(">plain 160<"));
  }

  @Test
  void card_placeThatFits_isOfThatPlace() throws Exception {
    Path card = folder.resolve("card.pdf");
    Path checks = folder.resolve("checks.csv");
    assertEquals(
        0,
        small(
            "card",
            "front, left 242.5, front 94",
            "-o",
            card.toString(),
            "--checks",
            checks.toString()));
    try (PDDocument pdf = Loader.loadPDF(card.toFile())) {
      assertEquals(2, pdf.getNumberOfPages());
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("110 to 380, best 242.5"), text);
    }
    assertTrue(
        Files.readAllLines(checks)
            .get(1)
            .startsWith("bench mill,toolroom 80,front,242.500,94.000,"));
  }

  @Test
  void card_placeThatHitsOrIsOffTheSlots_isNoCard() {
    String file = folder.resolve("card.pdf").toString();
    assertEquals(
        2,
        run(
            "card",
            "knee mill",
            "plain 160",
            "--at",
            "front, left 16 31/32 in, front 7 31/32 in",
            "-o",
            file));
    assertEquals(2, small("card", "front, left 242.5, front 60", "-o", file));
    assertEquals(
        List.of(
            "No card for \"plain 160\" on \"knee mill\": it hits something there or"
                + " stands off the slots: see jawroom explain --at.",
            "No card for \"toolroom 80\" on \"bench mill\": it hits something there or"
                + " stands off the slots: see jawroom explain --at."),
        err.toString().lines().toList());
    assertFalse(Files.exists(Path.of(file)));
  }
}
