package org.jawroom.app.output;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Prints data as they arrive, through the same writer as any text of a command. */
public final class PrintedData extends OutputStream {
  private final PrintWriter out;

  public PrintedData(PrintWriter out) {
    this.out = out;
  }

  /** The output cannot be written any further; the end of the run reports why. */
  public static final class Stopped extends IOException {
    private static final long serialVersionUID = 1L;

    private Stopped() {
      super("standard output cannot be written");
    }
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  /**
   * Writes whole characters, UTF-8.
   *
   * @throws Stopped if the writer has failed
   */
  @Override
  public void write(byte[] bytes, int offset, int length) throws Stopped {
    out.print(new String(bytes, offset, length, StandardCharsets.UTF_8));
    if (out.checkError()) {
      throw new Stopped();
    }
  }
}
