package org.jawroom.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Publishes one set after another into a folder until it is killed. */
public final class PublishLoop {
  private PublishLoop() {}

  /** How many files a set has; each says over and over which set it is of. */
  public static final int FILES = 4;

  public static final int LINES = 3_000;

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    for (int set = Integer.parseInt(args[1]); ; set++) {
      publish(folder, set(set));
    }
  }

  public static void publish(Path folder, Map<String, AtomicFiles.Content> files)
      throws IOException {
    AtomicFiles.publish(Anywhere.of(folder, files.keySet()), files);
  }

  public static Map<String, AtomicFiles.Content> set(int set) {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    for (int file = 0; file < FILES; file++) {
      files.put(
          "report" + file,
          out -> {
            for (int line = 0; line < LINES; line++) {
              out.write((set + "\n").getBytes(StandardCharsets.US_ASCII));
            }
          });
    }
    return files;
  }

  /** Which set a file is of; fails if it is not whole. */
  public static int setOf(Path file) throws IOException {
    String text = Files.readString(file);
    String first = text.substring(0, text.indexOf('\n') + 1);
    if (!text.equals(first.repeat(LINES))) {
      throw new AssertionError(file + " is not whole");
    }
    return Integer.parseInt(first.strip());
  }
}
