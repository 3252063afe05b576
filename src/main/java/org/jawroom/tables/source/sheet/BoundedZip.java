package org.jawroom.tables.source.sheet;

import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * The parts of a workbook, unpacked only while they are read, and only up to the size that a valid
 * workbook can need: a small file may unpack to any size.
 *
 * <p>Part names are case-insensitive (ECMA-376 part 2, 6.2.2.3).
 */
final class BoundedZip implements Closeable {

  private static final int MOST_PARTS = 10_000;

  private final ZipFile zip;
  private final Map<String, ZipArchiveEntry> parts = new HashMap<>();

  BoundedZip(byte[] bytes) throws IOException {
    zip = ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
    Enumeration<ZipArchiveEntry> all = zip.getEntries();
    while (all.hasMoreElements()) {
      ZipArchiveEntry part = all.nextElement();
      parts.putIfAbsent(key(part.getName()), part);
      if (parts.size() > MOST_PARTS) {
        zip.close();
        throw new IOException("more than " + MOST_PARTS + " parts");
      }
    }
  }

  boolean has(String part) {
    return parts.containsKey(key(part));
  }

  /**
   * The content of an existing part.
   *
   * @param most the number of bytes after which reading fails
   */
  InputStream open(String part, long most) throws IOException {
    return new Bounded(zip.getInputStream(parts.get(key(part))), most);
  }

  /** Some programs write the path separators of their own file system, or a leading slash. */
  private static String key(String part) {
    String plain = part.replace('\\', '/').toLowerCase(Locale.ROOT);
    return plain.startsWith("/") ? plain.substring(1) : plain;
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }

  private static final class Bounded extends FilterInputStream {
    private long left;

    Bounded(InputStream in, long most) {
      super(in);
      this.left = most;
    }

    @Override
    public int read() throws IOException {
      int read = super.read();
      count(read < 0 ? 0 : 1);
      return read;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
      int read = super.read(bytes, offset, length);
      count(Math.max(0, read));
      return read;
    }

    private void count(int read) throws IOException {
      left -= read;
      if (left < 0) {
        throw new IOException("it is larger than a workbook of tables can need");
      }
    }
  }
}
