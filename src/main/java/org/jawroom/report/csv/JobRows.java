package org.jawroom.report.csv;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.publish.Scratch;

/**
 * The rows of {@code jobs.csv}, which come pairing by pairing and are written job by job. Of each
 * job the last ones are held in memory and those before wait in a temporary file, so that memory
 * does not grow with pairings; of a few nothing goes to the disk.
 */
public final class JobRows implements Closeable {

  /** What is held of all jobs together, bytes; of each at least {@link #LEAST}. */
  private static final int HELD = 1 << 22;

  private static final int LEAST = 1 << 10;

  /** What is copied at a time, bytes. */
  private static final int PIECE = 1 << 17;

  private final List<ByteArrayOutputStream> waiting = new ArrayList<>();
  private final int held;
  private Path folder;

  public JobRows(int jobs) {
    this.held = Math.max(LEAST, HELD / Math.max(1, jobs));
    for (int job = 0; job < jobs; job++) {
      waiting.add(new ByteArrayOutputStream());
    }
  }

  /** Adds the next rows of each job. */
  public void add(List<byte[]> rows) throws IOException {
    for (int job = 0; job < rows.size(); job++) {
      ByteArrayOutputStream last = waiting.get(job);
      last.writeBytes(rows.get(job));
      if (last.size() > held) {
        setAside(job);
      }
    }
  }

  private void setAside(int job) throws IOException {
    if (folder == null) {
      folder = Scratch.directory("jobs-");
    }
    // Opened anew each time: there may be more jobs than a process may have open files.
    try (OutputStream file =
        Files.newOutputStream(file(job), StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      waiting.get(job).writeTo(file);
    }
    waiting.get(job).reset();
  }

  private Path file(int job) {
    return folder.resolve(String.valueOf(job));
  }

  /** Writes the file with its header row; does not close {@code out}. */
  public void writeTo(OutputStream out) throws IOException {
    out.write(JobsCsv.header());
    for (int job = 0; job < waiting.size(); job++) {
      if (folder != null && Files.exists(file(job))) {
        copy(file(job), out);
        Files.delete(file(job));
      }
      waiting.get(job).writeTo(out);
    }
  }

  /** As {@link Files#copy}, which takes 8 kB at a time and so far more calls. */
  private static void copy(Path file, OutputStream out) throws IOException {
    byte[] some = new byte[PIECE];
    try (InputStream in = Files.newInputStream(file)) {
      for (int read = in.read(some); read >= 0; read = in.read(some)) {
        out.write(some, 0, read);
      }
    }
  }

  /** Removes the temporary files. */
  @Override
  public void close() throws IOException {
    if (folder != null) {
      for (int job = 0; job < waiting.size(); job++) {
        Files.deleteIfExists(file(job));
      }
      Files.deleteIfExists(folder);
    }
  }
}
