package org.jawroom.spark;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.hadoop.fs.FSDataOutputStream;
import org.apache.hadoop.fs.LocalFileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.permission.FsPermission;
import org.apache.hadoop.util.Progressable;

/**
 * The local disk, on which writing a part fails in its middle: each part of the report {@link
 * #report} as often as {@link #times} says.
 */
public final class FailingDisk extends LocalFileSystem {

  /** The folder of the parts. */
  static volatile String report;

  /** How often each attempt number fails: those below this one. */
  static volatile int times;

  /** How often writing has failed. */
  static final AtomicInteger FAILED = new AtomicInteger();

  @Override
  public FSDataOutputStream create(
      Path file,
      FsPermission permission,
      boolean overwrite,
      int buffer,
      short replication,
      long block,
      Progressable progress)
      throws IOException {
    FSDataOutputStream out =
        super.create(file, permission, overwrite, buffer, replication, block, progress);
    return fails(file.toString()) ? new FSDataOutputStream(new Broken(out), null) : out;
  }

  /**
   * The folder of an attempt is named {@code attempt_TIME_JOB_m_TASK_ATTEMPT}; Parquet counts the
   * attempts of all tasks together.
   */
  private static boolean fails(String file) {
    int folder = file.indexOf("/attempt_");
    if (folder < 0 || !file.contains("/" + report + "/")) {
      return false;
    }
    String attempt = file.substring(folder + 1, file.indexOf('/', folder + 1));
    return Integer.parseInt(attempt.substring(attempt.lastIndexOf('_') + 1)) < times;
  }

  /** Writes some bytes, then no more. */
  private static final class Broken extends FilterOutputStream {
    private int left = 1000;

    Broken(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      if (length > left) {
        FAILED.incrementAndGet();
        throw new IOException("the disk is full");
      }
      out.write(bytes, from, length);
      left -= length;
    }

    @Override
    public void write(int one) throws IOException {
      write(new byte[] {(byte) one}, 0, 1);
    }
  }
}
