package org.jawroom.app;

import java.io.PrintWriter;

/** A bar that fills up on a terminal; nothing in a pipe or a file. */
public final class Progress {
  /** By this property the first Java says that it talks to a person: the second has no input. */
  public static final String TERMINAL = "jawroom.terminal";

  private static final int WIDTH = 30;
  private static final int LINE = WIDTH + 45;

  private final PrintWriter err;
  private boolean shown;
  private int filled = -1;

  private Progress(PrintWriter err, boolean shown) {
    this.err = err;
    this.shown = shown;
  }

  /** Shown where the process is talking to a person. */
  public static Progress on(PrintWriter err) {
    return new Progress(err, talksToAPerson() && !"dumb".equals(System.getenv("TERM")));
  }

  @SuppressWarnings("SystemConsoleNull") // from Java 22 on it asks TERM alone, which is enough
  public static boolean talksToAPerson() {
    return Boolean.getBoolean(TERMINAL) || System.console() != null;
  }

  /** Shown whatever {@code err} is. */
  static Progress always(PrintWriter err) {
    return new Progress(err, true);
  }

  synchronized void show(long done, long all) {
    int now = all == 0 ? WIDTH : (int) (done * WIDTH / all);
    if (shown && now != filled) {
      filled = now;
      err.print(
          "\rpairings [" + "#".repeat(now) + ".".repeat(WIDTH - now) + "] " + done + " of " + all);
      err.flush();
    }
  }

  /** Says what is being done where nobody knows how long it takes. */
  synchronized void step(String words) {
    if (shown) {
      String line = "planning: " + words;
      String cut = line.length() <= LINE ? line : line.substring(0, LINE);
      err.print("\r" + cut + " ".repeat(LINE - cut.length()));
      err.flush();
      filled = 0;
    }
  }

  /** Takes the bar away, so that what follows starts on a clean line. */
  synchronized void clear() {
    if (shown && filled >= 0) {
      err.print("\r" + " ".repeat(LINE) + "\r");
      err.flush();
      filled = -1;
    }
  }

  /** Takes the bar away for good: work that was left unfinished may go on for a while. */
  synchronized void end() {
    clear();
    shown = false;
  }
}
