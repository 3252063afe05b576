package org.jawroom.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;

/**
 * An advisory lock held while a run publishes files in a folder; a second run waits. The operating
 * system releases it when the process ends, however that happens. On a file system without locks it
 * excludes nobody.
 */
final class FolderLock implements Closeable {
  private static final String FILE = ".jawroom-lock";

  /** The locked byte lies where nobody reads: on some systems a lock also blocks reading. */
  private static final long PLACE = Long.MAX_VALUE - 1;

  private static final SecureRandom LENGTHS = new SecureRandom();

  private static final long PAUSE_MS = 20;
  private static final long PATIENCE_MS = 120_000;

  private final Path file;
  private final FileChannel channel;
  private final boolean held;

  private FolderLock(Path file, FileChannel channel, boolean held) {
    this.file = file;
    this.channel = channel;
    this.held = held;
  }

  /**
   * Waits until no other run holds the lock.
   *
   * @throws FileSystemException if that takes unreasonably long
   */
  static FolderLock on(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    for (long waited = 0; waited < PATIENCE_MS; waited += PAUSE_MS) {
      FolderLock lock = opened(folder, file);
      try {
        FolderLock taken = lock.taken();
        if (taken != null) {
          return taken;
        }
        lock.channel.close();
        Thread.sleep(PAUSE_MS);
      } catch (IOException failure) {
        lock.close();
        throw failure;
      } catch (InterruptedException stop) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    throw new FileSystemException(
        folder.toString(), null, "another run is writing there; run again when it is done");
  }

  private static FolderLock opened(Path folder, Path file) throws IOException {
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      return new FolderLock(file, channel, false);
    } catch (FileSystemException refused) {
      // The message names the folder, which the user knows, instead of the lock file.
      throw refused.getReason() == null
          ? refused
          : new FileSystemException(folder.toString(), null, refused.getReason());
    }
  }

  /** Null while another run holds it. */
  private FolderLock taken() throws IOException {
    FileLock lock;
    try {
      lock = channel.tryLock(PLACE, 1, false);
    } catch (OverlappingFileLockException ofThisProcess) {
      return null;
    } catch (IOException noLocksHere) {
      return new FolderLock(file, channel, false);
    }
    return lock != null && isStillThere() ? new FolderLock(file, channel, true) : null;
  }

  /**
   * Checks that the locked file is still the one at the path: the previous holder may have deleted
   * it between our opening and locking it, and another run may have created a new one. A random
   * length identifies the file. Opening and closing it a second time for a comparison would release
   * the lock (POSIX).
   */
  private boolean isStillThere() throws IOException {
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(new byte[1]), LENGTHS.nextInt(1 << 16));
    try {
      return Files.size(file) == channel.size();
    } catch (NoSuchFileException gone) {
      return false;
    }
  }

  /** Whether the lock excludes other runs. */
  boolean isHeld() {
    return held;
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      Files.deleteIfExists(file);
    }
  }
}
