package org.jawroom.report;

import java.io.BufferedOutputStream;
import java.io.Closeable;
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
public final class AtomicFiles implements Closeable {

  /** Writes the content of one file. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private static final int BUFFER = 1 << 16;

  private final Path directory;
  private final Map<Path, Path> written = new LinkedHashMap<>();
  private final List<OutputStream> open = new ArrayList<>();
  private final Map<Path, Path> kept = new LinkedHashMap<>();
  private final List<Path> moved = new ArrayList<>();

  /**
   * No file yet; makes the directory if need be.
   *
   * @throws IOException if it cannot be made
   */
  public AtomicFiles(Path directory) throws IOException {
    this.directory = directory;
    Files.createDirectories(directory);
  }

  /**
   * Writes {@code files} (names to contents), making the directory if need be.
   *
   * @return where they are, in the order given
   * @throws IOException if a file could not be written or moved; then none has changed
   */
  public static List<Path> publish(Path directory, Map<String, Content> files) throws IOException {
    try (AtomicFiles publication = new AtomicFiles(directory)) {
      for (Map.Entry<String, Content> file : files.entrySet()) {
        try (OutputStream out = publication.add(file.getKey())) {
          file.getValue().writeTo(out);
        }
      }
      return publication.publish();
    }
  }

  /** Writes one file, making its directory if need be. */
  public static void publish(Path file, Content content) throws IOException {
    Path whole = file.toAbsolutePath();
    publish(whole.getParent(), Map.of(whole.getFileName().toString(), content));
  }

  /**
   * Begins a file; several may be open at once.
   *
   * @return where to write it, buffered
   * @throws IOException if it cannot be written, or a directory is named so
   */
  public OutputStream add(String name) throws IOException {
    Path target = directory.resolve(name);
    if (Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(target.toString(), null, "is a directory");
    }
    Path temporary = free(target, "part");
    written.put(target, temporary);
    OutputStream out =
        new BufferedOutputStream(
            Files.newOutputStream(temporary, StandardOpenOption.WRITE), BUFFER);
    open.add(out);
    return out;
  }

  /**
   * Ends all files and puts them in their places.
   *
   * @return where they are, in the order they were begun
   * @throws IOException if a file could not be written or moved; then none has changed
   */
  public List<Path> publish() throws IOException {
    for (OutputStream out : open) {
      out.close();
    }
    keepOld();
    moveAll();
    return List.copyOf(written.keySet());
  }

  /** Takes away whatever is not in its place. */
  @Override
  public void close() throws IOException {
    for (OutputStream out : open) {
      try {
        out.close();
      } catch (IOException full) {
        // What it held is given up; publish() has thrown the same where it was wanted.
        continue;
      }
    }
    clean();
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
