package org.jawroom.launch;

import java.util.OptionalInt;
import org.jawroom.app.output.ExitStatus;

/**
 * The main class of the child JVM that {@link QuickStart} starts. Its exit statuses are offset, so
 * that the parent can distinguish them from those of a JVM that could not start (1) or was killed
 * (128 plus the signal). The parent thus never repeats a command that has already written output.
 */
public final class SecondJava {
  /** The system property that holds the parent's process number. */
  static final String FIRST = "jawroom.first";

  private static final int RAN = 100;

  /** Below {@link #RAN}, as the status of a JVM that could not start. */
  private static final int DID_NOT_RUN = 1;

  /** How often the child looks for its parent: well under the second within which it must stop. */
  private static final long PAUSE_MS = 200;

  private SecondJava() {}

  /** Runs a command and ends the process with its exit status plus {@value #RAN}. */
  public static void main(String[] args) {
    Long first = Long.getLong(FIRST);
    if (first != null) {
      if (!isParent(first)) {
        // The parent has ended, or the system does not show it: then it runs the command itself.
        System.exit(DID_NOT_RUN);
      }
      Thread watch = new Thread(() -> endWith(first), "first Java");
      watch.setDaemon(true);
      watch.start();
    }
    int status = Main.run(args);
    ClassArchive.keepStatus(status);
    System.exit(RAN + status);
  }

  /**
   * Ends this process when its parent has ended, even by SIGKILL. It polls rather than reads from a
   * pipe: at exit HotSpot waits 300 ms for a thread that is blocked in a native call.
   */
  private static void endWith(long first) {
    try {
      while (isParent(first)) {
        Thread.sleep(PAUSE_MS);
      }
    } catch (InterruptedException none) {
      // No code interrupts this thread.
    }
    System.exit(QuickStart.TERMINATED);
  }

  /**
   * Whether that process is still the parent. A process whose parent has ended gets another at
   * once, or none, even where nobody has collected the exit status of the old one.
   */
  private static boolean isParent(long first) {
    return ProcessHandle.current()
        .parent()
        .filter(parent -> parent.pid() == first && parent.isAlive())
        .isPresent();
  }

  /**
   * Decodes the exit status of the command.
   *
   * @param ended the exit status of the child process
   * @return empty if the command did not run; {@code ended} itself if the child was killed
   */
  static OptionalInt statusOf(int ended) {
    if (ended < RAN) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(ran(ended) ? ended - RAN : ended);
  }

  /** Whether both the command and its JVM ended normally. */
  static boolean ran(int ended) {
    return ended >= RAN && ended <= RAN + ExitStatus.UNREADABLE || ended == RAN + ExitStatus.BUG;
  }
}
