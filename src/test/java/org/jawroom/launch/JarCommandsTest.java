package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every command from the JAR, which leaves out what is not needed, against the same from all
 * classes and resources of all libraries; run once it is packed.
 */
class JarCommandsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "matrix|NAMES|--drawings|-o|OUT",
        "check|inputs/demo.xlsx",
        "tape|inputs/demo|-o|OUT/tape.pdf",
        "fill|inputs/demo.xlsx|FILLED|-o|OUT",
        "page|inputs/demo|-o|OUT/shop.html",
        "draw|inputs/demo|small closed mill|plain 160|-o|OUT/drawing.svg",
        "draw|inputs/demo|small closed mill|plain 160|-o|OUT/drawing.pdf",
        "draw|inputs/demo|small closed mill|plain 160|-o|OUT/drawing.png",
        "draw|NAMES|m\u05d9\u05dc|\u4e2d \u0627\u0628 e\u0301|-o|OUT/drawing.pdf",
        "card|inputs/demo|small closed mill|plain 160|-o|OUT/card.pdf",
        "plan|inputs/demo|--buy|--budget|5000|--cards|-o|OUT",
        "assess|inputs/demo|-o|OUT",
        "template|OUT/shop.xlsx",
        "template|--csv|OUT/tables",
        "explain|inputs/demo|small closed mill|plain 160|--json",
        "compare|reports|inputs/demo",
        "survey|reports|reports|--by|machine,limited_by|--where|margin_mm>=0|-o|OUT/survey.xlsx",
        "survey|reports|--by|vise,missing|--where|verdict!=fits|--all|-o|OUT/survey.csv",
        "--help"
      })
  void command_fromTheJar_printsAndWritesTheSame(String command) throws Exception {
    assumeTrue(
        command.chars().allMatch(letter -> letter < 128)
            || "UTF-8".equals(System.getProperty("sun.jnu.encoding")),
        "needs names in UTF-8");
    Path names = Files.createDirectory(folder.resolve("names"));
    copy("machines.csv", "small closed mill", "m\u05d9\u05dc", names);
    copy("vises.csv", "plain 160", "\u4e2d \u0627\u0628 e\u0301", names);
    Path filled = folder.resolve("filled.csv");
    Files.writeString(filled, "table,name,reading,value\nmachines,offered mill,rear_gap,55\n");
    Path out = Files.createDirectory(folder.resolve("out"));
    List<String> args =
        Stream.of(command.split("\\|"))
            .map(arg -> arg.replace("OUT", out.toString()).replace("NAMES", names.toString()))
            .map(arg -> arg.replace("FILLED", filled.toString()))
            .toList();

    StringWriter printed = new StringWriter();
    StringWriter warned = new StringWriter();
    int status =
        Main.run(
            args.toArray(String[]::new),
            new PrintWriter(printed, true),
            new PrintWriter(warned, true));
    assertEquals(0, status, warned::toString);
    Path whole = Files.move(out, folder.resolve("whole"));
    Files.createDirectory(out);

    assertEquals(0, run(args), () -> read("warned"));
    assertEquals(printed.toString(), read("printed"));
    assertEquals(warned.toString(), read("warned"));
    assertEquals(files(whole), files(out));
    for (String file : files(whole)) {
      assertArrayEquals(
          Files.readAllBytes(whole.resolve(file)), Files.readAllBytes(out.resolve(file)), file);
    }
  }

  private static void copy(String table, String name, String other, Path to) throws IOException {
    List<String> lines = Files.readAllLines(Path.of("inputs", "demo", table));
    String row =
        lines.stream().filter(line -> line.startsWith(name + ",")).findFirst().orElseThrow();
    Files.write(to.resolve(table), List.of(lines.get(0), other + row.substring(name.length())));
  }

  private int run(List<String> args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // An option for Java: no second one, and no archive beside the JAR in the build's folder.
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-jar", "target/jawroom.jar"));
    command.addAll(args);
    ProcessBuilder builder = new ProcessBuilder(command);
    // What Maven was given is not for the people's Java.
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process process =
        builder
            .redirectOutput(folder.resolve("printed").toFile())
            .redirectError(folder.resolve("warned").toFile())
            .start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "hangs");
    return process.exitValue();
  }

  private String read(String file) {
    try {
      return Files.readString(folder.resolve(file));
    } catch (IOException unread) {
      throw new java.io.UncheckedIOException(unread);
    }
  }

  private static List<String> files(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile)
          .map(file -> root.relativize(file).toString())
          .sorted()
          .toList();
    }
  }
}
