package org.jawroom.launch;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * The class-data archive beside a JAR: its classes as Java keeps them in memory, so that starting
 * need not read them anew. One is good for one JAR in one place and one Java, all of which are in
 * its name, as is its checksum: Java itself does not look closely, and crashes on an archive that
 * has been damaged.
 *
 * <p>Java 17 leaves a JAR's own classes out where there is a blank in its path.
 *
 * <p>Whatever goes wrong here is reported to nobody: everything works without, only slower.
 */
final class ClassArchive implements Closeable {

  /** The property by which the second Java learns where to write its status. */
  private static final String STATUS_FILE = "jawroom.status";

  /** Where nobody reads or writes: some systems keep others from what is locked. */
  private static final long PLACE = Long.MAX_VALUE - 1;

  /** Several times what an archive takes: where it finds no room, Java complains to the user. */
  private static final long ROOM = 64 << 20;

  private static final int BUFFER = 1 << 16;

  private final Path folder;
  private final String family;
  private final String name;
  private final Path claim;
  private final Path part;

  /** Locked while this process makes the archive; null while it does not. */
  private FileChannel claimed;

  private ClassArchive(Path folder, String family, String name) {
    this.folder = folder;
    this.family = family;
    this.name = name;
    this.claim = folder.resolve(name + "claim");
    this.part = folder.resolve(name + ProcessHandle.current().pid() + ".part");
  }

  /**
   * That of {@code jar}, made or not.
   *
   * @throws IOException if the JAR cannot be looked at
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

  /** The archive, if there is one that is as it was made. */
  Optional<Path> sound() {
    try {
      for (Path archive : files(file -> file.startsWith(name) && file.endsWith(".jsa"))) {
        if (Files.isRegularFile(archive) && archive.equals(named(archive))) {
          return Optional.of(archive);
        }
      }
    } catch (IOException unreadable) {
      // As good as none.
    }
    return Optional.empty();
  }

  /** The option that makes Java take classes from {@code archive}. */
  static String using(Path archive) {
    return "-XX:SharedArchiveFile=" + archive;
  }

  /** The options that make Java write it when it ends. */
  List<String> making() {
    return List.of("-XX:ArchiveClassesAtExit=" + part, "-D" + STATUS_FILE + "=" + claim);
  }

  /**
   * Whether it is still to be made, can be, and no other process is at it. If so, {@link #settle}
   * is to follow.
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
        // Left by those that were killed.
        remove(file -> file.startsWith(name) && file.endsWith(".part"));
        claimed = channel;
        return true;
      }
    } catch (IOException | OverlappingFileLockException cannot) {
      // Then it is not made now.
    }
    close(channel);
    return false;
  }

  /** Has the first Java know the status even where the archive, made last, cannot be written. */
  static void keepStatus(int status) {
    String file = System.getProperty(STATUS_FILE);
    if (file != null) {
      try {
        Files.writeString(Path.of(file), Integer.toString(status));
      } catch (IOException full) {
        // The status of the process is as good, unless the archive cannot be written either.
      }
    }
  }

  /** What {@link #keepStatus} has kept. */
  OptionalInt keptStatus() {
    try {
      String kept = Files.readString(claim, StandardCharsets.US_ASCII);
      return kept.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(kept));
    } catch (IOException | NumberFormatException none) {
      return OptionalInt.empty();
    }
  }

  /** Puts what was made in its place, and removes those that went before. */
  void settle() {
    try {
      Path archive = named(part);
      remove(file -> file.startsWith(family) && file.endsWith(".jsa"));
      Files.move(part, archive, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException cannot) {
      // Then the next run makes it.
    }
  }

  /** Gives up the claim, if there is one, with what was made but not put in its place. */
  @Override
  public void close() {
    if (claimed != null) {
      remove(file -> file.equals(part.getFileName().toString()));
      remove(file -> file.equals(claim.getFileName().toString()));
      close(claimed);
    }
  }

  /** Where an archive with the content of {@code file} belongs. */
  private Path named(Path file) throws IOException {
    CRC32 sum = new CRC32();
    byte[] buffer = new byte[BUFFER];
    try (InputStream in = Files.newInputStream(file)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        sum.update(buffer, 0, read);
      }
    }
    return folder.resolve(name + "%08x".formatted(sum.getValue()) + ".jsa");
  }

  private void remove(Predicate<String> those) {
    try {
      for (Path file : files(those)) {
        removeOne(file);
      }
    } catch (IOException unreadable) {
      // They take room, but do no harm.
    }
  }

  private static void removeOne(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException stays) {
      // It takes room, but does no harm.
    }
  }

  private List<Path> files(Predicate<String> those) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> those.test(file.getFileName().toString())).toList();
    } catch (UncheckedIOException broken) {
      throw broken.getCause();
    }
  }

  private static void close(FileChannel channel) {
    try {
      if (channel != null) {
        channel.close();
      }
    } catch (IOException closed) {
      // It holds nothing.
    }
  }
}
