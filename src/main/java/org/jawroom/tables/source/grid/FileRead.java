package org.jawroom.tables.source.grid;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A file that was read.
 *
 * @param name without its folder
 * @param sha256 SHA-256 checksum of the bytes read, in lower-case hexadecimal
 */
public record FileRead(String name, String sha256) {

  private static final int MIB = 1 << 20;

  /** A larger file is not read if it is larger than an eighth of the memory, too. */
  private static final int LEAST_BOUND = 64 * MIB;

  /** A Java array has few bytes less than 2 GiB. */
  private static final int LARGEST_BOUND = 2047 * MIB;

  public static FileRead of(String name, byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return new FileRead(name, HexFormat.of().formatHex(digest));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is not available", e);
    }
  }

  /** The largest file that is read, in bytes: its cells take many times its size. */
  static int largest(long heap) {
    return (int) Math.max(LEAST_BOUND, Math.min(heap / 8, LARGEST_BOUND));
  }

  /**
   * Reads a whole file. Anything but a regular file is refused without opening it, since reading it
   * might block or never end. Links are followed.
   *
   * @param heap the most memory that Java has, in bytes
   */
  public static byte[] bytes(Path file, long heap) throws UnreadableInput {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new UnreadableInput(
          file
              + " could not be read: it is "
              + (Files.isDirectory(file) ? "a folder" : "a device or a pipe")
              + ", no ordinary file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      int most = largest(heap);
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new UnreadableInput(
            file
                + " could not be read: it is larger than "
                + most / MIB
                + " MiB, which is as much as Java's memory allows; give it more, as java -Xmx"
                + (heap / (MIB * 1024L) * 2 + 2)
                + "g -jar jawroom.jar, or cut the table");
      }
      return bytes;
    } catch (NoSuchFileException e) {
      throw new UnreadableInput(
          file
              + " could not be read: there is no such file"
              + (Files.isSymbolicLink(file) ? " where the link points" : ""),
          e);
    } catch (IOException e) {
      throw new UnreadableInput(file + " could not be read: " + FileTrouble.reason(e), e);
    }
  }
}
