package org.jawroom.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is found after a process was killed while it published sets of files, and what is made of
 * it.
 */
class KilledTest {
  private static final int KILLS = 10;

  @TempDir private Path folder;

  /** A kill may fall anywhere: between sets, within a file, between moves. */
  @Test
  void publish_killedAtAnyMoment_leavesWholeFilesAndTheNextRunAWholeSet() throws Exception {
    PublishLoop.publish(folder, PublishLoop.set(0));
    Random random = new Random(5);
    for (int kill = 0; kill < KILLS; kill++) {
      int before = onlySet();
      Process loop = loop(before + 1);
      await(() -> Files.exists(folder.resolve(".jawroom-lock")) || onlySetIsBeyond(before));
      TimeUnit.MICROSECONDS.sleep(random.nextInt(60_000));
      loop.destroyForcibly().waitFor();

      Set<Integer> sets = sets();
      assertTrue(
          sets.stream().mapToInt(one -> one).max().orElseThrow()
                  - sets.stream().mapToInt(one -> one).min().orElseThrow()
              <= 1,
          sets.toString());
      List<String> others = others();
      assertTrue(others.stream().allMatch(name -> name.startsWith(".jawroom-")), others.toString());

      Moves.finish(folder);
      int after = onlySet();
      assertTrue(after >= before, after + " after " + before);
    }
    PublishLoop.publish(folder, PublishLoop.set(-1));
    assertEquals(-1, onlySet());
    assertEquals(List.of(), others());
  }

  /** Asked to stop, a process makes the moves it has begun and takes away the rest. */
  @Test
  void publish_askedToStopAtAnyMoment_leavesOneWholeSetAndNothingElse() throws Exception {
    PublishLoop.publish(folder, PublishLoop.set(0));
    Random random = new Random(7);
    for (int stop = 0; stop < KILLS; stop++) {
      int before = onlySet();
      Process loop = loop(before + 1);
      assumeTrue(loop.supportsNormalTermination(), "needs a signal that asks to stop");
      await(() -> onlySetIsBeyond(before));
      TimeUnit.MICROSECONDS.sleep(random.nextInt(60_000));
      loop.destroy();
      assertTrue(loop.waitFor(60, TimeUnit.SECONDS), "does not stop");

      assertTrue(onlySet() > before);
      List<String> left = others();
      // What keeps other runs waiting keeps none waiting now.
      left.remove(".jawroom-lock");
      assertEquals(List.of(), left);
    }
  }

