package org.jawroom.tables.fill;

/** A row that cannot be filled in. */
final class Refused extends Exception {
  private static final long serialVersionUID = 1;

  private final String found;

  /** {@code found} the text that the message continues. */
  Refused(String found, String message) {
    super(message);
    this.found = found;
  }

  String found() {
    return found;
  }
}
