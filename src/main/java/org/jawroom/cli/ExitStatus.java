package org.jawroom.cli;

/** What a run comes to. */
final class ExitStatus {
  static final int DONE = 0;
  static final int REFUSED = 1;
  static final int WRONG_USE = 2;
  static final int UNREADABLE = 3;
  static final int BUG = 70;

  private ExitStatus() {}
}
