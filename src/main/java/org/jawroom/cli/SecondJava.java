package org.jawroom.cli;

import java.util.OptionalInt;

/**
 * What {@link QuickStart} starts in a Java of its own. Its statuses are told apart from those with
 * which a Java ends that could not start (1) or was killed (128 and the signal); so what has been
 * written once, to standard output as well, is not written again.
 */
public final class SecondJava {
  private static final int RAN = 100;

  private SecondJava() {}

  /** Runs a command and ends the process with its exit status and {@value #RAN}. */
  public static void main(String[] args) {
    System.exit(RAN + Main.run(args));
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
    boolean ran = ended <= RAN + ExitStatus.UNREADABLE || ended == RAN + ExitStatus.BUG;
    return OptionalInt.of(ran ? ended - RAN : ended);
  }
}
