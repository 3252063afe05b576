package org.jawroom.app.output;

import java.io.PrintWriter;

/** A progress bar on a terminal; prints nothing into a pipe or a file. */
public final class Progress {
  private static final int WIDTH = 30;
  private static final int LINE = WIDTH + 45;

  private final PrintWriter err;
  private boolean shown;
  private int filled = -1;

  private Progress(PrintWriter err, boolean shown) {
    this.err = err;
    this.shown = shown;
  }

  /** Shown if the process talks to a terminal. */
  public static Progress on(PrintWriter err) {
    return new Progress(err, talksToAPerson() && !"dumb".equals(System.getenv("TERM")));
  }

  @SuppressWarnings("SystemConsoleNull") // from Java 22 on it asks TERM alone, which is enough
  private static boolean talksToAPerson() {
    return System.console() != null;
  }

  /** Always shown. */
  static Progress always(PrintWriter err) {
    return new Progress(err, true);
  }

  public synchronized void show(long done, long all) {
    int now = all == 0 ? WIDTH : (int) (done * WIDTH / all);
    if (shown && now != filled) {
      filled = now;
      err.print(
          "\rpairings [" + "#".repeat(now) + ".".repeat(WIDTH - now) + "] " + done + " of " + all);
      err.flush();
    }
  }

  /** Shows what is in progress if its duration is unknown. */
  public synchronized void step(String words) {
    if (shown) {
      String line = "planning: " + words;
      String cut = line.length() <= LINE ? line : line.substring(0, LINE);
      err.print("\r" + cut + " ".repeat(LINE - cut.length()));
      err.flush();
      filled = 0;
    }
  }

  /** Clears the bar, so that the next output starts on an empty line. */
  public synchronized void clear() {
    if (shown && filled >= 0) {
      err.print("\r" + " ".repeat(LINE) + "\r");
      err.flush();
      filled = -1;
    }
  }

  /**
   * Clears the bar for good: abandoned work may continue for a while and must not draw it again.
   */
  public synchronized void end() {
    clear();
    shown = false;
  }
}