  /** The file of a run that still writes stays, that of one that was killed goes. */
  @Test
  void publish_besideOtherRunsFiles_removesThoseOfTheKilledAlone() throws Exception {
    Path living = folder.resolve(".jawroom-1.part");
    Path killed = Files.createFile(folder.resolve(".jawroom-2.part"));
    Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "kept");
    Path link = Files.createSymbolicLink(folder.resolve(".jawroom-3.part"), elsewhere);
    Path unlike = Files.createFile(folder.resolve(".jawroom-x.part"));
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                PartHolder.class.getName(),
                living.toString())
            .start();
    try {
      assertEquals('!', other.getInputStream().read());
      AtomicFiles.publish(Anywhere.file(folder.resolve("report0")), out -> out.write('x'));
      assertTrue(Files.exists(living), "in work");
      assertFalse(Files.exists(killed));
    } finally {
      other.destroyForcibly().waitFor();
    }
    AtomicFiles.publish(Anywhere.file(folder.resolve("report0")), out -> out.write('y'));
    assertFalse(Files.exists(living));
    assertTrue(Files.exists(link) && Files.exists(unlike));
    assertEquals("kept", Files.readString(elsewhere));
  }

  /** At each step after the list was written, as far as a kill can have let it come. */
  @Test
  void finish_afterAnyNumberOfMoves_makesTheRest() throws Exception {
    for (int made = 0; made <= 3; made++) {
      List<String> lines = new ArrayList<>();
      for (int file = 0; file < 3; file++) {
        String text = file < made ? null : "new " + file;
        Files.writeString(folder.resolve("r " + file), text == null ? "new " + file : "old");
        if (text != null) {
          Files.writeString(folder.resolve(".jawroom-" + file + ".part"), text);
        }
        lines.add(".jawroom-" + file + ".part/r+" + file);
      }
      lines.add("end");
      Files.write(folder.resolve(".jawroom-moves"), lines);
      Files.writeString(folder.resolve(".jawroom-7.old"), "left over");

      AtomicFiles.publish(Anywhere.file(folder.resolve("other")), out -> out.write('x'));

      for (int file = 0; file < 3; file++) {
        assertEquals("new " + file, Files.readString(folder.resolve("r " + file)));
      }
      try (Stream<Path> all = Files.list(folder)) {
        assertEquals(4, all.count());
      }
    }
  }

  /** A list that somebody else put there moves nothing beyond its folder. */
  @Test
  void finish_ofAListThatIsNotOurs_isRefusedAndMovesNothing() throws Exception {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Files.writeString(inner.resolve(".jawroom-0.part"), "x");
    for (String lines :
        List.of(
            ".jawroom-0.part/..%2Fescaped\nend\n",
            ".jawroom-0.part/" + "%2Fescaped\nend\n",
            ".jawroom-0.part/..\nend\n",
            "secret/taken\nend\n",
            ".jawroom-0.part/a/b\nend\n",
            ".jawroom-0.part/%\nend\n",
            ".jawroom-0.part/cut short\n",
            "")) {
      Files.writeString(inner.resolve(".jawroom-moves"), lines);
      FileSystemException refused =
          assertThrows(
              FileSystemException.class,
              () -> AtomicFiles.publish(Anywhere.file(inner.resolve("a")), out -> out.write('x')));
      assertEquals(
          "is not as jawroom writes it; look at it, and take it away", refused.getReason());
      assertTrue(Files.exists(inner.resolve(".jawroom-0.part")), lines);
    }
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(List.of(inner), all.toList());
    }
  }

  @Test
  void publish_byTwoAtOnce_leavesOneWholeSet() throws Exception {
    PublishLoop.publish(folder, PublishLoop.set(0));
    Process one = loop(1);
    Process two = loop(1_000_000);
    int sets = 0;
    int last = 0;
    for (int i = 0; i < 200 || sets < 5; i++) {
      Thread.sleep(10);
      int now = PublishLoop.setOf(folder.resolve("report0"));
      sets += now == last ? 0 : 1;
      last = now;
      assertTrue(one.isAlive() && two.isAlive(), "neither fails because of the other");
    }
    one.destroyForcibly().waitFor();
    two.destroyForcibly().waitFor();
    Moves.finish(folder);
    onlySet();
  }

  /** Somebody has the old report open, locked as far as this system locks. */
  @Test
  void publish_overAFileThatIsOpenAndLocked_leavesItsReaderTheOldOne() throws Exception {
    Path report = Files.writeString(folder.resolve("report"), "old");
    try (FileChannel open =
            FileChannel.open(report, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock lock = open.lock()) {
      assertTrue(lock.isValid());
      String now = "new";
      try {
        AtomicFiles.publish(Anywhere.file(report), out -> out.write("new".getBytes()));
      } catch (FileSystemException systemThatHoldsOpenFiles) {
        now = "old";
      }
      assertEquals(3, open.size());
      lock.release();
      assertEquals(now, Files.readString(report));
    }
    assertEquals(List.of("report"), others());
  }

  @Test
  void publish_contentThatFailsAfterAnyByte_leavesTheOldSet() throws Exception {
    PublishLoop.publish(folder, PublishLoop.set(0));
    for (int bytes = 0; bytes < 20_000; bytes += 997) {
      int full = bytes;
      var set = PublishLoop.set(1);
      set.put(
          "report2",
          out -> {
            out.write(new byte[full]);
            throw new IOException("No space left on device");
          });
      assertThrows(IOException.class, () -> PublishLoop.publish(folder, set));
      assertEquals(0, onlySet());
      assertEquals(List.of(), others());
    }
  }

  private Process loop(int first) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xshare:auto",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            PublishLoop.class.getName(),
            folder.toString(),
            Integer.toString(first))
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private interface Condition {
    boolean holds() throws IOException;
  }

  private static void await(Condition condition) throws Exception {
    for (int i = 0; i < 60_000; i++) {
      if (condition.holds()) {
        return;
      }
      Thread.sleep(1);
    }
    throw new AssertionError("nothing was published");
  }

  private boolean onlySetIsBeyond(int before) throws IOException {
    return PublishLoop.setOf(folder.resolve("report0")) > before;
  }

  private int onlySet() throws IOException {
    Set<Integer> sets = sets();
    assertEquals(1, sets.size(), sets.toString());
    return sets.iterator().next();
  }

  private Set<Integer> sets() throws IOException {
    Set<Integer> sets = new TreeSet<>();
    for (int file = 0; file < PublishLoop.FILES; file++) {
      sets.add(PublishLoop.setOf(folder.resolve("report" + file)));
    }
    return sets;
  }

  private List<String> others() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString())
          .filter(name -> !name.matches("report[0-9]"))
          .sorted()
          .collect(Collectors.toCollection(ArrayList::new));
    }
  }
}
