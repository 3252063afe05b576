package org.jawroom.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * The class-data archive beside a JAR: its classes as Java keeps them in memory, so that starting
 * need not read them anew. One is good for one JAR in one place and one Java, all of which are in
 * its name; Java checks them too, and does without an archive it cannot use.
 *
 * <p>Java 17 leaves a JAR's own classes out where there is a blank in its path.
 *
 * <p>Whatever goes wrong here is told to nobody: everything works without, only slower.
 */
final class ClassArchive {

  /** How long making one may take before it is taken for dead. */
  private static final Duration MAKING = Duration.ofHours(1);

  private final Path folder;
  private final String family;
  private final Path archive;
  private final Path part;

  private ClassArchive(Path folder, String family, String name) {
    this.folder = folder;
    this.family = family;
    this.archive = folder.resolve(family + name + ".jsa");
    this.part = folder.resolve(family + name + ".part");
  }

  /**
   * That of {@code jar}, made or not.
   *
   * @throws IOException if the JAR cannot be looked at
   */
  static ClassArchive beside(Path jar) throws IOException {
    int one =
        Objects.hash(jar.toString(), Files.size(jar), Files.getLastModifiedTime(jar).toMillis());
    String java = System.getProperty("java.vm.version", "").replaceAll("[^0-9A-Za-z.+-]", "_");
    return new ClassArchive(
        jar.toAbsolutePath().getParent(),
        jar.getFileName() + "." + java + ".",
        Integer.toHexString(one));
  }

  /** The option that makes Java take classes from it. */
  String using() {
    return "-XX:SharedArchiveFile=" + archive;
  }

  /** The option that makes Java write it when it ends. */
  String making() {
    return "-XX:ArchiveClassesAtExit=" + part;
  }

  /** Whether it is still to be made, can be, and nobody else is at it. */
  boolean claim() {
    if (Files.exists(archive)) {
      return false;
    }
    try {
      Files.createFile(part);
      return true;
    } catch (FileAlreadyExistsException another) {
      forgetIfDead();
      return false;
    } catch (IOException cannot) {
      return false;
    }
  }

  /** Puts what was made in its place, and takes away those that went before. */
  void settle() {
    try {
      if (Files.size(part) == 0) {
        Files.delete(part);
        return;
      }
      try (DirectoryStream<Path> former = Files.newDirectoryStream(folder, family + "*.jsa")) {
        for (Path old : former) {
          Files.delete(old);
        }
      }
      Files.move(part, archive, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException cannot) {
      part.toFile().delete();
    }
  }

  private void forgetIfDead() {
    try {
      Instant begun = Files.getLastModifiedTime(part).toInstant();
      if (begun.plus(MAKING).isBefore(Instant.now())) {
        Files.delete(part);
      }
    } catch (IOException gone) {
      // So much the better.
    }
  }
}
