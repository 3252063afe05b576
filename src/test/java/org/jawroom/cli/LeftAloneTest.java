package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command names the files that it left alone, and none of them among data. */
class LeftAloneTest {
  private static final String NOTES = "notes.csv: left alone: none of the tables";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path tables;

  @BeforeEach
  void tablesAndNotes() throws IOException {
    tables = GoldenTables.of("example");
    Path notes = Files.writeString(tables.resolve("notes.csv"), "whatever");
    notes.toFile().deleteOnExit();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "matrix TABLES -o OUT --no-workbook",
        "page TABLES -o OUT.html",
        "plan TABLES -o OUT",
        "explain TABLES roomy plain",
        "explain TABLES roomy plain --json",
        "draw TABLES roomy plain -o OUT.svg",
        "card TABLES roomy plain -o OUT.pdf",
        "assess TABLES roomy -o OUT",
        "compare TABLES TABLES",
        "compare TABLES TABLES --csv"
      })
  void command_onFilesLeftAlone_namesThemOnStandardError(String line) {
    assertEquals(0, run(line), err.toString());
    assertTrue(err.toString().lines().anyMatch(NOTES::equals), err.toString());
    assertFalse(out.toString().contains("notes.csv"), out.toString());
  }

  @Test
  void check_onFilesLeftAlone_listsThemOnce() {
    assertEquals(0, run("check TABLES"));
    assertEquals(1, (out + err.toString()).lines().filter(one -> one.contains(NOTES)).count());
  }

  /** What was left alone may be what is missing. */
  @ParameterizedTest
  @ValueSource(strings = {"check TABLES", "matrix TABLES -o OUT"})
  void refusal_namesThemBehindTheFaults(String line) throws IOException {
    Files.delete(tables.resolve("vises.csv"));
    assertEquals(1, run(line));
    assertEquals(
        List.of(
            "vises.csv: is missing; a shop needs machines and vises",
            NOTES,
            "1 fault. Nothing was written; put it right and run again."),
        err.toString().lines().toList());
  }

  /** A guard left out makes vises fit that hit it. */
  @Test
  void guards_nearlyNamed_areRefusedAndNothingIsWritten() throws IOException {
    Files.move(tables.resolve("guards.csv"), folder.resolve("kept"));
    Files.copy(folder.resolve("kept"), tables.resolve("guards (1).csv")).toFile().deleteOnExit();
    assertEquals(1, run("matrix TABLES -o OUT"));
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void folder_ofManyOtherFiles_namesSomeAndCountsTheRest() throws IOException {
    for (int i = 0; i < 60; i++) {
      Files.writeString(tables.resolve("photo " + i + ".jpg"), "").toFile().deleteOnExit();
    }
    assertEquals(0, run("explain TABLES roomy plain"));
    List<String> lines = err.toString().lines().toList();
    assertEquals(51, lines.size());
    assertEquals("11 more files or sheets: left alone.", lines.get(50));
  }

  private int run(String line) {
    String[] args = line.split(" ");
    for (int i = 0; i < args.length; i++) {
      args[i] =
          args[i].startsWith("OUT")
              ? folder.resolve(args[i].replace("OUT", "out")).toString()
              : args[i].replace("TABLES", tables.toString());
    }
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
