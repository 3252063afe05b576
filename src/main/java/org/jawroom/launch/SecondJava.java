package org.jawroom.launch;

import java.io.IOException;
import java.io.OutputStream;
import java.util.OptionalInt;
import org.jawroom.app.ExitStatus;

/**
 * The main class of the child JVM that {@link QuickStart} starts. Its exit statuses are offset, so
 * that the parent can distinguish them from those of a JVM that could not start (1) or was killed
 * (128 plus the signal). The parent thus never repeats a command that has already written output.
 */
public final class SecondJava {
  private static final int RAN = 100;

  private SecondJava() {}

  /** Runs a command and ends the process with its exit status plus {@value #RAN}. */
  public static void main(String[] args) {
    Thread first = new Thread(SecondJava::endWithTheFirst, "first Java");
    first.setDaemon(true);
    first.start();
    int status = Main.run(args);
    ClassArchive.keepStatus(status);
    System.exit(RAN + status);
  }

  /**
   * The parent holds the other end of this process's standard input and writes nothing: end of file
   * means that the parent has ended, even by SIGKILL.
   */
  private static void endWithTheFirst() {
    try {
      System.in.transferTo(OutputStream.nullOutputStream());
    } catch (IOException ended) {
      // A read error counts as end of file.
    }
    System.exit(QuickStart.TERMINATED);
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
