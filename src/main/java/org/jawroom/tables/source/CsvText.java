package org.jawroom.tables.source;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** The characters of a CSV file, never all of them at once. */
final class CsvText {
  private static final int CHUNK = 1 << 16;
  private static final int LONGEST_HEADER = 1 << 20;

  /** Where the first bytes stand that are no text. */
  record Trouble(int line, String message) {}

  private final byte[] bytes;
  private final int start;

  CsvText(byte[] bytes) {
    this.bytes = bytes;
    this.start = startsWithMark(bytes) ? 3 : 0;
  }

  private static boolean startsWithMark(byte[] bytes) {
    return bytes.length >= 3
        && bytes[0] == (byte) 0xEF
        && bytes[1] == (byte) 0xBB
        && bytes[2] == (byte) 0xBF;
  }

  /** What is wrong with it as text; a line of 0 if nothing is. */
  Trouble trouble() {
    // One that reports malformed bytes rather than replacing them, which is the default of
    // newDecoder.
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(CHUNK);
    int line = 1;
    boolean afterReturn = false;
    CoderResult result;
    do {
      result = decoder.decode(in, out, true);
      out.flip();
      while (out.hasRemaining()) {
        char letter = out.get();
        if (letter == 0) {
          return new Trouble(
              line, "holds a NUL character, as text in UTF-16 does; save the file as CSV in UTF-8");
        }
        line += letter == '\r' || letter == '\n' && !afterReturn ? 1 : 0;
        afterReturn = letter == '\r';
      }
      out.clear();
    } while (result.isOverflow());
    return result.isError()
        ? new Trouble(line, "is not UTF-8 from here on; save the file as CSV in UTF-8")
        : new Trouble(0, "");
  }

  /** Without the byte order mark. */
  Reader reader() {
    return new InputStreamReader(
        new ByteArrayInputStream(bytes, start, bytes.length - start), StandardCharsets.UTF_8);
  }

  /** The first line that is not blank, as far as a header can reach; empty if there is none. */
  String header() {
    StringBuilder line = new StringBuilder();
    try (Reader reader = new BufferedReader(reader())) {
      for (int letter = reader.read(); letter >= 0; letter = reader.read()) {
        boolean end = letter == '\n' || letter == '\r';
        if (!end) {
          line.append((char) letter);
        }
        if (line.length() >= LONGEST_HEADER || end && !line.toString().isBlank()) {
          break;
        }
        if (end) {
          line.setLength(0);
        }
      }
    } catch (IOException e) {
      throw new IllegalStateException("memory can be read", e);
    }
    return line.toString().isBlank() ? "" : line.toString();
  }
}
