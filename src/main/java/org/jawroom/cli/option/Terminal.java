package org.jawroom.cli.option;

import picocli.CommandLine.Model.UsageMessageSpec;

/** The terminal that the output of a command goes to. */
public final class Terminal {
  private static final int PIPE = 80;

  private Terminal() {}

  /** How many characters a line may have: the terminal's width, 80 in a pipe. */
  @SuppressWarnings("SystemConsoleNull") // from Java 22 on it asks TERM alone, which is enough
  public static int columns() {
    return System.console() == null ? PIPE : new UsageMessageSpec().autoWidth(true).width();
  }
}
