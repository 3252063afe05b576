package org.jawroom.publish;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file that is written before it is moved to its place. It is locked until it is closed, so that
 * another run can see whether the process that writes it still lives.
 */
final class PartFile implements Closeable {
  private static final int BUFFER = 1 << 16;

  /** Where nobody reads or writes: some systems keep others from what is locked. */
  private static final long PLACE = Long.MAX_VALUE - 1;

  private final Path file;
  private final FileChannel channel;
  private final OutputStream out;
  private final boolean taken;

  /**
   * Makes and locks {@code file}.
   *
   * @param target the file as people know it, which failures name
   * @throws IOException if it cannot be made, or is there
   */
  PartFile(Path file, Path target) throws IOException {
    this.file = file;
    this.channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    this.out = new Unclosed(new NamedOutput(target, Channels.newOutputStream(channel)));
    this.taken = !isLocked() || !Files.exists(file);
  }

  /** Whether another run has removed it before it was locked. */
  boolean isTaken() {
    return taken;
  }

  Path file() {
    return file;
  }

  /** Where to write it, buffered; to close that leaves the file locked. */
  OutputStream out() {
    return out;
  }

  /** Writes what is buffered onto the disk, so that a power cut cannot undo it. */
  void force() throws IOException {
    out.flush();
    channel.force(true);
  }

  /** Closes it without what may still be buffered. */
  @Override
  public void close() throws IOException {
    channel.close();
  }

  /** Removes {@code file} if no process has it open, and it can be removed. */
  static void removeIfLeft(Path file) {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      if (channel.tryLock(PLACE, 1, false) != null) {
        Files.delete(file);
      }
    } catch (IOException stays) {
      // Another run's, or another user's: it takes room, but does no harm.
    }
  }

  private boolean isLocked() {
    try {
      return channel.tryLock(PLACE, 1, false) != null;
    } catch (IOException noLocksHere) {
      // Then no other run can lock it either, and none removes it.
      return true;
    }
  }

  /** To close the channel would end the lock. */
  private static final class Unclosed extends FilterOutputStream {
    Unclosed(OutputStream out) {
      super(new BufferedOutputStream(out, BUFFER));
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
      out.write(bytes, offset, length);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }
}
