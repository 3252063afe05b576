package org.jawroom.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts several files into a directory together, one run after another. They are written beside
 * their places under other names and moved only when all are complete; if anything fails, whatever
 * stood there before stands there still. If the process is killed, the old files stay, or the next
 * run makes the moves that were left: each file is whole at every moment.
 */
public final class AtomicFiles {

  /** Writes the content of one file. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private final Path directory;

  /** Names, to the names under which the new and the old content are kept meanwhile. */
  private final Map<String, String> written = new LinkedHashMap<>();

  private final Map<String, String> kept = new LinkedHashMap<>();

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
    if (!Files.isDirectory(directory)) {
      Files.createDirectories(directory);
    }
    try (FolderLock lock = FolderLock.on(directory)) {
      Moves.finish(directory);
      if (lock.isHeld()) {
        clearLeftovers(directory);
      }
      AtomicFiles publication = new AtomicFiles(directory);
      try {
        for (Map.Entry<String, Content> file : files.entrySet()) {
          publication.write(file.getKey(), file.getValue());
        }
        publication.keepOld();
        publication.moveAll();
      } finally {
        publication.clean();
      }
    }
    return files.keySet().stream().map(directory::resolve).toList();
  }

  /** Writes one file, making its directory if need be. */
  public static void publish(Path file, Content content) throws IOException {
    Path whole = file.toAbsolutePath();
    publish(whole.getParent(), Map.of(whole.getFileName().toString(), content));
  }

  /** What runs have left that were killed before they could move anything. */
  private static void clearLeftovers(Path directory) throws IOException {
    List<Path> leftovers;
    try (Stream<Path> all = Files.list(directory)) {
      leftovers = all.filter(path -> Moves.isOurs(path.getFileName().toString())).toList();
    }
    for (Path leftover : leftovers) {
      Files.deleteIfExists(leftover);
    }
  }

  private void write(String name, Content content) throws IOException {
    Path target = directory.resolve(name);
    boolean there = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
    if (there && !Files.isRegularFile(target) && !Files.isSymbolicLink(target)) {
      String what = Files.isDirectory(target) ? "a directory" : "no ordinary file";
      throw new FileAlreadyExistsException(target.toString(), null, "is " + what);
    }
    Path temporary = free("part");
    written.put(name, temporary.getFileName().toString());
    try (OutputStream out =
        new BufferedOutputStream(Files.newOutputStream(temporary, StandardOpenOption.WRITE))) {
      content.writeTo(out);
    }
    Moves.force(temporary);
  }

  /** Made by hand: the JDK's temporary files may be read by their owner alone. */
  private Path free(String suffix) throws IOException {
    for (int number = 0; ; number++) {
      try {
        return Files.createFile(directory.resolve(Moves.name(number, suffix)));
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
    }
  }

  private void keepOld() throws IOException {
    for (String name : written.keySet()) {
      Path target = directory.resolve(name);
      if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
        Path copy = free("old");
        kept.put(name, copy.getFileName().toString());
        keep(target, copy);
      }
    }
  }

  /** By another name if the file system can, since that takes no room. */
  private static void keep(Path target, Path copy) throws IOException {
    try {
      Files.delete(copy);
      Files.createLink(copy, target);
    } catch (IOException | UnsupportedOperationException notHere) {
      Files.copy(
          target,
          copy,
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.COPY_ATTRIBUTES,
          LinkOption.NOFOLLOW_LINKS);
    }
  }

  private void moveAll() throws IOException {
    List<Moves.Move> moves = new ArrayList<>();
    written.forEach((name, temporary) -> moves.add(new Moves.Move(temporary, name)));
    try {
      Moves.make(directory, moves);
    } catch (IOException failure) {
      try {
        putBack();
      } catch (IOException another) {
        // What is written down may still be made, once its cause is mended.
        written.clear();
        kept.clear();
        failure.addSuppressed(another);
      }
      throw failure;
    }
  }

  private void putBack() throws IOException {
    List<Moves.Move> back = new ArrayList<>();
    written.forEach(
        (name, temporary) -> {
          boolean moved = !Files.exists(directory.resolve(temporary), LinkOption.NOFOLLOW_LINKS);
          if (moved) {
            back.add(
                kept.containsKey(name)
                    ? new Moves.Move(kept.get(name), name)
                    : new Moves.Move(name, temporary));
          }
        });
    Moves.make(directory, back);
  }

  private void clean() throws IOException {
    for (String temporary : written.values()) {
      Files.deleteIfExists(directory.resolve(temporary));
    }
    for (String copy : kept.values()) {
      Files.deleteIfExists(directory.resolve(copy));
    }
  }
}
