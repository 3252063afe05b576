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
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.fixture.TestShop;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A vise turned on its swivel base: where it stands, in sets, on cards, in plans. */
class TurnedCommandsTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeTables() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    TestShop.in(tables)
        .machine("mill", "table_length", "1200")
        .vise(
            "swivel",
            "quantity",
            "2",
            "swivel_angles",
            "30",
            "swivel_u",
            "50",
            "opening_max",
            "100",
            "base_width",
            "160",
            "rear_reach",
            "60",
            "front_reach",
            "140",
            "fixed_jaw_thickness",
            "30",
            "moving_jaw_thickness",
            "30",
            "rear_projection_closed",
            "none",
            "rear_projection_open",
            "none",
            "front_projection_closed",
            "20",
            "front_projection_open",
            "60",
            "screw_height",
            "50",
            "screw_diameter",
            "24",
            "handle_radius",
            "none",
            "bolt_spacing",
            "100",
            "bolt_u",
            "50",
            "bolt_hole_u",
            "16",
            "bolt_hole_v",
            "16")
        .job("block")
        .standing("vise", "swivel @30", "from_left", "400", "from_front", "100")
        .set("vise", "swivel")
        .set("vise", "swivel @-30")
        .read()
        .shop()
        .orElseThrow();
  }

  private int run(String command, String... more) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    List<String> words = new ArrayList<>(List.of(command, folder.resolve("tables").toString()));
    words.addAll(List.of(more));
    return Main.run(
        words.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private void has(String... words) {
    for (String one : words) {
      assertTrue(out.toString().contains(one), one + " in " + out);
    }
  }

  @Test
  void matrix_standingTurned_isJudgedAndReportedByItsName() throws Exception {
    assertEquals(0, run("matrix", "-o", folder.resolve("reports").toString(), "--no-workbook"));
    has("  mill: swivel @30 ");
    List<String> rows = Files.readAllLines(folder.resolve("reports/standing.csv"));
    assertTrue(rows.get(1).contains(",swivel @30,"), rows.get(1));
    assertTrue(
        Files.readString(folder.resolve("reports/sets.csv")).contains("swivel @-30"), "its name");
  }

  @Test
  void explain_atAPlace_measuresWithTheJawsSquare() {
    assertEquals(0, run("explain", "mill", "swivel @30", "--at", "front, left 400, front 100"));
    has(
        "swivel @30 on mill, where it stands:",
        "fixed-jaw face (jaws square) 100.0 from the table's front edge",
        "jaws turned, claimed up to 5 mm");
    assertTrue(
        out.toString()
            .replaceAll("\\s+", " ")
            .contains("room to tap it square is computed at that angle"),
        out.toString());
  }

  @Test
  void explain_set_listsTheTurnedOneAndItsCaution() {
    assertEquals(0, run("explain", "mill", "--set", "pair"));
    has(
        "pair (swivel, swivel @-30) on mill: ",
        ". swivel @-30: handle to the ",
        "! swivel @-30: jaws turned, claimed up to 5 mm");
  }

  @Test
  void draw_atAPlaceAndASet_showsTheTrueOutline() throws Exception {
    for (List<String> words :
        List.of(
            List.of("mill", "swivel @30", "--at", "front, left 400, front 100"),
            List.of("mill", "--set", "pair"))) {
      List<String> more = new ArrayList<>(words);
      Path file = folder.resolve("a.svg");
      more.addAll(List.of("-o", file.toString()));
      assertEquals(0, run("draw", more.toArray(String[]::new)), err.toString());
      Matcher part =
          Pattern.compile("<g id=.plan-(vise-2-)?part-\\d+.*?</g>", Pattern.DOTALL)
              .matcher(Files.readString(file));
      assertTrue(
          part.results().map(MatchResult::group).anyMatch(group -> group.contains("<path")),
          words.toString());
    }
  }

  @Test
  void plan_withATurnedViseStanding_countsItAsTheViseOfItsRow() {
    assertEquals(0, run("plan", "-o", folder.resolve("plan").toString()), err.toString());
  }

  private String cardText(String... more) throws Exception {
    Path file = folder.resolve("card.pdf");
    List<String> words = new ArrayList<>(List.of(more));
    words.addAll(List.of("-o", file.toString()));
    assertEquals(0, run("card", words.toArray(String[]::new)), err.toString());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  /** Everything is measured with the jaws square; a gap is a bound where something turns. */
  @Test
  void card_turned_isSetUpSquareAndCheckedAtTheAngle() throws Exception {
    Path checks = folder.resolve("checks.csv");
    String text = cardText("mill", "swivel @30", "--checks", checks.toString());
    for (String words :
        List.of(
            "swivel @30 on mill",
            "fixed-jaw face (jaws square)",
            "Angle: 30 degrees counterclockwise, seen from above, set last",
            "Set the swivel to 0, jaws square; lock it.",
            "Swing it to 30 degrees counterclockwise, seen from above; lock the bolts of the swivel.",
            "Swing: not computed with the jaws square: see swivel,",
            "jaws closed, then fully open",
            "never less: leave it out of the table checks",
            "What turns is judged up to 5 mm too large, also where room to tap it square is computed.",
            "one degree off moves an end by 1.8 % of its distance")) {
      assertTrue(text.contains(words), words + " in " + text);
    }
    assertEquals(1, Files.readAllLines(checks).size());
    assertEquals(
        "No rows of checks for \"swivel @30\": checks are made with the jaws square.\n",
        err.toString());
  }

  @Test
  void card_turnedTheOtherWay_saysClockwise() throws Exception {
    assertTrue(
        cardText("mill", "swivel @-30", "--at", "front, left 520, front 200")
            .contains("Swing it to 30 degrees clockwise, seen from above"));
  }

  /** A jaw at an angle has no one X and Y to type in. */
  @Test
  void card_jobOfATurnedVise_leavesOutTheFaceOfItsJaw() throws Exception {
    String text = cardText("mill", "swivel @30", "--job", "block");
    assertTrue(text.contains("no X and Y of it here; pick up the part"), text);
    assertFalse(text.contains("from the spindle's mid-travel"), text);
  }

  @Test
  void card_setWithATurnedVise_hasRowsOfChecksOfTheOtherAlone() throws Exception {
    Path checks = folder.resolve("checks.csv");
    String text = cardText("mill", "--set", "pair", "--checks", checks.toString());
    assertTrue(text.contains("Swing one at an angle last;"), text);
    List<String> rows = Files.readAllLines(checks);
    assertTrue(rows.size() > 1);
    assertTrue(rows.stream().skip(1).allMatch(row -> row.contains(",swivel,")), rows.toString());
  }
}
