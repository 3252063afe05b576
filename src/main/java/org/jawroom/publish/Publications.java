package org.jawroom.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/**
 * What this process is about to publish. When the process is asked to stop, moves that have begun
 * are made to the end, none begins after that, and files that are not in their places are removed.
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
   * Adds one whose files are removed if the process is asked to stop.
   *
   * @throws IOException if it has been asked to
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
   * Makes a step that the end of the process waits for.
   *
   * @throws IOException if it throws that, or the process has been asked to stop
   */
  static synchronized void make(Step step) throws IOException {
    refuseIfStopped();
    step.make();
  }

  /** Takes out one whose files are all in their places, or removed. */
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
