package org.jawroom.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jawroom.launch.ToolRun;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Temporary files in a folder that many users share. */
class TemporaryFilesTest {
  private static final String DEMO = Path.of("inputs", "demo").toString();

  @TempDir private Path folder;
  private Path shared;

  @BeforeEach
  void share() throws IOException {
    shared = Files.createDirectory(folder.resolve("shared"));
  }

  /** The library's own folder has one name for all users, so the first user's shuts out others. */
  @Test
  void matrix_whereAnotherUserHasTheLibrarysFolder_runsAndLeavesNothing() throws Exception {
    Path taken = Files.writeString(shared.resolve("poifiles"), "another user's");

    assertEquals(0, end(start("matrix", DEMO, "-o", out(), "--drawings")));

    assertEquals(List.of(taken), left());
    assertEquals("another user's", Files.readString(taken));
  }

  @Test
  void matrix_refused_leavesNothing() throws Exception {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    Files.writeString(tables.resolve("machines.csv"), "machine\n");

    assertEquals(1, end(start("matrix", tables.toString(), "-o", out())));

    assertEquals(List.of(), left());
  }

  @Test
  void template_pictures_needNoTemporaryFile() throws Exception {
    Path nowhere = shared.resolve("nowhere");
    Process template =
        started(ToolRun.command(256, "template", folder.resolve("t.xlsx").toString()), nowhere);
    assertEquals(0, end(template));
  }

  @Test
  void matrix_killed_leavesAFolderThatOnlyItsUserEntersAndTheNextRunRemoves() throws Exception {
    Process killed = start("matrix", DEMO, "-o", out());
    while (killed.isAlive() && left().stream().noneMatch(TemporaryFilesTest::isLocked)) {
      Thread.sleep(1);
    }
    killed.destroyForcibly().waitFor();
    assertEquals(1, left().size(), left().toString());
    Path whole = left().get(0);
    if (Files.getFileStore(whole).supportsFileAttributeView("posix")) {
      assertEquals(
          "rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(whole)));
    }

    // Just begun, as far as another process can see.
    assertEquals(0, end(start("matrix", DEMO, "-o", out())));
    assertEquals(List.of(whole), left());

    age(whole);
    assertEquals(0, end(start("matrix", DEMO, "-o", out())));
    assertEquals(List.of(), left());
  }

  @Test
  void matrix_besideFoldersThatAreNotItsOwn_removesNone() throws Exception {
    Path running = Files.createDirectory(shared.resolve("jawroom-run-1"));
    Path own = Files.createDirectory(shared.resolve("jawroom-run-mine"));
    Files.createFile(own.resolve(".jawroom-run"));
    Path unlike = Files.createDirectory(shared.resolve("jawroom-run-2"));
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path link = Files.createSymbolicLink(shared.resolve("jawroom-run-3"), elsewhere);
    Files.createFile(elsewhere.resolve(".jawroom-run"));
    age(own);
    age(unlike);
    age(elsewhere);
    try (var channel =
            java.nio.channels.FileChannel.open(
                running.resolve(".jawroom-run"),
                java.nio.file.StandardOpenOption.CREATE_NEW,
                java.nio.file.StandardOpenOption.WRITE);
        var lock = channel.lock()) {
      assertTrue(lock.isValid());
      age(running);
      assertEquals(0, end(start("matrix", DEMO, "-o", out())));
    }
    assertEquals(List.of(running, unlike, link, own), left());
    assertTrue(Files.exists(elsewhere.resolve(".jawroom-run")));
  }

  @Test
  void matrix_withoutAFolderForTemporaryFiles_saysWhatToDo() throws Exception {
    Path nowhere = shared.resolve("nowhere");
    Path said = folder.resolve("said");
    Process run =
        started(
            ToolRun.command(256, "matrix", DEMO, "-o", out()).redirectError(said.toFile()),
            nowhere);
    assertEquals(3, end(run));
    assertEquals(
        nowhere
            + " could not be written: no temporary files can be made there; name another folder:"
            + " java -Djava.io.tmpdir=FOLDER -jar jawroom.jar\n",
        Files.readString(said));
    assertFalse(Files.exists(Path.of(out(), "matrix.xlsx")));
  }

  private String out() {
    return folder.resolve("out").toString();
  }

  private List<Path> left() throws IOException {
    try (Stream<Path> all = Files.list(shared)) {
      return all.sorted().toList();
    }
  }

  private static boolean isLocked(Path run) {
    return Files.exists(run.resolve(".jawroom-run"));
  }

  private static void age(Path path) throws IOException {
    Files.setLastModifiedTime(path, FileTime.from(Instant.now().minusSeconds(3_600)));
  }

  private Process start(String... arguments) throws IOException {
    ProcessBuilder builder = ToolRun.command(256, arguments);
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    return started(builder, shared);
  }

  private static Process started(ProcessBuilder builder, Path temporary) throws IOException {
    builder.command().add(1, "-Djava.io.tmpdir=" + temporary);
    return builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
  }

  private static int end(Process process) throws InterruptedException {
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "hangs");
    return process.exitValue();
  }
}
