package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jawroom.fixture.PartOfDemo;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The locale C, in which Java reads no name beyond ASCII; the output is the same as in any. */
class PlainLocaleTest {
  private static final String WHY =
      " holds characters that cannot be read under this locale (ANSI_X3.4-1968); run again with"
          + " LC_ALL=C.UTF-8";

  @TempDir private Path folder;
  private Path tables;

  @BeforeEach
  void copyTables() throws IOException {
    assumeTrue(
        System.getProperty("os.name").equals("Linux")
            && "UTF-8".equals(System.getProperty("sun.jnu.encoding")),
        "needs a Linux, and names in UTF-8 to hand on");
    tables = PartOfDemo.in(folder.resolve("tables"));
    try (Stream<Path> all = Files.list(tables)) {
      for (Path table : all.toList()) {
        String text =
            Files.readString(table).replace(PartOfDemo.VISE, "\u00e9tau 160 \u2013 \u4e2d");
        Files.writeString(table, text);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "matrix TABLES -o \ufffd",
        "matrix \ufffd",
        "check \ufffd",
        "template \ufffd.xlsx",
        "template --csv \ufffd",
        "explain TABLES \ufffd x",
        "draw TABLES \ufffd x",
        "card TABLES \ufffd x",
        "page TABLES -o \ufffd.html",
        "assess TABLES \ufffd",
        "plan TABLES --keep \ufffd",
        "compare TABLES \ufffd",
        "survey \ufffd"
      })
  void argument_thatJavaCouldNotRead_isRefused(String line) throws Exception {
    String[] args = line.replace("TABLES", tables.toString()).split(" ");
    StringWriter err = new StringWriter();
    int status = Main.run(args, new PrintWriter(Writer.nullWriter()), new PrintWriter(err, true));
    assertEquals(2, status);
    assertTrue(err.toString().startsWith("\"\ufffd"), err::toString);
    assertTrue(err.toString().strip().endsWith("\" is not in UTF-8; rename it"), err::toString);
    assertEquals(1, err.toString().lines().count(), err::toString);
    assertEquals(List.of("tables"), names(folder));
  }

  @Test
  void argument_beyondAscii_isRefused() throws Exception {
    Run run = run("C", folder, "matrix", "tables", "-o", "out \u00e9");
    assertEquals(2, run.status());
    assertEquals("\"out \ufffd\ufffd\"" + WHY, run.err().strip());
    assertEquals(List.of("tables"), names(folder));
  }

  @Test
  void currentFolder_beyondAscii_isRefused() throws Exception {
    Path current = Files.createDirectory(folder.resolve("\u00e9"));
    for (String[] args :
        List.of(
            new String[] {"check", "../tables"},
            new String[] {"matrix", tables.toString()},
            new String[] {"template", "--csv", "shop"})) {
      Run run = run("C", current, args);
      assertEquals(2, run.status(), run.err());
      assertTrue(run.err().startsWith("The name of the current folder, "), run.err());
      assertTrue(run.err().contains(WHY), run.err());
    }
    assertEquals(List.of("tables", "\u00e9"), names(folder));
    assertEquals(List.of(), names(current));
  }

  @Test
  void fileOfTheInput_beyondAscii_isRefused() throws Exception {
    Files.writeString(tables.resolve("gu\u00e4rds.csv"), "x");
    Run run = run("C", folder, "matrix", "tables");
    assertEquals(3, run.status(), run.err());
    assertEquals(
        "tables could not be read: the name of the file \"gu\ufffd\ufffdrds.csv\"" + WHY,
        run.err().strip());
    assertEquals(List.of("tables"), names(folder));
  }

  @Test
  void reportsAndOutput_areThoseOfAnyLocale() throws Exception {
    List<List<String>> commands =
        List.of(
            List.of("check", "tables"),
            List.of("matrix", "tables", "-o", "-"),
            List.of("compare", "tables", "tables", "--csv"),
            List.of("matrix", "tables"),
            List.of("plan", "tables", "--cards"),
            List.of("page", "tables", "-o", "reports/page.html"));
    for (List<String> command : commands) {
      Run plain = run("C", folder, command.toArray(String[]::new));
      Run other = run("C.UTF-8", folder, insteadOfReports(command));
      assertEquals(0, plain.status(), plain.err());
      assertEquals(
          other.out().replace("again/", "reports/"), plain.out(), String.join(" ", command));
    }
    assertTrue(
        Files.readString(folder.resolve("reports/pairings.csv"))
            .contains("\u00e9tau 160 \u2013 \u4e2d"));
    List<String> reports = names(folder.resolve("reports"));
    assertEquals(reports, names(folder.resolve("again")));
    for (String name : reports) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("again").resolve(name)),
          Files.readAllBytes(folder.resolve("reports").resolve(name)),
          name);
    }
  }

  private static String[] insteadOfReports(List<String> command) {
    Stream<String> args = command.stream().map(arg -> arg.replace("reports/", "again/"));
    boolean writesThere = command.get(0).equals("plan") || command.size() == 2;
    boolean folder = writesThere && !command.get(0).equals("check");
    return Stream.concat(args, folder ? Stream.of("-o", "again") : Stream.of())
        .toArray(String[]::new);
  }

  private record Run(int status, String out, String err) {}

  private Run run(String locale, Path current, String... args) throws Exception {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    try {
      ProcessBuilder builder =
          ToolRun.command(256, args)
              .directory(current.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().put("LC_ALL", locale);
      Process process = builder.start();
      if (!process.waitFor(120, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
        throw new AssertionError("hangs");
      }
      return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static List<String> names(Path directory) throws IOException {
    try (Stream<Path> all = Files.list(directory)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
