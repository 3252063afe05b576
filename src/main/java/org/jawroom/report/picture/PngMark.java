package org.jawroom.report.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * Marks a PNG as made by jawroom, since nothing else in it is distinctive: a text chunk with the
 * keyword {@code Software} (W3C Portable Network Graphics, tEXt) after the header.
 */
final class PngMark {

  /**
   * The size of the signature and the header chunk, which always comes first and has a fixed
   * length.
   */
  private static final int HEAD = 8 + 25;

  private static final byte[] CHUNK = chunk();

  /** The length of the head and the mark in bytes. */
  static final int LENGTH = HEAD + CHUNK.length;

  private PngMark() {}

  /** Returns the same picture with the mark inserted. */
  static byte[] on(byte[] png) {
    return ByteBuffer.allocate(png.length + CHUNK.length)
        .put(png, 0, HEAD)
        .put(CHUNK)
        .put(png, HEAD, png.length - HEAD)
        .array();
  }

  /**
   * Whether a file that begins with {@code bytes} is marked.
   *
   * @param bytes at least {@link #LENGTH} of them, unless the file is shorter
   */
  static boolean isOn(byte[] bytes) {
    return bytes.length >= LENGTH && Arrays.equals(bytes, HEAD, LENGTH, CHUNK, 0, CHUNK.length);
  }

  /** Length of the data, type, data, CRC-32 of type and data. */
  private static byte[] chunk() {
    byte[] typed = "tEXtSoftware\0jawroom".getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(typed);
    return ByteBuffer.allocate(typed.length + 8)
        .putInt(typed.length - 4)
        .put(typed)
        .putInt((int) check.getValue())
        .array();
  }
}
