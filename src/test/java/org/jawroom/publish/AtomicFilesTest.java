package org.jawroom.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFilesTest {
  @TempDir Path directory;

  private static Map<String, AtomicFiles.Content> files(
      AtomicFiles.Content a, AtomicFiles.Content b) {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put("a", a);
    files.put("b", b);
    return files;
  }

  private static AtomicFiles.Content text(String text) {
    return out -> out.write(text.getBytes());
  }

  private static List<Path> publish(Path folder, Map<String, AtomicFiles.Content> files)
      throws IOException {
    return AtomicFiles.publish(Anywhere.of(folder, files.keySet()), files);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> listed = Files.list(directory)) {
      return listed.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void publish_intoADirectoryThatIsNotThere_makesIt() throws IOException {
    Path below = directory.resolve("x/y");
    List<Path> written = publish(below, files(text("1"), text("2")));
    assertEquals(List.of(below.resolve("a"), below.resolve("b")), written);
    assertEquals("2", Files.readString(below.resolve("b")));
  }

  @Test
  void publish_overOldFiles_replacesThemAndLeavesNothingElse() throws IOException {
    publish(directory, files(text("old a"), text("old b")));
    publish(directory, files(text("1"), text("2")));
    assertEquals("1", Files.readString(directory.resolve("a")));
    assertEquals("2", Files.readString(directory.resolve("b")));
    assertEquals(List.of("a", "b"), names());
  }

  @Test
  void publish_contentThatFails_leavesTheOldFilesWhole() throws IOException {
    publish(directory, files(text("old a"), text("old b")));
    AtomicFiles.Content failing =
        out -> {
          out.write('x');
          throw new IOException("full");
        };
    assertThrows(IOException.class, () -> publish(directory, files(text("1"), failing)));
    assertEquals("old a", Files.readString(directory.resolve("a")));
    assertEquals("old b", Files.readString(directory.resolve("b")));
    assertEquals(List.of("a", "b"), names());
  }

  /**
   * The second target turns into a directory that cannot be replaced, after the checks were made.
   */
  @Test
  void publish_moveThatFails_putsBackWhatWasMoved() throws IOException {
    Files.writeString(directory.resolve("a"), "old a");
    AtomicFiles.Content spoiler =
        out -> {
          out.write('2');
          Files.createDirectories(directory.resolve("b/full"));
        };
    assertThrows(IOException.class, () -> publish(directory, files(text("1"), spoiler)));
    assertEquals("old a", Files.readString(directory.resolve("a")));
    assertEquals(List.of("a", "b"), names());
  }

  @Test
  void publish_ontoADirectory_isRefused() throws IOException {
    Files.createDirectory(directory.resolve("b"));
    assertThrows(IOException.class, () -> publish(directory, files(text("1"), text("2"))));
    assertEquals(List.of("b"), names());
  }
}
