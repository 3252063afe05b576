package org.jawroom.tables.fill;

/** A row that cannot be filled in. */
final class Refused extends Exception {
  private static final long serialVersionUID = 1;

  private final String column;
  private final String found;

  /**
   * Refuses a row.
   *
   * @param column of the file that is filled in
   * @param found the text that the message continues
   */
  Refused(String column, String found, String message) {
    super(message);
    this.column = column;
    this.found = found;
  }

  String column() {
    return column;
  }

  String found() {
    return found;
  }
}
