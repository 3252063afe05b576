package org.jawroom.launch;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output or error of the process, encoded in UTF-8 in every locale, so that no character
 * of a name is lost. It keeps the first failure; a {@link PrintWriter} would keep only a flag.
 */
public final class StandardStream extends OutputStream {
  private final OutputStream out;
  private Optional<IOException> failure = Optional.empty();

  /** Never closed: the stream belongs to the process. */
  private StandardStream(FileDescriptor descriptor) {
    this(new FileOutputStream(descriptor));
  }

  public StandardStream(OutputStream out) {
    this.out = out;
  }

  static StandardStream output() {
    return new StandardStream(FileDescriptor.out);
  }

  static StandardStream error() {
    return new StandardStream(FileDescriptor.err);
  }

  /** A writer for lines of text. */
  PrintWriter writer() {
    return new PrintWriter(this, true, StandardCharsets.UTF_8);
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  /** Writes nothing after a failure, so that the output is a prefix without gaps. */
  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    if (failure.isPresent()) {
      throw failure.get();
    }
    try {
      out.write(bytes, offset, length);
    } catch (IOException full) {
      failure = Optional.of(full);
      throw full;
    }
  }

  @Override
  public void flush() throws IOException {
    out.flush();
  }

  /** The reason why the output is incomplete, if it is. */
  Optional<String> failure() {
    return failure.map(IOException::getMessage);
  }

  /** Whether the only failure is that the reader has closed the pipe, as {@code | head} does. */
  boolean isClosedPipe() {
    return failure().filter(why -> why.toLowerCase(Locale.ROOT).contains("pipe")).isPresent();
  }
}
