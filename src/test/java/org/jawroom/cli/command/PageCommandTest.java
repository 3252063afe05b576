package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  @Test
  void page_ofTheExampleShop_isTheSameFileHoweverManyThreads() throws Exception {
    Path one = folder.resolve("deep/one.html");
    Path other = folder.resolve("other.html");
    assertEquals(0, run(example(), "-o", one.toString(), "--threads", "1"));
    assertEquals(0, run(example(), "-o", other.toString(), "--threads", "3"));
    assertEquals(List.of("Written: " + one, "Written: " + other), out.toString().lines().toList());
    assertEquals(Files.readString(one), Files.readString(other));
    assertTrue(Files.readString(one).startsWith("<!DOCTYPE html>"));
  }

  @Test
  void page_ofSomeMachines_hasNoOthers() throws Exception {
    Path demo = Path.of("inputs", "demo");
    Path page = folder.resolve("part.html");
    assertEquals(0, run(demo, "-o", page.toString(), "--machines", "knee mill"), err.toString());
    assertTrue(Files.readString(page).contains("\"name\":\"knee mill\""));
    assertFalse(Files.readString(page).contains("\"name\":\"small closed mill\""));
    assertEquals(2, run(demo, "-o", page.toString(), "--machines", "knee mil"));
    assertTrue(err.toString().contains("did you mean \"knee mill\"?"), err.toString());
  }

  @Test
  void page_ofRefusedTables_writesNothing() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    Files.writeString(tables.resolve("machines.csv"), "machine\nmill\n");
    Files.writeString(tables.resolve("vises.csv"), "vise\nplain\n");
    Path page = folder.resolve("page.html");
    assertEquals(1, run(tables, "-o", page.toString()));
    assertFalse(Files.exists(page));
  }

  @Test
  void page_overADirectory_isStatusThree() throws Exception {
    Path page = Files.createDirectory(folder.resolve("page.html"));
    assertEquals(3, run(example(), "-o", page.toString()));
  }

  @Test
  void page_noThreads_isWrongUse() throws Exception {
    assertEquals(2, run(example(), "--threads", "0"));
  }

  private static Path example() throws Exception {
    return GoldenTables.of("example");
  }

  private int run(Path input, String... more) {
    String[] args = new String[2 + more.length];
    args[0] = "page";
    args[1] = input.toString();
    System.arraycopy(more, 0, args, 2, more.length);
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
