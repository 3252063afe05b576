package org.jawroom.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The temporary files of this process, in a folder of its own that only its user can access. The
 * folder is created with the first file and deleted when the process ends. A process holds a lock
 * in its folder while it runs; folders of killed processes are deleted by the next process of the
 * same user.
 */
public final class Scratch {
  private static final String PREFIX = "jawroom-run-";

  /** The names of scratch folders, and a file that identifies them as ours. */
  private static final Pattern NAME = Pattern.compile(PREFIX + "[0-9]+");

  private static final String LOCK = ".jawroom-run";

  /** Far longer than a process needs between creating its folder and locking it. */
  private static final Duration STARTING = Duration.ofMinutes(1);

  private static final String NOWHERE =
      "no temporary files can be made there; name another folder:"
          + " java -Djava.io.tmpdir=FOLDER -jar jawroom.jar";

  private static Path folder;
  private static FileChannel lock;
  private static boolean ended;

  private Scratch() {}

  /**
   * Creates an empty file.
   *
   * @throws IOException if it cannot be created
   */
  public static synchronized Path file(String prefix, String suffix) throws IOException {
    return Files.createTempFile(folder(), prefix, suffix);
  }

  /**
   * Creates an empty folder.
   *
   * @throws IOException if it cannot be created
   */
  public static synchronized Path directory(String prefix) throws IOException {
    return Files.createTempDirectory(folder(), prefix);
  }

  private static Path folder() throws IOException {
    if (ended) {
      throw new IOException("this run has been stopped");
    }
    if (folder == null) {
      Path all = Path.of(System.getProperty("java.io.tmpdir"));
      try {
        folder = Files.createTempDirectory(all, PREFIX);
      } catch (FileSystemException refused) {
        throw refused.getReason() == null
            ? new FileSystemException(all.toString(), null, NOWHERE)
            : new FileSystemException(all.toString(), null, refused.getReason());
      }
      removeAtTheEnd();
      lock();
      removeLeftovers(all);
    }
    return folder;
  }

  private static void removeAtTheEnd() throws IOException {
    try {
      Runtime.getRuntime().addShutdownHook(new Thread(Scratch::end));
    } catch (IllegalStateException ending) {
      end();
      throw new IOException("this run has been stopped", ending);
    }
  }

  private static void lock() throws IOException {
    lock =
        FileChannel.open(
            folder.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    try {
      lock.tryLock();
    } catch (IOException noLocksHere) {
      // Without locks, no other process can lock it either, so none deletes the folder.
    }
  }

  private static synchronized void end() {
    ended = true;
    try {
      if (lock != null) {
        lock.close();
      }
      remove(folder);
    } catch (IOException | UncheckedIOException stays) {
      // The next process deletes it.
    }
  }

  private static void removeLeftovers(Path all) {
    try (DirectoryStream<Path> others = Files.newDirectoryStream(all, PREFIX + "*")) {
      for (Path other : others) {
        if (!other.equals(folder) && NAME.matcher(other.getFileName().toString()).matches()) {
          removeIfLeft(other);
        }
      }
    } catch (IOException | DirectoryIteratorException unreadable) {
      // Remnants take space but do no harm.
    }
  }

  private static void removeIfLeft(Path other) {
    try {
      boolean mine =
          Files.isDirectory(other, LinkOption.NOFOLLOW_LINKS)
              && Files.getOwner(other, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(folder));
      Instant changed = Files.getLastModifiedTime(other, LinkOption.NOFOLLOW_LINKS).toInstant();
      if (mine && changed.plus(STARTING).isBefore(Instant.now()) && isUnlocked(other)) {
        remove(other);
      }
    } catch (IOException | UncheckedIOException | UnsupportedOperationException another) {
      // Another process uses it, or it is not ours.
    }
  }

  private static boolean isUnlocked(Path other) throws IOException {
    Path file = other.resolve(LOCK);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      return channel.tryLock() != null;
    }
  }

  private static void remove(Path whole) throws IOException {
    try (Stream<Path> all = Files.walk(whole)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
