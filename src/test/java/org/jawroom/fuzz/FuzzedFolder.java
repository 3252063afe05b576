package org.jawroom.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A folder that holds one input at a time. */
public final class FuzzedFolder {
  private final Path folder;

  private FuzzedFolder(Path folder) {
    this.folder = folder;
  }

  /** A folder of its own, taken away when the process ends. */
  public static FuzzedFolder make() throws IOException {
    FuzzedFolder made = new FuzzedFolder(Files.createTempDirectory("fuzz"));
    made.folder.toFile().deleteOnExit();
    return made;
  }

  /** The folder of CSV files that {@code input} names, and no other file. */
  public Path tables(byte[] input) throws IOException {
    clear();
    for (Map.Entry<String, byte[]> file : Sections.of(input).entrySet()) {
      if (file.getKey().matches("[a-z_ -]{1,20}")) {
        write(file.getKey() + ".csv", file.getValue());
      }
    }
    return folder;
  }

  /** One file in the folder, and no other. */
  Path file(String name, byte[] content) throws IOException {
    clear();
    return write(name, content);
  }

  private Path write(String name, byte[] content) throws IOException {
    Path file = folder.resolve(name);
    file.toFile().deleteOnExit();
    return Files.write(file, content);
  }

  private void clear() throws IOException {
    List<Path> old;
    try (Stream<Path> files = Files.list(folder)) {
      old = files.toList();
    }
    for (Path file : old) {
      Files.delete(file);
    }
  }
}
