package org.jawroom.publish;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/**
 * Writes a file and adds the file's name to failures; that of a full disk, for example, has none.
 */
public final class NamedOutput extends FilterOutputStream {
  private final Path file;

  /**
   * @param file the name that the user knows, whatever file {@code out} writes to
   */
  NamedOutput(Path file, OutputStream out) {
    super(out);
    this.file = file;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    try {
      out.write(bytes, offset, length);
    } catch (IOException failure) {
      throw named(file, failure);
    }
  }

  /** The same failure; names {@code file} if it names none. */
  public static FileSystemException named(Path file, IOException failure) {
    if (failure instanceof FileSystemException known) {
      return known;
    }
    FileSystemException named =
        new FileSystemException(file.toString(), null, failure.getMessage());
    named.initCause(failure);
    return named;
  }
}
