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
 * Standard output or error of the process, UTF-8 whatever the locale, so that no character of a
 * name is lost. It keeps the first failure, which a {@link PrintWriter} would only note.
 */
public final class StandardStream extends OutputStream {
  private final OutputStream out;
  private Optional<IOException> failure = Optional.empty();

  /** Not to be closed: it is the process's. */
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

  /** For lines of text. */
  PrintWriter writer() {
    return new PrintWriter(this, true, StandardCharsets.UTF_8);
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  /** After a failure nothing more, so that what was written has no hole. */
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

  /** Why not everything was written. */
  Optional<String> failure() {
    return failure.map(IOException::getMessage);
  }

  /** Whether that is only that nobody reads any further, as {@code | head} does. */
  boolean isClosedPipe() {
    return failure().filter(why -> why.toLowerCase(Locale.ROOT).contains("pipe")).isPresent();
  }
}
