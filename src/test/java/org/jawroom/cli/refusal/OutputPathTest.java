package org.jawroom.cli.refusal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code -o} takes, and what it refuses before anything is written. */
class OutputPathTest {
  private static final Path TABLES = CommandRun.TABLES;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"matrix", "assess", "plan", "reconcile"})
  void outputThatIsNoFolder_isOneLine(String command) throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    for (Path there : List.of(file, file.resolve("below"))) {
      assertLine(command, there, file + " could not be written: it is no folder; name a folder");
    }
    assertEquals("mine", Files.readString(file));
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("nowhere"));
    assertLine(
        command, link, link + " could not be written: it is a link to nowhere; name a folder");
    assumeTrue(Files.exists(Path.of("/dev/null")), "needs the devices of Unix");
    assertLine(
        command,
        Path.of("/dev/null"),
        "/dev/null could not be written: it is no folder; name a folder");
  }

  private static void assertLine(String command, Path output, String line) {
    CommandRun run = CommandRun.of(command, TABLES.toString(), "-o", output.toString());
    assertEquals(3, run.status(), run.err());
    assertEquals(line + "\n", run.err());
  }

  @ParameterizedTest
  @CsvSource({
    "page, page.xlsx",
    "page, page",
    "draw, drawing.dxf",
    "draw, svg",
    "card, card.svg",
    "page, -",
    "draw, -",
    "card, -",
    "page, /",
    "draw, /",
    "card, /",
    "page, ..",
    "draw, .",
    "card, ."
  })
  void file_ofAnotherEnding_isWrongUse(String command, String name) throws Exception {
    String[] args = args(command, TABLES, "x");
    args[args.length - 1] = name;
    CommandRun run = CommandRun.of(args);
    assertEquals(2, run.status(), run.err());
    assertTrue(run.err().startsWith(name + " should end in ."), run.err());
    assertEquals(List.of(), names(folder));
  }

  @ParameterizedTest
  @ValueSource(strings = {"assess", "plan"})
  void folder_thatIsADash_isWrongUse(String command) {
    CommandRun run = CommandRun.of(command, TABLES.toString(), "-o", "-");
    assertEquals(2, run.status());
    assertTrue(
        run.err()
            .startsWith(
                "These files go into a folder, not to standard output; for a folder of that name"
                    + " write ./-"),
        run.err());
    assertTrue(Files.notExists(Path.of("-")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"matrix", "assess", "plan", "page", "draw", "card"})
  void output_thatIsEmpty_isWrongUse(String command) {
    for (String nothing : List.of("", " ", "\t")) {
      String[] args = args(command, TABLES, "x");
      args[args.length - 1] = nothing;
      CommandRun run = CommandRun.of(args);
      assertEquals(2, run.status());
      assertTrue(
          run.err().contains("'--output'")
              && run.err().contains("is empty; for this folder write ."),
          run.err());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"matrix", "check", "compare", "template", "explain", "page"})
  void input_thatIsEmpty_isWrongUse(String command) {
    CommandRun run = CommandRun.of(command, "", "x", "y");
    assertEquals(2, run.status());
    assertTrue(run.err().contains("is empty; for this folder write ."), run.err());
  }

  @Test
  void template_overWhateverIsThere_isRefused() throws Exception {
    for (String[] args :
        List.of(
            new String[] {"template", folder.resolve("shop.xlsx").toString()},
            new String[] {"template", "--csv", folder.toString()})) {
      Path file = folder.resolve(args.length == 2 ? "shop.xlsx" : "vises.csv");
      for (String text : List.of("a day's measuring", "")) {
        Files.writeString(file, text);
        CommandRun run = CommandRun.of(args);
        assertEquals(
            new CommandRun(3, file + " is there already; name another, or move it away first.\n"),
            run);
        assertEquals(List.of(file.getFileName().toString()), names(folder));
        assertEquals(text, Files.readString(file));
      }
      Files.delete(file);
    }
  }

  @Test
  void template_besideAPartOfThatName_leavesIt() throws Exception {
    Path part = Files.writeString(folder.resolve("shop.xlsx.part"), "mine");
    assertEquals(0, CommandRun.of("template", folder.resolve("shop.xlsx").toString()).status());
    assertEquals("mine", Files.readString(part));
    assertEquals(2, names(folder).size());
  }

  @Test
  void template_asADash_isWrongUse() {
    assertEquals(2, CommandRun.of("template", "-").status());
    assertEquals(2, CommandRun.of("template", "--csv", "-").status());
    assertEquals(2, CommandRun.of("template", "/").status());
    assertTrue(Files.notExists(Path.of("-")));
  }

  private String[] args(String command, Path input, String name) {
    return CommandRun.args(command, input, folder, name);
  }

  private static List<String> names(Path directory) throws IOException {
    try (Stream<Path> all = Files.list(directory)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
