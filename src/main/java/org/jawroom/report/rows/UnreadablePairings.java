package org.jawroom.report.rows;

/**
 * A file is not a valid {@code pairings.csv}; the message gives the reason in one line, without the
 * file's name.
 */
public final class UnreadablePairings extends Exception {
  private static final long serialVersionUID = 1L;

  public UnreadablePairings(String message) {
    super(message);
  }

  public UnreadablePairings(String message, Throwable cause) {
    super(message, cause);
  }
}
