package org.jawroom.report.compare;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jawroom.publish.Scratch;

/**
 * External merge sort of any number of records by their bytes as unsigned numbers, in bounded
 * memory: records beyond the buffer go in sorted runs to temporary files, which are merged. A few
 * records need no file.
 */
final class SortedRecords {

  /** Bytes of records held in memory. */
  static final int HELD = 16 << 20;

  /** Memory overhead of a record in bytes. */
  private static final int OVERHEAD = 24;

  /** Number of files merged at once. */
  private static final int MERGED = 32;

  private static final int BUFFER = 1 << 15;

  private final int most;
  private final List<byte[]> held = new ArrayList<>();
  private long bytes;

  /** The files of each merge level; {@link #MERGED} files of one level become one of the next. */
  private final List<List<Path>> levels = new ArrayList<>();

  SortedRecords(int most) {
    this.most = most;
  }

  /** Iterates over records in order. */
  interface Cursor {

    /** The next record, or empty after the last. */
    Optional<byte[]> next() throws IOException;
  }

  /** Adds a record. */
  void add(byte[] one) throws IOException {
    held.add(one);
    bytes += one.length + OVERHEAD;
    if (bytes > most) {
      held.sort(Arrays::compareUnsigned);
      Iterator<byte[]> all = held.iterator();
      Path file = written(() -> all.hasNext() ? Optional.of(all.next()) : Optional.empty());
      held.clear();
      bytes = 0;
      keep(file, 0);
    }
  }

  /** Returns all records in order; may be called once, and nothing may be added afterwards. */
  Cursor sorted() throws IOException {
    held.sort(Arrays::compareUnsigned);
    Iterator<byte[]> last = held.iterator();
    List<Cursor> all = new ArrayList<>();
    for (List<Path> files : levels) {
      for (Path file : files) {
        all.add(opened(file));
      }
    }
    all.add(() -> last.hasNext() ? Optional.of(last.next()) : Optional.empty());
    return merged(all);
  }

  private void keep(Path file, int level) throws IOException {
    if (level == levels.size()) {
      levels.add(new ArrayList<>());
    }
    List<Path> files = levels.get(level);
    files.add(file);
    if (files.size() == MERGED) {
      List<Cursor> all = new ArrayList<>();
      for (Path one : files) {
        all.add(opened(one));
      }
      Path larger = written(merged(all));
      files.clear();
      keep(larger, level + 1);
    }
  }

  private static Path written(Cursor all) throws IOException {
    Path file = Scratch.file("sorted", ".tmp");
    try (DataOutputStream out =
        new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file), BUFFER))) {
      for (Optional<byte[]> one = all.next(); one.isPresent(); one = all.next()) {
        out.writeInt(one.get().length);
        out.write(one.get());
      }
      // End marker: no record has a negative length.
      out.writeInt(-1);
    } catch (FileSystemException named) {
      throw named;
    } catch (IOException full) {
      throw new FileSystemException(file.getParent().toString(), null, full.getMessage());
    }
    return file;
  }

  /** Deletes the file after its last record. */
  private static Cursor opened(Path file) throws IOException {
    DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(file), BUFFER));
    return () -> {
      int length = in.readInt();
      if (length < 0) {
        in.close();
        Files.delete(file);
        return Optional.empty();
      }
      return Optional.of(in.readNBytes(length));
    };
  }

  private static Cursor merged(List<Cursor> all) throws IOException {
    PriorityQueue<Head> heads = new PriorityQueue<>();
    for (Cursor cursor : all) {
      Head.of(cursor).ifPresent(heads::add);
    }
    return () -> {
      Head least = heads.poll();
      if (least == null) {
        return Optional.empty();
      }
      Head.of(least.rest).ifPresent(heads::add);
      return Optional.of(least.first);
    };
  }

  /** The current record of a cursor in a merge. */
  private static final class Head implements Comparable<Head> {
    private final byte[] first;
    private final Cursor rest;

    private Head(byte[] first, Cursor rest) {
      this.first = first;
      this.rest = rest;
    }

    static Optional<Head> of(Cursor cursor) throws IOException {
      return cursor.next().map(first -> new Head(first, cursor));
    }

    @Override
    public int compareTo(Head other) {
      return Arrays.compareUnsigned(first, other.first);
    }
  }
}
