package org.jawroom.cli.command;

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
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardCommandTest {
  private static final String NO_PLACE =
      "No card for \"six inch full swing\" on \"roomy\": there is no place for it: see jawroom explain.";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void card_severalVises_isAPageEachInTheOrderGivenAndOnlyOnce() throws Exception {
    assertEquals(0, card("roomy", "Plain", "six inch", "plain"));
    assertEquals(
        "Written: " + file() + " (2 cards of two pages)\n", out.toString().replace("\r\n", "\n"));
    try (PDDocument document = Loader.loadPDF(file().toFile())) {
      assertEquals(4, document.getNumberOfPages());
      assertTrue(page(document, 1).contains("plain on roomy"));
      assertTrue(page(document, 3).contains("six inch on roomy"));
      // A4 across, in points.
      assertEquals(595.28, document.getPage(0).getMediaBox().getWidth(), 0.01);
    }
  }

  @Test
  void card_inches_isOnLetterByDefault() throws Exception {
    assertEquals(0, card("roomy", "plain"));
    assertEquals(595.28, width(), 0.01);
    assertEquals(0, card("exact", "six inch"));
    assertEquals(612, width(), 0.01);
    assertEquals(0, card("roomy", "plain", "--show", "in"));
    assertEquals(612, width(), 0.01);
    assertEquals(0, card("roomy", "plain", "--show", "in", "--paper", "A4"));
    assertEquals(595.28, width(), 0.01);
  }

  @Test
  void card_someWithoutAPlace_writesTheRestAndSaysWhich() throws Exception {
    assertEquals(0, card("roomy", "six inch full swing", "plain"));
    assertEquals(List.of(NO_PLACE), err.toString().lines().toList());
    assertEquals("Written: " + file() + " (1 card of two pages)", out.toString().strip());
  }

  @Test
  void card_noneWithAPlace_writesNothing() throws Exception {
    assertEquals(2, card("roomy", "six inch full swing", "wide bolts"));
    assertEquals(
        List.of(
            NO_PLACE,
            "No card for \"wide bolts\" on \"roomy\": neither bolts nor clamps hold it in any"
                + " orientation allowed: see jawroom explain."),
        err.toString().lines().toList());
    assertFalse(Files.exists(file()));
  }

  @Test
  void card_blankThatDecides_saysSo() throws Exception {
    assertEquals(2, card("not-measured", "plain"));
    assertTrue(err.toString().contains("a dimension that decides it is blank"), err.toString());
  }

  @Test
  void card_mistypedNames_writesNothingAndSuggests() throws Exception {
    assertEquals(2, card("roomy", "plain", "plane", "sixinch"));
    assertEquals(
        List.of(
            "There is no vise \"plane\" in these tables; did you mean \"plain\"?",
            "There is no vise \"sixinch\" in these tables; did you mean \"six inch\"?"),
        err.toString().lines().toList());
    assertFalse(Files.exists(file()));
    assertEquals(2, card("rommy", "plain"));
    assertTrue(err.toString().contains("did you mean \"roomy\"?"), err.toString());
  }

  @Test
  void card_wrongPaperOrFile_isWrongUse() throws Exception {
    assertEquals(2, card("roomy", "plain", "--paper", "a5"));
    assertTrue(err.toString().contains("--paper takes a4 or letter, not a5."), err.toString());
    assertEquals(2, run("roomy", "plain", "-o", folder.resolve("card.txt").toString()));
    assertTrue(err.toString().contains("should end in .pdf"), err.toString());
  }

  @Test
  void card_fileThatCannotBeWritten_isOneLine() throws Exception {
    Files.createDirectory(file());
    assertEquals(3, card("roomy", "plain"));
    assertEquals(1, err.toString().lines().count(), err.toString());
  }

  @Test
  void card_job_showsItsOpeningAndHowThePartSits() throws Exception {
    assertEquals(0, job("plain 160", "bearing block"));
    try (PDDocument document = Loader.loadPDF(file().toFile())) {
      assertEquals(2, document.getNumberOfPages());
      String text = page(document, 1).replaceAll("\\s+", " ");
      // By hand: jaws 50 high over the bed, gripped 20 deep; a part 80 high and 95 wide.
      assertTrue(text.contains("Parallels: 30 high"), text);
      assertTrue(text.contains("Stick-up: 60 above the jaws"), text);
      assertTrue(text.contains("grips at 95"), text);
      assertTrue(text.contains("For the job bearing block only."), text);
    }
  }

  /** A job's place has the caveats of a pairing. */
  @Test
  void card_jobWithHeadsLeftOut_says() throws Exception {
    assertEquals(0, job("plain 160", "bearing block", "--shortest-tool", "100mm"));
    assertFalse(text(file()).contains("heads left out"));
    Path without = Files.createDirectory(folder.resolve("without"));
    for (String table : List.of("machines", "vises", "guards", "mounts", "jobs", "vise_parts")) {
      Files.copy(Path.of("inputs/demo", table + ".csv"), without.resolve(table + ".csv"));
    }
    assertEquals(
        0,
        Main.run(
            new String[] {
              "card",
              without.toString(),
              "bridge mill",
              "plain 160",
              "--job",
              "bearing block",
              "-o",
              file().toString()
            },
            new PrintWriter(out, true),
            new PrintWriter(err, true)));
    String text = text(file());
    assertTrue(text.contains("Mind: heads left out: nose not below"), text);
    assertTrue(text.contains("held"), text);
  }

  @Test
  void card_count_showsAllOfThemWhereTheyStand() throws Exception {
    assertEquals(0, count("3"));
    String text = text(file());
    // By hand: base 7 3/4 in = 196.85 mm; positions -303.8, 0 and 303.8 on a table 1000 long:
    // 500 - 303.8 - 98.4 = 97.8; 401.6; 705.4.
    for (String place : List.of("3 side by side:", "97.8", "401.6", "705.4", "leave 6 or more")) {
      assertTrue(text.contains(place), place + " in " + text);
    }
    assertTrue(text.contains("each stands where it is listed"), text);
  }

  @Test
  void card_moreThanStandThere_isRefusedInOneLine() throws Exception {
    assertEquals(2, count("4"));
    assertEquals(1, err.toString().lines().count(), err.toString());
    assertTrue(err.toString().contains("4 do not stand side by side there; at most 3 do."));
    assertFalse(Files.exists(file()));
  }

  @Test
  void card_countOfNone_orOfAJob_isWrongUse() throws Exception {
    assertEquals(2, count("0"));
    assertTrue(err.toString().contains("--count takes a whole number from 1 up."));
    assertEquals(2, job("plain 160", "bearing block", "--count", "2"));
    assertTrue(err.toString().contains("leave out --count or --job"), err.toString());
  }

  private int count(String number) {
    return Main.run(
        new String[] {
          "card",
          "inputs/demo",
          "middle closed mill",
          "six inch",
          "--count",
          number,
          "-o",
          file().toString()
        },
        new PrintWriter(out, true),
        new PrintWriter(err, true));
  }

  private static String text(Path card) throws Exception {
    try (PDDocument document = Loader.loadPDF(card.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void card_jobNotHeld_saysWhyInOneLine() throws Exception {
    assertEquals(2, job("toolroom 80", "bearing block"));
    assertEquals(1, err.toString().lines().count(), err.toString());
    assertTrue(err.toString().contains("\"bearing block\" is not held: "), err.toString());
    assertTrue(err.toString().contains("too wide for the jaws"), err.toString());
    assertFalse(Files.exists(file()));
  }

  private int job(String vise, String job, String... more) {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "card", "inputs/demo", "bridge mill", vise, "--job", job, "-o", file().toString()));
    arguments.addAll(List.of(more));
    return Main.run(
        arguments.toArray(new String[0]), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private Path file() {
    return folder.resolve("card.pdf");
  }

  private double width() throws Exception {
    try (PDDocument document = Loader.loadPDF(file().toFile())) {
      return document.getPage(0).getMediaBox().getWidth();
    }
  }

  private static String page(PDDocument document, int number) throws Exception {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(number);
    stripper.setEndPage(number);
    return stripper.getText(document);
  }

  private int card(String... args) throws Exception {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("-o", file().toString()));
    return run(all.toArray(String[]::new));
  }

  private int run(String... args) throws Exception {
    List<String> all = new ArrayList<>();
    all.add("card");
    all.add(GoldenTables.of("example").toString());
    all.addAll(List.of(args));
    return Main.run(
        all.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
