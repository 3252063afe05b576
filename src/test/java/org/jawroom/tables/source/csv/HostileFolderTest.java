package org.jawroom.tables.source.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jawroom.launch.ToolRun;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Folders of CSV made to hurt: those that could swell are read by a Java of its own with little
 * memory, a hostile file for each table, since faults of all tables are collected.
 */
class HostileFolderTest {
  private static final String MACHINES =
      "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_count\n"
          + "mill,xy,600,300,400,300,3\n";
  private static final String VISES =
      "vise,jaw_width,jaw_height,bed_height,opening_max\nvise,150,40,60,150\n";
  private static final String GUARDS = "machine,guard,side,gap\n";
  private static final int MANY = 60_000_000;
  private static final Duration HANGS = Duration.ofSeconds(60);

  @TempDir private Path folder;

  @BeforeEach
  void soundTables() throws IOException {
    write("machines", MACHINES);
    write("vises", VISES);
  }

  @Test
  void csv_ofOneEndlessThing_isAFaultEachWithinLittleMemory() throws Exception {
    write("machines", MACHINES, "machine,", 1_000_000);
    write("guards", GUARDS, "mill,a", MANY / 8);
    write("vises", VISES + '"', "abc,def\n", MANY / 10);
    write("vise_parts", "", "a", MANY);
    write("mounts", "", "\n", MANY);
    write("jobs", "job\n", "\0", MANY);
    write("settings", "setting,value\n", "\ud83d\ude00", MANY / 4);

    assertEquals(
        List.of(
            "machines.csv row 3: has more than 16384 cells",
            "guards.csv row 2: has more than 16384 cells",
            "vises.csv row 3: has a cell of more than 32767 characters, or a quote that nothing closes",
            "vise_parts.csv row 1: has a cell of more than 32767 characters",
            "mounts.csv row 1048578: is beyond the 1048576 lines that a table may have",
            "jobs.csv row 2: holds a NUL character, as UTF-16 without its mark does; save the file as CSV in UTF-8",
            "settings.csv row 2: has a cell of more than 32767 characters",
            "7 faults. Nothing was written; put them right and run again."),
        refusal(1));
  }

  /** Each cell alone could stand in a table; together they would fill any memory. */
  @Test
  void csv_ofManyColumnsAndRows_isRefusedWithinLittleMemory() throws Exception {
    write("guards", GUARDS, "a\n", MANY / 2);
    write("vises", "a" + ",a".repeat(16_383) + "\n", "b" + ",b".repeat(16_383) + "\n", 1_900);
    List<String> lines = refusal(1);
    assertEquals(1002, lines.size());
    assertTrue(
        lines.get(1000).matches("all tables: [0-9]+ more faults are not listed"), lines.get(1000));
  }

  @Test
  void csv_largerThanTablesAre_isUnreadable() throws Exception {
    write("machines", MACHINES, "a", 100_000_000);
    assertEquals(
        List.of(
            folder.resolve("machines.csv")
                + " could not be read: it is larger than 64 MiB, which is as much as Java's memory"
                + " allows; give it more, as java -Xmx2g -jar jawroom.jar, or cut the table"),
        refusal(3));
  }

  @Test
  void text_inOtherEncodings_isOneFault() throws Exception {
    for (String charset : List.of("UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE")) {
      Files.write(folder.resolve("machines.csv"), MACHINES.getBytes(Charset.forName(charset)));
      assertEquals(
          List.of(
              "machines.csv row 1: holds a NUL character, as UTF-16 without its mark does; save the file"
                  + " as CSV in UTF-8"),
          faults());
    }
    byte[] marked = ("\ufeff" + MACHINES).getBytes(Charset.forName("UTF-32LE"));
    Files.write(folder.resolve("machines.csv"), marked);
    assertEquals(1, faults().size(), faults().toString());
  }

  /** Half a character at the end, and a surrogate alone; see RFC 2781, 2.2. */
  @Test
  void bytes_thatAreNoUtf16_areOneFaultWithTheirLine() throws Exception {
    byte[] sound = ("\ufeff" + MACHINES).getBytes(StandardCharsets.UTF_16LE);
    for (byte[] wrong : List.of(new byte[] {1}, new byte[] {0, (byte) 0xDC, 'a', 0})) {
      try (OutputStream out = Files.newOutputStream(folder.resolve("machines.csv"))) {
        out.write(sound);
        out.write(wrong);
      }
      assertEquals(
          List.of(
              "machines.csv row 3: is not UTF-16LE from here on; save the file as CSV in UTF-8"),
          faults());
    }
  }

