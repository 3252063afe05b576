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

  /** Far more than any shop needs; a larger file is not read. */
  static final int LARGEST = 64 << 20;

  public static FileRead of(String name, byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return new FileRead(name, HexFormat.of().formatHex(digest));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is not available", e);
    }
  }

  /**
   * Reads a whole file. Anything but a regular file is refused without opening it, since reading it
   * might block or never end. Links are followed.
   */
  public static byte[] bytes(Path file) throws UnreadableInput {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new UnreadableInput(
          file
              + " could not be read: it is "
              + (Files.isDirectory(file) ? "a folder" : "a device or a pipe")
              + ", no ordinary file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw new UnreadableInput(file + " could not be read: it is larger than 64 MiB");
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
