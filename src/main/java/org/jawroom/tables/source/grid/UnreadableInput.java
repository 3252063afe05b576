package org.jawroom.tables.source.grid;

/** The input cannot be read as a shop at all; the message is one clear line. */
public final class UnreadableInput extends Exception {
  private static final long serialVersionUID = 1L;

  public UnreadableInput(String message) {
    super(message);
  }

  public UnreadableInput(String message, Throwable cause) {
    super(message, cause);
  }
}
