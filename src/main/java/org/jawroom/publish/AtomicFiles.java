package org.jawroom.publish;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Publishes several files in a directory together. They are written beside their final places under
 * temporary names and renamed only when all are complete, one run after another. If anything fails,
 * the previous files are restored. If the process is killed, either the old files stay or the next
 * run completes the renames from the journal; each file is complete at every moment.
 */
public final class AtomicFiles implements Closeable {

  /** Writes the content of one file. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private static final SecureRandom NUMBERS = new SecureRandom();

  private final Destination destination;
  private final Path directory;

  /** Final names to the temporary names of the new content. */
  private final Map<String, String> written = new LinkedHashMap<>();

  /** Final names to the temporary names of the old content. */
  private final Map<String, String> kept = new LinkedHashMap<>();

  private final List<PartFile> parts = new ArrayList<>();

  /**
   * Starts without files; creates the directory if missing.
   *
   * @throws IOException if it cannot be created
   */
  public AtomicFiles(Destination destination) throws IOException {
    this.destination = destination;
    this.directory = destination.folder();
    destination.checkFolder();
    if (!Files.isDirectory(directory)) {
      Files.createDirectories(directory);
    }
    Publications.begin(this);
  }

  /**
   * Writes {@code files} (names to contents); creates the directory if missing.
   *
   * @param destination contains each of the names
   * @return the paths, in the order given
   * @throws IOException if a file could not be written or renamed; then none has changed
   */
  public static List<Path> publish(Destination destination, Map<String, Content> files)
      throws IOException {
    try (AtomicFiles publication = new AtomicFiles(destination)) {
      for (Map.Entry<String, Content> file : files.entrySet()) {
        try (OutputStream out = publication.add(file.getKey())) {
          file.getValue().writeTo(out);
        }
      }
      return publication.publish();
    }
  }

  /** Writes one file, the only one of {@code destination}. */
  public static void publish(Destination destination, Content content) throws IOException {
    publish(destination, Map.of(destination.files().keySet().iterator().next(), content));
  }

  /**
   * Starts a file; several may be open at once.
   *
   * @param name one of the destination's names
   * @return a buffered stream for its content
   * @throws IOException if it cannot be created, or would replace a file of another kind
   */
  public OutputStream add(String name) throws IOException {
    destination.check(name);
    Publications.make(
        () -> {
          PartFile part = part(directory.resolve(name));
          written.put(name, part.file().getFileName().toString());
          parts.add(part);
        });
    return parts.get(parts.size() - 1).out();
  }

  private PartFile part(Path target) throws IOException {
    while (true) {
      try {
        PartFile part = new PartFile(unused("part"), target);
        if (!part.isTaken()) {
          return part;
        }
        part.close();
      } catch (FileSystemException refused) {
        throw inFolder(refused);
      }
    }
  }

  /**
   * Closes all files and renames them to their final names.
   *
   * @return the paths, in the order in which they were started
   * @throws IOException if a file could not be written or renamed; then none has changed
   */
  public List<Path> publish() throws IOException {
    try {
      putInPlace();
    } catch (IOException failure) {
      throw NamedOutput.named(directory, failure);
    }
    return written.keySet().stream().map(directory::resolve).toList();
  }

  private void putInPlace() throws IOException {
    for (PartFile part : parts) {
      part.force();
    }
    FolderLock folder = FolderLock.on(directory);
    Publications.make(
        () -> {
          try (FolderLock lock = folder) {
            closeParts();
            Moves.finish(directory);
            if (lock.isHeld()) {
              clearLeftovers();
            }
            keepOld();
            moveAll();
          }
        });
  }

  /**
   * Deletes remnants of killed runs. Kept old files and the journal are only created under the
   * folder's lock, so they can go; a part file may belong to a run that is still writing it.
   */
  private void clearLeftovers() throws IOException {
    List<Path> all;
    try (Stream<Path> listed = Files.list(directory)) {
      all = listed.filter(path -> Moves.isOurs(path.getFileName().toString())).toList();
    }
    for (Path path : all) {
      if (!Moves.isPart(path.getFileName().toString())) {
        remove(path);
      } else if (!Publications.isWriting(path)) {
        PartFile.removeIfLeft(path);
      }
    }
  }

  private static void remove(Path left) {
    try {
      Files.deleteIfExists(left);
    } catch (IOException stays) {
      // A remnant takes space but does no harm.
    }
  }

  /** Deletes every file that was not published. */
  @Override
  public void close() throws IOException {
    closeParts();
    clean();
    Publications.end(this);
  }

  private void closeParts() throws IOException {
    for (PartFile part : parts) {
      part.close();
    }
  }

  boolean isWriting(Path file) {
    return parts.stream().anyMatch(part -> part.file().equals(file));
  }

  /**
   * Deletes unpublished files as {@link #close} does, without waiting for threads that still write.
   */
  void abandon() {
    Stream.concat(written.values().stream(), kept.values().stream())
        .forEach(name -> remove(directory.resolve(name)));
  }

  /**
   * Not a temporary file of the JDK, since only its owner may read that. The number is random, so
   * that the name is not that of an earlier or concurrent run's file.
   */
  private Path free(String suffix) throws IOException {
    try {
      return Files.createFile(unused(suffix));
    } catch (FileSystemException refused) {
      throw inFolder(refused);
    }
  }

  private Path unused(String suffix) {
    return directory.resolve(Moves.name(NUMBERS.nextLong() & Long.MAX_VALUE, suffix));
  }

  /** The message names the folder, which the user knows, instead of the temporary file. */
  private FileSystemException inFolder(FileSystemException refused) {
    return refused.getReason() == null
        ? refused
        : new FileSystemException(directory.toString(), null, refused.getReason());
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

  /** As a hard link if the file system supports it, since that takes no space. */
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
        // The journal stays, so that the next run can complete the renames once the cause is gone.
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
    if (back.isEmpty()) {
      // A full disk may have no room for a journal either, and none is needed.
      Moves.forget(directory);
    } else {
      Moves.make(directory, back);
    }
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
