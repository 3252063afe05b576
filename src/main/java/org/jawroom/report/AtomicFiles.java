package org.jawroom.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts several files into a directory together. They are written beside their places under other
 * names and moved only when all are complete; if anything fails, whatever stood there before stands
 * there still.
 */
public final class AtomicFiles {

  /** Writes the content of one file. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private final Path directory;
  private final Map<Path, Path> written = new LinkedHashMap<>();
  private final Map<Path, Path> kept = new LinkedHashMap<>();
  private final List<Path> moved = new ArrayList<>();

  private AtomicFiles(Path directory) {
    this.directory = directory;
  }

  /**
   * Writes {@code files} (names to contents), making the directory if need be.
   *
   * @return where they are, in the order given
   * @throws IOException if a file could not be written or moved; then none has changed
   */
  public static List<Path> publish(Path directory, Map<String, Content> files) throws IOException {
    Files.createDirectories(directory);
    AtomicFiles publication = new AtomicFiles(directory);
    try {
      for (Map.Entry<String, Content> file : files.entrySet()) {
        publication.write(directory.resolve(file.getKey()), file.getValue());
      }
      publication.keepOld();
      publication.moveAll();
    } finally {
      publication.clean();
    }
    return files.keySet().stream().map(directory::resolve).toList();
  }

  /** Writes one file, making its directory if need be. */
  public static void publish(Path file, Content content) throws IOException {
    Path whole = file.toAbsolutePath();
    publish(whole.getParent(), Map.of(whole.getFileName().toString(), content));
  }

  private void write(Path target, Content content) throws IOException {
    if (Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(target.toString(), null, "is a directory");
    }
    Path temporary = free(target, "part");
    written.put(target, temporary);
    try (OutputStream out =
        new BufferedOutputStream(Files.newOutputStream(temporary, StandardOpenOption.WRITE))) {
      content.writeTo(out);
    }
  }

  /** Made by hand: the JDK's temporary files may be read by their owner alone. */
  private Path free(Path target, String suffix) throws IOException {
    for (int number = 0; ; number++) {
      Path candidate = directory.resolve("." + target.getFileName() + "." + number + "." + suffix);
      try {
        return Files.createFile(candidate);
      } catch (FileAlreadyExistsException taken) {
        // The next number then.
      }
    }
  }

  private void keepOld() throws IOException {
    for (Path target : written.keySet()) {
      if (Files.exists(target)) {
        Path copy = free(target, "old");
        kept.put(target, copy);
        Files.copy(
            target, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  private void moveAll() throws IOException {
    try {
      for (Map.Entry<Path, Path> file : written.entrySet()) {
        move(file.getValue(), file.getKey());
        moved.add(file.getKey());
      }
    } catch (IOException failure) {
      putBack(failure);
      throw failure;
    }
  }

  private void putBack(IOException failure) {
    for (Path target : moved) {
      try {
        if (kept.containsKey(target)) {
          move(kept.get(target), target);
        } else {
          Files.delete(target);
        }
      } catch (IOException another) {
        failure.addSuppressed(another);
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException notHere) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private void clean() throws IOException {
    for (Path temporary : written.values()) {
      Files.deleteIfExists(temporary);
    }
    for (Path copy : kept.values()) {
      Files.deleteIfExists(copy);
    }
  }
}
