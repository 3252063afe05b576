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
import java.util.List;
import org.jawroom.advice.assess.AssessShop;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  @Test
  void assess_nothingNamed_takesEveryCandidate() throws IOException {
    assertEquals(0, assess());
    assertTrue(
        out.toString().startsWith("Better buy: known offer. Why: it holds 2 jobs"), out.toString());
    assertEquals(List.of("blank offer", "known offer"), candidates());
    assertTrue(Files.exists(folder.resolve("assess.xlsx")));
    assertTrue(Files.exists(folder.resolve("assess.pdf")));
  }

  @Test
  void assess_ownedMachineNamedTwice_isTakenOnceAndNotCountedAsOwned() throws IOException {
    assertEquals(0, assess("Small Mill", "small mill"));
    assertEquals(List.of("small mill"), candidates());
    // Beside the narrow mill alone the part made for the small one is held nowhere else.
    String only =
        Files.readAllLines(folder.resolve("assess.csv")).stream()
            .filter(line -> line.contains("only here") && !line.contains("perhaps"))
            .findFirst()
            .orElseThrow();
    assertTrue(only.contains("house part"), only);
  }

  @Test
  void assess_unknownName_suggestsTheNearestAndWritesNothing() {
    assertEquals(2, assess("knwon offer"));
    assertEquals(
        "There is no machine \"knwon offer\" in these tables; did you mean \"known offer\"?",
        err.toString().strip());
    assertFalse(Files.exists(folder.resolve("assess.csv")));
  }

  @Test
  void assess_noCandidate_saysSo() throws Exception {
    Path example = GoldenTables.of("example");
    assertEquals(2, run("assess", example.toString(), "-o", folder.toString()));
    assertEquals(
        "No machine has the status candidate: name the machines to assess.",
        err.toString().strip());
  }

  @Test
  void assess_toolGiven_lowersTheHeightLeft() throws IOException {
    assertEquals(0, assess("known offer", "--tool", "20cm"));
    assertTrue(
        Files.readString(folder.resolve("assess.csv"))
            .contains("known offer,under the spindle,highest,394.000,mm,tool 200.000"));
  }

  @Test
  void assess_toolThatIsNoLength_isWrongUse() {
    assertEquals(2, assess("--tool", "long"));
    assertTrue(err.toString().startsWith("--tool \"long\" is not a length"), err.toString());
    assertEquals(2, assess("--tool=-5"));
  }

  @Test
  void assess_numberOfThreads_changesNothing() throws IOException {
    assertEquals(0, assess("--threads", "1"));
    String one = Files.readString(folder.resolve("assess.csv"));
    assertEquals(0, assess("--threads", "3"));
    assertEquals(one, Files.readString(folder.resolve("assess.csv")));
  }

  @Test
  void demo_madeAgain_isTheOneKept() throws IOException {
    assertEquals(0, run("assess", "inputs/demo", "-o", folder.toString()));
    assertEquals(
        Files.readString(Path.of("reports", "assess.csv")),
        Files.readString(folder.resolve("assess.csv")));
    assertTrue(out.toString().startsWith("Better buy: "), out.toString());
    assertFalse(out.toString().contains("Not settled"), out.toString());
    assertTrue(
        out.toString().contains("swivelling old vise still possible, whatever it is."),
        out.toString());
  }

  private List<String> candidates() throws IOException {
    return Files.readAllLines(folder.resolve("assess.csv")).stream()
        .skip(1)
        .map(line -> line.split(",")[0])
        .distinct()
        .toList();
  }

  private int assess(String... more) {
    List<String> args = new ArrayList<>(List.of("assess", AssessShop.folder().toString()));
    args.addAll(List.of(more));
    args.addAll(List.of("-o", folder.toString()));
    return run(args.toArray(String[]::new));
  }

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
