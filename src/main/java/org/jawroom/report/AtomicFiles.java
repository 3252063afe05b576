package org.jawroom.report;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts several files into a directory together. They are written beside their places under other
 * names and moved only when all are complete, one run after another; if anything fails, whatever
 * stood there before stands there still. If the process is killed, the old files stay, or the next
 * run makes the moves that were left: each file is whole at every moment.
 */
public final class AtomicFiles implements Closeable {

  /** Writes the content of one file. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private static final int BUFFER = 1 << 16;

  /** Runs take minutes; what lies about longer than this was left by one that was killed. */
  private static final Duration LEFT = Duration.ofDays(1);

  private static final SecureRandom NUMBERS = new SecureRandom();

  private final Destination destination;
  private final Path directory;

  /** Names, to the names under which the new and the old content are kept meanwhile. */
  private final Map<String, String> written = new LinkedHashMap<>();

  private final Map<String, String> kept = new LinkedHashMap<>();
  private final List<OutputStream> open = new ArrayList<>();

  /**
   * No file yet; makes the directory if need be.
   *
   * @throws IOException if it cannot be made
   */
  public AtomicFiles(Destination destination) throws IOException {
    this.destination = destination;
    this.directory = destination.folder();
    destination.checkFolder();
    if (!Files.isDirectory(directory)) {
      Files.createDirectories(directory);
    }
  }

  /**
   * Writes {@code files} (names to contents), making the directory if need be.
   *
   * @param destination names each of them
   * @return where they are, in the order given
   * @throws IOException if a file could not be written or moved; then none has changed
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
   * Begins a file; several may be open at once.
   *
   * @return where to write it, buffered
   * @param name one of the destination's
   * @throws IOException if it cannot be written, or something else of that name would be lost
   */
  public OutputStream add(String name) throws IOException {
    destination.check(name);
    Path temporary = free("part");
    written.put(name, temporary.getFileName().toString());
    OutputStream out =
        new BufferedOutputStream(
            new NamedOutput(
                directory.resolve(name),
                Files.newOutputStream(temporary, StandardOpenOption.WRITE)),
            BUFFER);
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
    try {
      putInPlace();
    } catch (IOException failure) {
      throw NamedOutput.named(directory, failure);
    }
    return written.keySet().stream().map(directory::resolve).toList();
  }

  private void putInPlace() throws IOException {
    for (OutputStream out : open) {
      out.close();
    }
    for (String temporary : written.values()) {
      Moves.force(directory.resolve(temporary));
    }
    try (FolderLock lock = FolderLock.on(directory)) {
      Moves.finish(directory);
      if (lock.isHeld()) {
        clearLeftovers();
      }
      keepOld();
      moveAll();
    }
  }

  private void clearLeftovers() throws IOException {
    Instant since = Instant.now().minus(LEFT);
    List<Path> all;
    try (Stream<Path> listed = Files.list(directory)) {
      all = listed.filter(path -> Moves.isOurs(path.getFileName().toString())).toList();
    }
    for (Path path : all) {
      try {
        FileTime changed = Files.getLastModifiedTime(path, LinkOption.NOFOLLOW_LINKS);
        boolean mine = written.containsValue(path.getFileName().toString());
        if (changed.toInstant().isBefore(since) && !mine) {
          Files.delete(path);
        }
      } catch (NoSuchFileException gone) {
        // Its own run has put it in its place, or taken it away.
      }
    }
  }

  /** Takes away whatever is not in its place. */
  @Override
  public void close() throws IOException {
    for (OutputStream out : open) {
      try {
        out.close();
      } catch (IOException full) {
        // What it held is given up; publish() has thrown the same where it was wanted.
      }
    }
    clean();
  }

  /**
   * Made by hand: the JDK's temporary files may be read by their owner alone. No name is ever used
   * again, so that none is taken for the file of an earlier run, or of one at the same time.
   */
  private Path free(String suffix) throws IOException {
    try {
      return Files.createFile(
          directory.resolve(Moves.name(NUMBERS.nextLong() & Long.MAX_VALUE, suffix)));
    } catch (FileSystemException refused) {
      // It is the folder that people know.
      throw refused.getReason() == null
          ? refused
          : new FileSystemException(directory.toString(), null, refused.getReason());
    }
  }

  private void keepOld() throws IOException {
    for (String name : written.keySet()) {
      Path target = directory.resolve(name);
      // It may have come there since the file was begun.
      destination.check(name);
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
