package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JAR as people start it, and the archive it keeps beside itself; run once it is packed. */
class JarTest {
  private static final Path DEMO = Path.of("inputs", "demo");
  private static final Path SMALL = GoldenTables.of("example");
  private static final List<String> TABLES =
      List.of("pairings.csv", "remedies.csv", "unknowns.csv", "jobs.csv");

  @TempDir private Path folder;
  private Path jar;

  private record Ended(int status, String out, String err) {}

  @BeforeEach
  void copy() throws IOException {
    jar = folder.resolve("jawroom.jar");
    Files.copy(Path.of("target", "jawroom.jar"), jar);
  }

  @Test
  void demo_startedTwice_isTheOneKeptAndTheSecondTakesTheArchive() throws Exception {
    assertDemo(java(List.of(), "matrix", DEMO.toString(), "-o", out()));
    List<Path> first = beside();
    assertEquals(1, first.size(), first::toString);
    assertTrue(first.get(0).getFileName().toString().endsWith(".jsa"), first::toString);
    byte[] made = Files.readAllBytes(first.get(0));
    // Java itself says where it took our classes from.
    Ended asked =
        java(
            List.of("-XX:SharedArchiveFile=" + first.get(0), "-Xlog:class+load"),
            "check",
            DEMO.toString());
    assertTrue(
        asked.out.contains("org.jawroom.tables.ShopReader source: shared objects file (top)"),
        asked.out);

    assertDemo(java(List.of(), "matrix", DEMO.toString(), "-o", out()));
    assertEquals(first, beside());
    assertArrayEquals(made, Files.readAllBytes(first.get(0)));
  }

  @Test
  void archive_staleBrokenOrInWork_isNeverInTheWay() throws Exception {
    assertQuiet(java(List.of("-XX:+UseSerialGC"), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(List.of(), beside(), "with options for Java, no other Java");

    assertQuiet(java(List.of("-Xmx200m"), "matrix", SMALL.toString(), "-o", out()));
    final List<Path> before = beside();
    Files.setLastModifiedTime(jar, FileTime.from(Instant.parse("2001-02-03T04:05:06Z")));
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(1, beside().size(), "that of the JAR before this is gone");
    assertNotEquals(before, beside());

    Path archive = beside().get(0);
    Files.delete(archive);
    Files.writeString(archive, "not an archive");
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals("not an archive", Files.readString(archive));

    Files.delete(archive);
    Path part = archive.resolveSibling(archive.getFileName().toString().replaceAll("jsa$", "part"));
    Files.createFile(part);
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(List.of(part), beside(), "another is making it");
    assertEquals(0, Files.size(part));

    Files.setLastModifiedTime(part, FileTime.from(Instant.now().minusSeconds(86_400)));
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(List.of(archive), beside(), "whoever began it a day ago is gone");
  }

  @Test
  void check_faults_statusAndWordsComeThrough() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    Files.writeString(tables.resolve("machines.csv"), "name,nonsense\na,1\n");
    Ended refused = java(List.of(), "check", tables.toString());
    assertEquals(ExitStatus.REFUSED, refused.status, refused.err);
    assertTrue(refused.err.contains("nonsense"), refused.err);
    Ended nowhere = java(List.of(), "matrix", folder.resolve("none").toString());
    assertEquals(ExitStatus.UNREADABLE, nowhere.status, nowhere.err);
  }

  private String out() {
    return folder.resolve("out").toString();
  }

  private void assertQuiet(Ended ended) throws IOException {
    assertEquals(0, ended.status, ended.err);
    assertEquals("", ended.err);
    assertTrue(Files.size(Path.of(out(), "matrix.xlsx")) > 0);
  }

  private void assertDemo(Ended ended) throws IOException {
    assertQuiet(ended);
    for (String table : TABLES) {
      assertArrayEquals(
          Files.readAllBytes(Path.of("reports", table)),
          Files.readAllBytes(Path.of(out(), table)),
          table);
    }
  }

  /** What there is beside the JAR, by its name. */
  private List<Path> beside() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      String name = jar.getFileName() + ".";
      return all.filter(path -> path.getFileName().toString().startsWith(name)).sorted().toList();
    }
  }

  private Ended java(List<String> options, String... args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-jar", jar.toString()));
    command.addAll(List.of(args));
    Path said = folder.resolve("said");
    Path warned = folder.resolve("warned");
    ProcessBuilder builder = new ProcessBuilder(command);
    // What Maven was given is not for the people's Java.
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.redirectOutput(said.toFile()).redirectError(warned.toFile()).start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), command::toString);
    return new Ended(
        process.exitValue(),
        Files.readString(said, StandardCharsets.UTF_8),
        Files.readString(warned, StandardCharsets.UTF_8));
  }
}