  /** Overlong forms, surrogates and halves of characters; see RFC 3629, 3 and 10. */
  @Test
  void bytes_thatAreNoUtf8_areOneFaultWithTheirLine() throws Exception {
    for (byte[] wrong :
        List.of(
            new byte[] {(byte) 0xC0, (byte) 0xAF},
            new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80},
            new byte[] {(byte) 0xF4, (byte) 0x90, (byte) 0x80, (byte) 0x80},
            new byte[] {(byte) 0xE2, (byte) 0x82})) {
      try (OutputStream out = Files.newOutputStream(folder.resolve("machines.csv"))) {
        out.write(MACHINES.getBytes(StandardCharsets.UTF_8));
        out.write(wrong);
      }
      assertEquals(
          List.of("machines.csv row 3: is not UTF-8 from here on; save the file as CSV in UTF-8"),
          faults());
    }
  }

  /** A link to a file, and a folder that is one, are how people share tables. */
  @Test
  void links_toFilesAndFolders_areFollowed() throws Exception {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Files.move(folder.resolve("machines.csv"), elsewhere.resolve("mills.txt"));
    Files.createSymbolicLink(folder.resolve("machines.csv"), elsewhere.resolve("mills.txt"));
    Path link = Files.createSymbolicLink(elsewhere.resolve("link"), folder);
    assertEquals(List.of(), faults());
    assertTrue(ShopReader.read(link, Map.of()).shop().isPresent());
  }

  /** A table that is there but cannot be read must not count as one that is not there. */
  @Test
  void table_thatIsNoFile_isUnreadableAndNotMissing() throws Exception {
    Path guards = folder.resolve("guards.csv");
    Files.createSymbolicLink(guards, folder.resolve("nowhere"));
    assertEquals(
        guards + " could not be read: there is no such file where the link points", unreadable());
    Files.delete(guards);
    Files.createSymbolicLink(guards, guards);
    assertTrue(unreadable().startsWith(guards + " could not be read: "), unreadable());
    Files.delete(guards);
    Files.createDirectory(guards);
    assertEquals(guards + " could not be read: it is a folder, no ordinary file", unreadable());
  }

  @Test
  void table_thatNeverEndsOrNeverBegins_isUnreadable() throws Exception {
    Path zero = Path.of("/dev/zero");
    assumeTrue(Files.exists(zero), "needs the devices of Unix");
    Path guards = folder.resolve("guards.csv");
    Files.createSymbolicLink(guards, zero);
    String why = " could not be read: it is a device or a pipe, no ordinary file";
    assertEquals(guards + why, unreadable());
    Files.delete(guards);
    pipe(guards);
    assertEquals(guards + why, unreadable());
    for (Path input : List.of(zero, guards)) {
      assertEquals(input + why, unreadable(input));
    }
  }

  private static void pipe(Path path) throws Exception {
    Process made = new ProcessBuilder("mkfifo", path.toString()).start();
    assumeTrue(made.waitFor() == 0, "needs mkfifo");
  }

  /** What is said by a run with little memory, and nothing else. */
  private List<String> refusal(int status) throws Exception {
    ToolRun run = ToolRun.of(256, "check", folder.toString());
    assertEquals(status, run.status(), run.toString());
    assertEquals("", run.out());
    assertFalse(run.err().contains("Exception") || run.err().contains("\tat "), run.err());
    return run.err().lines().toList();
  }

  private List<String> faults() throws UnreadableInput {
    return ShopReader.read(folder, Map.of()).faults().stream().map(Fault::toString).toList();
  }

  private String unreadable() {
    return unreadable(folder);
  }

  private static String unreadable(Path input) {
    return assertTimeoutPreemptively(
        HANGS,
        () ->
            assertThrows(UnreadableInput.class, () -> ShopReader.read(input, Map.of()))
                .getMessage());
  }

  private void write(String table, String text) throws IOException {
    Files.writeString(folder.resolve(table + ".csv"), text);
  }

  /** {@code start}, then {@code again} many times. */
  private void write(String table, String start, String again, int times) throws IOException {
    try (OutputStream out = Files.newOutputStream(folder.resolve(table + ".csv"))) {
      out.write(start.getBytes(StandardCharsets.UTF_8));
      int together = Math.min(times, 10_000);
      byte[] some = again.repeat(together).getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < times; i += together) {
        out.write(some);
      }
    }
  }
}
