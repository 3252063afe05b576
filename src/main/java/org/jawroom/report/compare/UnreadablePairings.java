package org.jawroom.report.compare;

/**
 * A file is no {@code pairings.csv}; the message says in one clear line why, without the file's
 * name.
 */
public final class UnreadablePairings extends Exception {
  private static final long serialVersionUID = 1L;

  UnreadablePairings(String message) {
    super(message);
  }

  UnreadablePairings(String message, Throwable cause) {
    super(message, cause);
  }
}
