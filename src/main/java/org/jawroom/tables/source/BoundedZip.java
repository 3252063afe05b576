package org.jawroom.tables.source;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Enumeration;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.apache.poi.openxml4j.util.ZipEntrySource;

/**
 * The parts of a workbook, unpacked only while they are read, and none beyond what a workbook of
 * ours can need: a small file may unpack to any size.
 */
final class BoundedZip implements ZipEntrySource {

  /** Sheets and shared texts are read by events and take no room themselves. */
  private static final long LARGEST_STREAMED = 512L << 20;

  /** Everything else becomes objects, some ten times as large. */
  private static final long LARGEST_OTHER = 8L << 20;

  private static final int MOST_PARTS = 10_000;

  private final ZipFile zip;
  private boolean closed;

  BoundedZip(byte[] bytes) throws IOException {
    zip = ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
    int parts = 0;
    for (Enumeration<ZipArchiveEntry> all = zip.getEntries();
        all.hasMoreElements();
        all.nextElement()) {
      if (++parts > MOST_PARTS) {
        zip.close();
        throw new IOException("more than " + MOST_PARTS + " parts");
      }
    }
  }

  @Override
  public Enumeration<? extends ZipArchiveEntry> getEntries() {
    return zip.getEntries();
  }

  @Override
  public ZipArchiveEntry getEntry(String path) {
    return zip.getEntry(path.startsWith("/") ? path.substring(1) : path);
  }

  @Override
  public InputStream getInputStream(ZipArchiveEntry entry) throws IOException {
    boolean streamed =
        entry.getName().startsWith("xl/worksheets/sheet")
            || entry.getName().equals("xl/sharedStrings.xml");
    return new Bounded(zip.getInputStream(entry), streamed ? LARGEST_STREAMED : LARGEST_OTHER);
  }

  @Override
  public void close() throws IOException {
    closed = true;
    zip.close();
  }

  @Override
  public boolean isClosed() {
    return closed;
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
        throw new IOException("a part unpacks to more than a workbook of tables can need");
      }
    }
  }
}
