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
 * A temporary file that is later renamed to its final name. It is locked until it is closed, so
 * that another run can see whether the process that writes it is alive.
 */
final class PartFile implements Closeable {
  private static final int BUFFER = 1 << 16;

  /**
   * The locked byte lies where nobody reads or writes: on some systems a lock also blocks access.
   */
  private static final long PLACE = Long.MAX_VALUE - 1;

  private final Path file;
  private final FileChannel channel;
  private final OutputStream out;
  private final boolean taken;

  /**
   * Creates and locks {@code file}.
   *
   * @param target the final name, which failures mention
   * @throws IOException if it cannot be created or exists
   */
  PartFile(Path file, Path target) throws IOException {
    this.file = file;
    this.channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    this.out = new Unclosed(new NamedOutput(target, Channels.newOutputStream(channel)));
    this.taken = !isLocked() || !Files.exists(file);
  }

  /** Whether another run deleted the file between its creation and its locking. */
  boolean isTaken() {
    return taken;
  }

  Path file() {
    return file;
  }

  /** A buffered stream for the content; closing it keeps the lock. */
  OutputStream out() {
    return out;
  }

  /** Flushes the buffer and forces the content to the disk, so that it survives a power failure. */
  void force() throws IOException {
    out.flush();
    channel.force(true);
  }

  /** Closes the file and drops buffered content. */
  @Override
  public void close() throws IOException {
    channel.close();
  }

  /** Deletes {@code file} if no process has it locked and it can be deleted. */
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
      // It belongs to another run or user: it takes space but does no harm.
    }
  }

  private boolean isLocked() {
    try {
      return channel.tryLock(PLACE, 1, false) != null;
    } catch (IOException noLocksHere) {
      // Without locks, no other run can lock it either, so none deletes it.
      return true;
    }
  }

  /** Closing the channel would release the lock. */
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
