package org.jawroom.launch;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.CRC32;

/**
 * The class-data archive (CDS, JEP 350) beside a JAR, from which the JVM maps classes instead of
 * loading and verifying them at startup. An archive is valid for one JAR in one place and one JVM;
 * its name has a hash of these and its own checksum. The JVM itself checks little and crashes on a
 * damaged archive.
 *
 * <p>Java 17 leaves a JAR's own classes out of the archive if the JAR's path contains a space.
 *
 * <p>Failures here are ignored: without an archive everything works, only slower.
 */
final class ClassArchive implements Closeable {

  /** The system property with the path of the file into which the child JVM writes its status. */
  private static final String STATUS_FILE = "jawroom.status";

  /**
   * The locked byte lies where nobody reads or writes: on some systems a lock also blocks access.
   */
  private static final long PLACE = Long.MAX_VALUE - 1;

  /** Several times the size of an archive: on a full disk the JVM prints an error to the user. */
  private static final long ROOM = 64 << 20;

  private static final int BUFFER = 1 << 16;

  private final Path folder;
  private final String family;
  private final String name;
  private final Path claim;
  private final Path part;

  /** Locked while this process creates the archive; null otherwise. */
  private FileChannel claimed;

  private ClassArchive(Path folder, String family, String name) {
    this.folder = folder;
    this.family = family;
    this.name = name;
    this.claim = folder.resolve(name + "claim");
    this.part = folder.resolve(name + ProcessHandle.current().pid() + ".part");
  }

  /**
   * The archive of {@code jar}, whether or not it exists.
   *
   * @throws IOException if the JAR's attributes cannot be read
   */
  static ClassArchive beside(Path jar) throws IOException {
    int one =
        Objects.hash(
            jar.toString(),
            Files.size(jar),
            Files.getLastModifiedTime(jar).toMillis(),
            System.getProperty("java.home"),
            System.getProperty("java.vm.name"),
            System.getProperty("java.vm.vendor"));
    String java = System.getProperty("java.vm.version", "").replaceAll("[^0-9A-Za-z.+-]", "_");
    String family = jar.getFileName() + "." + java + ".";
    Path folder = jar.toAbsolutePath().getParent();
    return new ClassArchive(folder, family, family + Integer.toHexString(one) + ".");
  }

  /** The archive, if there is one whose checksum matches its name. */
  Optional<Path> sound() {
    try {
      for (Path archive : files(name, ".jsa")) {
        if (Files.isRegularFile(archive) && archive.equals(named(archive))) {
          return Optional.of(archive);
        }
      }
    } catch (IOException unreadable) {
      // An unreadable folder counts as no archive.
    }
    return Optional.empty();
  }

  /** The JVM option that loads classes from {@code archive}. */
  static String using(Path archive) {
    return "-XX:SharedArchiveFile=" + archive;
  }

  /** The JVM options that write the archive at exit. */
  List<String> making() {
    return List.of("-XX:ArchiveClassesAtExit=" + part, "-D" + STATUS_FILE + "=" + claim);
  }

  /**
   * Claims the creation of the archive. Returns whether the archive is missing, can be created, and
   * no other process is creating it; if so, call {@link #settle} afterwards.
   */
  boolean claim() {
    FileChannel channel = null;
    try {
      if (Files.getFileStore(folder).getUsableSpace() < ROOM) {
        return false;
      }
      channel =
          FileChannel.open(
              claim,
              StandardOpenOption.CREATE,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
      if (channel.tryLock(PLACE, 1, false) != null && sound().isEmpty()) {
        channel.truncate(0);
        // Remnants of killed processes.
        remove(name, ".part");
        claimed = channel;
        return true;
      }
    } catch (IOException | OverlappingFileLockException cannot) {
      // The archive is not created now.
    }
    close(channel);
    return false;
  }

  /**
   * Writes the exit status to a file for the parent JVM: the archive is written last, and if that
   * fails the process ends with another status.
   */
  static void keepStatus(int status) {
    String file = System.getProperty(STATUS_FILE);
    if (file != null) {
      try {
        Files.writeString(Path.of(file), Integer.toString(status));
      } catch (IOException full) {
        // The parent needs this file only if the archive cannot be written either.
      }
    }
  }

  /** The exit status that {@link #keepStatus} wrote. */
  OptionalInt keptStatus() {
    try {
      String kept = Files.readString(claim, StandardCharsets.US_ASCII);
      return kept.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(kept));
    } catch (IOException | NumberFormatException none) {
      return OptionalInt.empty();
    }
  }

  /** Renames the new archive to its final name and deletes earlier archives. */
  void settle() {
    try {
      Path archive = named(part);
      remove(family, ".jsa");
      Files.move(part, archive, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException cannot) {
      // The next run creates it.
    }
  }

  /** Releases the claim, if held, and deletes an archive that was not renamed to its final name. */
  @Override
  public void close() {
    if (claimed != null) {
      remove(part);
      remove(claim);
      close(claimed);
    }
  }

  /** The final name of an archive with the content of {@code file}. */
  private Path named(Path file) throws IOException {
    CRC32 sum = new CRC32();
    byte[] buffer = new byte[BUFFER];
    try (InputStream in = Files.newInputStream(file)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        sum.update(buffer, 0, read);
      }
    }
    return folder.resolve(name + HexFormat.of().toHexDigits((int) sum.getValue()) + ".jsa");
  }

  private void remove(String start, String end) {
    try {
      for (Path file : files(start, end)) {
        remove(file);
      }
    } catch (IOException unreadable) {
      // Remnants take space but do no harm.
    }
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException stays) {
      // A remnant takes space but does no harm.
    }
  }

  /** The files in the folder whose names start and end so. */
  private List<Path> files(String start, String end) throws IOException {
    List<Path> those = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
      for (Path file : all) {
        String called = file.getFileName().toString();
        if (called.startsWith(start) && called.endsWith(end)) {
          those.add(file);
        }
      }
    } catch (DirectoryIteratorException broken) {
      throw broken.getCause();
    }
    return those;
  }

  private static void close(FileChannel channel) {
    try {
      if (channel != null) {
        channel.close();
      }
    } catch (IOException closed) {
      // Nothing is lost: the channel holds only the lock.
    }
  }
}
