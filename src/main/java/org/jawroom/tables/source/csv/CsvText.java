package org.jawroom.tables.source.csv;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The characters of a CSV file, decoded as a stream. */
final class CsvText {
  private static final int CHUNK = 1 << 16;
  private static final int LONGEST_HEADER = 1 << 20;

  /** The line of the first bytes that are not valid text. */
  record Trouble(int line, String message) {}

  private final byte[] bytes;
  private final Charset charset;
  private final int start;

  CsvText(byte[] bytes) {
    this.bytes = bytes;
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      this.charset = StandardCharsets.UTF_8;
      this.start = 3;
    } else if (startsWith(bytes, 0xFF, 0xFE)) {
      this.charset = StandardCharsets.UTF_16LE;
      this.start = 2;
    } else if (startsWith(bytes, 0xFE, 0xFF)) {
      this.charset = StandardCharsets.UTF_16BE;
      this.start = 2;
    } else {
      this.charset = StandardCharsets.UTF_8;
      this.start = 0;
    }
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (bytes.length <= i || bytes[i] != (byte) mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** The first decoding error; line 0 if there is none. */
  Trouble trouble() {
    // A decoder from newDecoder() reports malformed bytes; others replace them.
    CharsetDecoder decoder = charset.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
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
              line,
              "holds a NUL character, as UTF-16 without its mark does; save the file as CSV in UTF-8");
        }
        line += letter == '\r' || letter == '\n' && !afterReturn ? 1 : 0;
        afterReturn = letter == '\r';
      }
      out.clear();
    } while (result.isOverflow());
    return result.isError()
        ? new Trouble(line, "is not " + charset + " from here on; save the file as CSV in UTF-8")
        : new Trouble(0, "");
  }

  Charset charset() {
    return charset;
  }

  /** The byte order mark; empty if there is none. */
  byte[] mark() {
    return Arrays.copyOf(bytes, start);
  }

  /** Starts after the byte order mark. */
  Reader reader() {
    return new BufferedReader(
        new InputStreamReader(
            new ByteArrayInputStream(bytes, start, bytes.length - start), charset));
  }

  /** Starts after the first line. */
  Reader afterFirstLine() {
    try {
      Reader reader = reader();
      int letter = reader.read();
      while (letter >= 0 && letter != '\n' && letter != '\r') {
        letter = reader.read();
      }
      reader.mark(1);
      if (letter == '\r' && reader.read() != '\n') {
        reader.reset();
      }
      return reader;
    } catch (IOException e) {
      throw new IllegalStateException("reading from memory failed", e);
    }
  }

  /** The first line, up to the longest possible header row. */
  String firstLine() {
    return line(false);
  }

  /**
   * The first line that is not blank, up to the longest possible header row; empty if there is
   * none.
   */
  String header() {
    String line = line(true);
    return line.isBlank() ? "" : line;
  }

  private String line(boolean skipBlank) {
    try (Reader reader = reader()) {
      return line(reader, skipBlank);
    } catch (IOException e) {
      throw new IllegalStateException("reading from memory failed", e);
    }
  }

  private static String line(Reader reader, boolean skipBlank) throws IOException {
    StringBuilder line = new StringBuilder();
    boolean filled = false;
    for (int letter = reader.read(); letter >= 0; letter = reader.read()) {
      if (letter != '\n' && letter != '\r') {
        line.append((char) letter);
        filled |= !Character.isWhitespace(letter);
      } else if (filled || !skipBlank) {
        break;
      } else {
        line.setLength(0);
      }
      if (line.length() >= LONGEST_HEADER) {
        break;
      }
    }
    return line.toString();
  }
}
