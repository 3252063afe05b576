package org.jawroom.app.output;

/** The exit statuses of a run. */
public final class ExitStatus {
  public static final int DONE = 0;
  public static final int REFUSED = 1;
  public static final int WRONG_USE = 2;
  public static final int UNREADABLE = 3;
  public static final int BUG = 70;

  private ExitStatus() {}
}
