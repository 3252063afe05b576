package org.jawroom.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;

/**
 * Hands on text with a question mark for every character by which a name, a sheet or a file could
 * steer a terminal or turn round what it shows.
 */
final class PlainWriter extends FilterWriter {

  /** The first halves of the tags and selectors of plane 14, which are never seen. */
  private static final char PLANE_14 = '\udb40';

  private PlainWriter(Writer out) {
    super(out);
  }

  static PrintWriter around(PrintWriter out) {
    return new PrintWriter(new PlainWriter(out), true);
  }

  @Override
  public void write(int letter) throws IOException {
    out.write(plain((char) letter));
  }

  @Override
  public void write(char[] text, int offset, int length) throws IOException {
    write(new String(text, offset, length), 0, length);
  }

  @Override
  public void write(String text, int offset, int length) throws IOException {
    StringBuilder shown = new StringBuilder(length);
    text.substring(offset, offset + length).chars().forEach(one -> shown.append(plain((char) one)));
    out.write(shown.toString());
  }

  private static char plain(char letter) {
    boolean steers =
        Character.isISOControl(letter) && "\n\r\t".indexOf(letter) < 0
            || Character.getType(letter) == Character.FORMAT && "\u200c\u200d".indexOf(letter) < 0
            || letter == PLANE_14;
    return steers ? '?' : letter;
  }
}
