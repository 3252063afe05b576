package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which archives count as sound, whatever they hold; {@code JarTest} has Java use one. */
class ClassArchiveTest {
  @TempDir private Path folder;
  private final byte[] content = new byte[2_000];
  private ClassArchive archive;
  private Path file;

  @BeforeEach
  void make() throws IOException {
    new Random(11).nextBytes(content);
    archive = ClassArchive.beside(Files.writeString(folder.resolve("some.jar"), "a JAR"));
    assertEquals(Optional.empty(), archive.sound());
    assertTrue(archive.claim());
    Files.write(Path.of(archive.making().get(0).replaceFirst("^[^=]*=", "")), content);
    archive.settle();
    archive.close();
    file = archive.sound().orElseThrow();
  }

  @Test
  void sound_asMade_isThere() throws IOException {
    assertEquals(-1, Arrays.mismatch(content, Files.readAllBytes(file)));
  }

  @Test
  void sound_aBitOfAnyByteChanged_isNone() throws IOException {
    for (int at = 0; at < content.length; at++) {
      byte[] changed = content.clone();
      changed[at] ^= (byte) (1 << at % 8);
      Files.write(file, changed);
      assertEquals(Optional.empty(), archive.sound(), "byte " + at);
    }
  }

  @Test
  void sound_cutShortOrLonger_isNone() throws IOException {
    for (int length : new int[] {0, 1, content.length / 2, content.length - 1, 2_001}) {
      Files.write(file, Arrays.copyOf(content, length));
      assertEquals(Optional.empty(), archive.sound(), length + " bytes");
    }
  }
}
