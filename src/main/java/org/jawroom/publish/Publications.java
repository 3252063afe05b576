package org.jawroom.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/**
 * The publications in progress in this process. On SIGTERM begun renames are completed, no further
 * ones begin, and unpublished files are deleted.
 */
final class Publications {
  private static final Set<AtomicFiles> OPEN = new HashSet<>();
  private static boolean hooked;
  private static boolean stopped;

  private Publications() {}

  /** Makes changes that belong together. */
  interface Step {
    void make() throws IOException;
  }

  /**
   * Registers a publication; its files are deleted if the process is asked to stop.
   *
   * @throws IOException if the process has already been asked to stop
   */
  static synchronized void begin(AtomicFiles files) throws IOException {
    refuseIfStopped();
    if (!hooked) {
      try {
        Runtime.getRuntime().addShutdownHook(new Thread(Publications::stop));
      } catch (IllegalStateException stopping) {
        stopped = true;
        refuseIfStopped();
      }
      hooked = true;
    }
    OPEN.add(files);
  }

  /**
   * Runs a step that process termination waits for.
   *
   * @throws IOException if the step throws it or the process has been asked to stop
   */
  static synchronized void make(Step step) throws IOException {
    refuseIfStopped();
    step.make();
  }

  /** Unregisters a publication whose files are all published or deleted. */
  static synchronized void end(AtomicFiles files) {
    OPEN.remove(files);
  }

  /** Whether this process is writing {@code file}. */
  static synchronized boolean isWriting(Path file) {
    return OPEN.stream().anyMatch(files -> files.isWriting(file));
  }

  private static synchronized void stop() {
    stopped = true;
    OPEN.forEach(AtomicFiles::abandon);
  }

  private static void refuseIfStopped() throws IOException {
    if (stopped) {
      throw new IOException("this run has been stopped");
    }
  }
}
