package org.jawroom.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The tables of golden shops, without the files beside them, which every command names. */
public final class GoldenTables {
  private GoldenTables() {}

  /** A new folder; it is deleted when the tests end. */
  public static Path of(String shop) {
    try {
      Path tables = Files.createTempDirectory("golden");
      tables.toFile().deleteOnExit();
      for (Path file : tables(Path.of("src/test/resources/org/jawroom/golden", shop))) {
        Path copy = Files.copy(file, tables.resolve(file.getFileName()));
        copy.toFile().deleteOnExit();
      }
      return tables;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> tables(Path golden) throws IOException {
    try (Stream<Path> files = Files.list(golden)) {
      return files
          .filter(file -> file.toString().endsWith(".csv"))
          .filter(file -> !file.getFileName().toString().startsWith("expected"))
          .toList();
    }
  }
}
