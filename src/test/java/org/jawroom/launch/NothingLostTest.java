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
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever ends a run, the old report stays whole or the new one is whole. */
public class NothingLostTest {
  private static final int KILLS = 4;

  @TempDir private Path folder;
  private Path tables;
  private Path reports;

  @BeforeEach
  void copyTables() throws Exception {
    tables = Files.createDirectory(folder.resolve("tables"));
    reports = folder.resolve("reports");
    Path example =
        Path.of(NothingLostTest.class.getResource("/org/jawroom/golden/example").toURI());
    for (String name : List.of("machines.csv", "vises.csv", "guards.csv", "settings.csv")) {
      Files.copy(example.resolve(name), tables.resolve(name));
    }
  }

  @Test
  void matrix_killedAtRandom_leavesAWholeReportAndTheNextRunWorks() throws Exception {
    run(0, "matrix", tables.toString(), "-o", reports.toString());
    Map<String, byte[]> old = files(reports);
    run(0, "matrix", tables.toString(), "-o", folder.resolve("next").toString(), "--spacing", "9");
    Map<String, byte[]> next = files(folder.resolve("next"));
    String[] again = {"matrix", tables.toString(), "-o", reports.toString(), "--spacing", "9"};
    Random random = new Random(3);
    for (int kill = 0; kill < KILLS; kill++) {
      Process process =
          ToolRun.command(256, again)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      // Twice at any time, twice once it has begun to write.
      if (kill % 2 == 1) {
        while (process.isAlive() && files(reports).size() == old.size()) {
          Thread.sleep(1);
        }
      }
      TimeUnit.MILLISECONDS.sleep(random.nextInt(kill % 2 == 0 ? 1_500 : 150));
      process.destroyForcibly().waitFor();
      files(reports)
          .forEach(
              (name, bytes) ->
                  assertTrue(
                      name.startsWith(".jawroom-")
                          || List.of(old, next).stream()
                              .anyMatch(set -> java.util.Arrays.equals(set.get(name), bytes)),
                      name));
    }
    run(0, again);
    assertSame(next, files(reports));
  }

  /** Each run waits for the other to have put its files there. */
  @Test
  void matrix_twoRunsIntoOneFolder_leaveTheWholeReportOfOne() throws Exception {
    Process[] runs = new Process[2];
    Path[] alone = new Path[2];
    for (int i = 0; i < 2; i++) {
      alone[i] = folder.resolve("alone" + i);
      run(0, "matrix", tables.toString(), "-o", alone[i].toString(), "--spacing", i + "mm");
      runs[i] =
          ToolRun.command(
                  256, "matrix", tables.toString(), "-o", reports.toString(), "--spacing", i + "mm")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
    }
    for (Process run : runs) {
      assertTrue(run.waitFor(120, TimeUnit.SECONDS), "hangs");
      assertEquals(0, run.exitValue());
    }
    Map<String, byte[]> found = files(reports);
    boolean first =
        java.util.Arrays.equals(
            found.get("matrix.xlsx"), Files.readAllBytes(alone[0].resolve("matrix.xlsx")));
    assertSame(files(alone[first ? 0 : 1]), found);
  }

  /** A disk of 256 kB that fills up at many places; then one that may not be written. */
  @Test
  void matrix_ontoADiskThatIsFullOrReadOnly_isOneLineAndLeavesTheOldReport() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(
        done("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", disk.toString()),
        "needs to mount a small disk");
    try {
      Path there = disk.resolve("reports");
      run(0, "matrix", tables.toString(), "-o", there.toString());
      Map<String, byte[]> old = files(there);
      run(0, "matrix", tables.toString(), "-o", folder.resolve("n").toString(), "--spacing", "9");
      Map<String, byte[]> next = files(folder.resolve("n"));
      int refused = 0;
      for (int left = 0; left <= 96; left += 8) {
        fill(disk, left);
        StringWriter err = new StringWriter();
        int status =
            Main.run(
                new String[] {
                  "matrix", tables.toString(), "-o", there.toString(), "--spacing", "9"
                },
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true));
        refused += status == 3 ? 1 : 0;
        assertTrue(status == 0 || status == 3, err.toString());
        assertEquals(status == 0 ? 0 : 1, err.toString().lines().count(), err.toString());
        assertTrue(status == 0 || isDiskFull(err.toString(), there), err.toString());
        assertSame(status == 0 ? next : old, files(there));
        if (status == 0) {
          break;
        }
      }
      assertTrue(refused > 2, "filled up " + refused + " times");
      Map<String, byte[]> before = files(there);
      assumeTrue(done("mount", "-o", "remount,ro", disk.toString()), "needs to mount read-only");
      String line = run(3, "matrix", tables.toString(), "-o", there.toString());
      assertEquals(there + " could not be written: Read-only file system\n", line);
      assertSame(before, files(there));
    } finally {
      done("umount", disk.toString());
    }
  }

  /** It names the report, or the folder, once. */
  private static boolean isDiskFull(String line, Path folder) {
    String name = "\\Q" + folder + "\\E(/[a-z]+\\.(csv|xlsx))?";
    return line.strip().matches(name + " could not be written: No space left on device");
  }

  private String run(int status, String... args) {
    StringWriter err = new StringWriter();
    int found = Main.run(args, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
    assertEquals(status, found, err.toString());
    return err.toString();
  }

  public static boolean done(String... command) throws Exception {
    try {
      return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
    } catch (IOException noSuchCommand) {
      return false;
    }
  }

  /** Until {@code left} kB are free. */
  private static void fill(Path disk, int left) throws IOException {
    Path filler = disk.resolve("filler");
    Files.deleteIfExists(filler);
    long free = disk.toFile().getUsableSpace() - left * 1024L;
    Files.write(filler, new byte[(int) Math.max(0, free)]);
  }

  private static Map<String, byte[]> files(Path directory) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(directory)) {
      for (Path path : all.toList()) {
        try {
          files.put(path.getFileName().toString(), Files.readAllBytes(path));
        } catch (java.nio.file.NoSuchFileException meanwhileGone) {
          continue;
        }
      }
    }
    return files;
  }

  private static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> found) {
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
  }
}
