package org.jawroom.launch;

import java.io.IOException;
import java.io.OutputStream;
import java.util.OptionalInt;
import org.jawroom.app.ExitStatus;

/**
 * What {@link QuickStart} starts in a Java of its own. Its statuses are told apart from those with
 * which a Java ends that could not start (1) or was killed (128 and the signal); so what has been
 * written once, to standard output as well, is not written again.
 */
public final class SecondJava {
  private static final int RAN = 100;

  private SecondJava() {}

  /** PairingRuns a command and ends the process with its exit status and {@value #RAN}. */
  public static void main(String[] args) {
    Thread first = new Thread(SecondJava::endWithTheFirst, "first Java");
    first.setDaemon(true);
    first.start();
    int status = Main.run(args);
    ClassArchive.keepStatus(status);
    System.exit(RAN + status);
  }

  /**
   * The first Java holds the other end of the input and writes nothing: the input ends when the
   * first Java does, even where it is killed and can say nothing.
   */
  private static void endWithTheFirst() {
    try {
      System.in.transferTo(OutputStream.nullOutputStream());
    } catch (IOException ended) {
      // As good as the end of the input.
    }
    System.exit(QuickStart.TERMINATED);
  }

  /**
   * The exit status of the command.
   *
   * @param ended what the process ended with
   * @return empty if no command was run; what it ended with if it was killed
   */
  static OptionalInt statusOf(int ended) {
    if (ended < RAN) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(ran(ended) ? ended - RAN : ended);
  }

  /** Whether a command ran to its end, and so did the Java it ran in. */
  static boolean ran(int ended) {
    return ended >= RAN && ended <= RAN + ExitStatus.UNREADABLE || ended == RAN + ExitStatus.BUG;
  }
}
