package org.jawroom.report.xlsx.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jawroom.publish.Scratch;

/**
 * Bytes that are written once and read afterwards: few in memory, more in a temporary file. Most
 * sheets are small, and creating and deleting a file for each takes longer than filling it.
 */
final class WaitingBytes extends OutputStream {
  private final int held;
  private final ByteArrayOutputStream memory = new ByteArrayOutputStream();
  private Path file;
  private OutputStream disk;

  /** Keeps at most {@code held} bytes in memory. */
  WaitingBytes(int held) {
    this.held = held;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    if (disk == null && memory.size() + length > held) {
      file = Scratch.file("sheet", ".xml");
      disk = Files.newOutputStream(file);
      memory.writeTo(disk);
      memory.reset();
    }
    (disk == null ? memory : disk).write(bytes, offset, length);
  }

  /** Ends writing. */
  @Override
  public void close() throws IOException {
    if (disk != null) {
      disk.close();
    }
  }

  /** What was written, once it is closed. */
  InputStream read() throws IOException {
    return file == null
        ? new ByteArrayInputStream(memory.toByteArray())
        : Files.newInputStream(file);
  }

  /** Removes the file, if there is one. */
  void remove() throws IOException {
    close();
    if (file != null) {
      Files.deleteIfExists(file);
    }
  }
}
