package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.reference.random.BigShop;
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
  private String locale = "C.UTF-8";
  private final Map<String, String> variables = new HashMap<>();

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

  /** The first of two Javas would have an archive made. */
  @Test
  void options_otherThanMemoryInAVariable_keepOneJava() throws Exception {
    for (String variable : List.of("JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS", "JDK_JAVA_OPTIONS")) {
      variables.put(variable, "-Dsome=other");
      Ended ended = java(List.of(), "matrix", SMALL.toString(), "-o", out());
      assertEquals(0, ended.status, ended.err);
      assertEquals(List.of(), beside(), variable);
      variables.clear();
    }
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(1, beside().size());
  }

  @Test
  void matrix_writesItsWorkbook_withoutTheComputersFonts() throws Exception {
    Ended ended = java(List.of("-Xlog:class+load"), "matrix", SMALL.toString(), "-o", out());
    assertTrue(ended.out.contains(" org.apache.poi.xssf.streaming.SXSSFSheet "), ended.out);
    assertFalse(ended.out.contains(" sun.font."), ended.out);
  }

  @Test
  void matrix_ofLargeTables_isTheSameInAJavaOfItsOwn() throws Exception {
    Path large = folder.resolve("large");
    BigShop.write(BigShop.shop(1700, 12, 1), large);
    // With an option for Java, one Java.
    Ended one =
        java(List.of("-XX:-UsePerfData"), "matrix", large.toString(), "-o", out(), "--no-workbook");
    assertEquals(0, one.status, one.err);
    byte[] expected = Files.readAllBytes(Path.of(out(), "pairings.csv"));
    Files.delete(Path.of(out(), "pairings.csv"));

    Process process =
        started(List.of("-Xmx256m"), "matrix", large.toString(), "-o", out(), "--no-workbook");
    boolean other = false;
    while (process.isAlive()) {
      other |= process.children().findAny().isPresent();
      process.waitFor(1, TimeUnit.MILLISECONDS);
    }
    assertEquals(0, process.exitValue());
    assertTrue(other, "no other Java was started");
    assertArrayEquals(expected, Files.readAllBytes(Path.of(out(), "pairings.csv")));
    assertEquals(List.of(), beside(), "only small tables make an archive");
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
    Path claim = claimOf(archive);
    for (byte[] broken :
        List.of("not an archive".getBytes(StandardCharsets.US_ASCII), new byte[0])) {
      Files.delete(archive);
      Files.write(archive, broken);
      assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
      assertEquals(1, beside().size(), "made anew");
      assertTrue(Files.size(beside().get(0)) > broken.length);
      archive = beside().get(0);
    }
    Files.delete(archive);
    Files.createDirectories(archive.resolve("inner"));
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    Files.delete(archive.resolve("inner"));
    Files.deleteIfExists(archive);

    try (FileChannel another =
            FileChannel.open(claim, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = another.lock(Long.MAX_VALUE - 1, 1, false)) {
      assertTrue(lock.isValid());
      beside().stream().filter(path -> !path.equals(claim)).forEach(path -> path.toFile().delete());
      assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
      assertEquals(List.of(claim), beside(), "another is making it");
    }
    Path part = Files.createFile(claim.resolveSibling(prefix(claim) + "1.part"));
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(1, beside().size(), "whoever began it is gone");
    assertTrue(!Files.exists(part) && beside().get(0).toString().endsWith(".jsa"));
  }

  /**
   * Java crashes on many archives in which a byte has changed; ClassArchiveTest changes them all.
   */
  @Test
  void archive_withAByteChangedAnywhere_isNotUsed() throws Exception {
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    Path archive = beside().get(0);
    byte[] made = Files.readAllBytes(archive);
    Files.delete(archive);
    // Once in its header, on which everything else depends, and once far behind it.
    for (int at : new int[] {100, made.length / 2}) {
      byte[] changed = made.clone();
      changed[at] ^= 1;
      Files.write(archive, changed);
      Ended ended = java(List.of(), "check", SMALL.toString());
      assertEquals(0, ended.status, at + ": " + ended.err);
      assertEquals("", ended.err, at + "");
    }
  }

  @Test
  void archive_madeByTwoFirstRunsAtOnce_isMadeOnce() throws Exception {
    Process[] runs = new Process[2];
    for (int i = 0; i < runs.length; i++) {
      runs[i] =
          started(List.of(), "matrix", SMALL.toString(), "-o", folder.resolve("o" + i).toString());
    }
    for (Process run : runs) {
      assertTrue(run.waitFor(120, TimeUnit.SECONDS), "hangs");
      assertEquals(0, run.exitValue());
    }
    assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
    assertEquals(1, beside().size(), beside().toString());
  }

  @Test
  void archive_onADiskThatIsTooSmall_isNotTried() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    String size = "size=" + (Files.size(jar) + (1 << 20));
    assumeTrue(
        NothingLostTest.done("mount", "-t", "tmpfs", "-o", size, "tmpfs", disk.toString()),
        "needs to mount a small disk");
    try {
      jar = Files.move(jar, disk.resolve("jawroom.jar"));
      assertQuiet(java(List.of(), "matrix", SMALL.toString(), "-o", out()));
      try (Stream<Path> all = Files.list(disk)) {
        assertEquals(List.of(jar), all.toList());
      }
    } finally {
      NothingLostTest.done("umount", disk.toString());
    }
  }

  /** Java writes the archive last, and ends as if it had not started when it cannot. */
  @Test
  void archive_thatCannotBeWritten_doesNotHaveTheWorkDoneTwice() throws Exception {
    Path said = folder.resolve("said");
    Process process;
    try {
      // 4 MB, in the blocks of 512 bytes that POSIX has.
      process =
          new ProcessBuilder(
                  "sh",
                  "-c",
                  "ulimit -f 8192 && unset JAVA_TOOL_OPTIONS && exec \"$@\"",
                  "sh",
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-jar",
                  jar.toString(),
                  "matrix",
                  SMALL.toString(),
                  "-o",
                  "-")
              .redirectOutput(said.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException noShell) {
      assumeTrue(false, "needs a shell");
      return;
    }
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "hangs");
    assertEquals(0, process.exitValue());
    assertEquals(
        1, Files.readAllLines(said).stream().filter(line -> line.startsWith("machine,")).count());
    assertEquals(List.of(), beside());
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

  private static Path claimOf(Path archive) {
    return archive.resolveSibling(prefix(archive) + "claim");
  }

  /** What is said of JAR and Java in the name of an archive, or of what lies beside it. */
  private static String prefix(Path file) {
    return file.getFileName().toString().replaceAll("([0-9a-f]{8}\\.jsa|claim)$", "");
  }

  /** The second Java is given the same names, or none is started. */
  @Test
  void names_beyondAscii_comeThroughOrAreRefused() throws Exception {
    assumeTrue("UTF-8".equals(System.getProperty("sun.jnu.encoding")), "needs names in UTF-8");
    Path reports = folder.resolve("\u00e9 \u2013 \u4e2d");
    Ended written = java(List.of(), "matrix", SMALL.toString(), "-o", reports.toString());
    assertEquals(0, written.status, written.err);
    assertTrue(Files.size(reports.resolve("pairings.csv")) > 0);

    locale = "C";
    Path none = folder.resolve("none \u00e9");
    Ended refused = java(List.of(), "matrix", SMALL.toString(), "-o", none.toString());
    assertEquals(ExitStatus.WRONG_USE, refused.status, refused.err);
    assertTrue(refused.err.strip().endsWith("run again with LC_ALL=C.UTF-8"), refused.err);
    try (Stream<Path> all = Files.list(folder)) {
      assertTrue(all.noneMatch(path -> path.getFileName().toString().startsWith("none")));
    }
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
    Process process = started(options, args);
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "hangs");
    return new Ended(
        process.exitValue(),
        Files.readString(folder.resolve("said"), StandardCharsets.UTF_8),
        Files.readString(folder.resolve("warned"), StandardCharsets.UTF_8));
  }

  private Process started(List<String> options, String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-jar", jar.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command);
    // What Maven was given is not for the people's Java.
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    builder.environment().put("LC_ALL", locale);
    builder.environment().putAll(variables);
    return builder
        .redirectOutput(folder.resolve("said").toFile())
        .redirectError(folder.resolve("warned").toFile())
        .start();
  }
}
