package org.jawroom.app.output;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;

/**
 * Replaces by a question mark every character with which a name, a sheet or a file could control a
 * terminal or reverse its text.
 */
public final class PlainWriter extends FilterWriter {

  /** The high surrogate of the tags and variation selectors in plane 14, which are invisible. */
  private static final char PLANE_14 = '\udb40';

  private final PrintWriter printer;

  private PlainWriter(PrintWriter out) {
    super(out);
    printer = out;
  }

  public static PrintWriter around(PrintWriter out) {
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
    char[] shown = new char[length];
    for (int i = 0; i < length; i++) {
      shown[i] = plain(text.charAt(offset + i));
    }
    out.write(new String(shown));
  }

  /** A {@link PrintWriter} itself throws nothing. */
  @Override
  public void flush() throws IOException {
    if (printer.checkError()) {
      throw new IOException("could not be written");
    }
  }

  private static char plain(char letter) {
    if (letter >= ' ' && letter <= '~') {
      return letter;
    }
    boolean steers =
        Character.isISOControl(letter) && "\n\r\t".indexOf(letter) < 0
            || Character.getType(letter) == Character.FORMAT && "\u200c\u200d".indexOf(letter) < 0
            || letter == PLANE_14;
    return steers ? '?' : letter;
  }
}
