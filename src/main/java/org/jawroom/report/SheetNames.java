package org.jawroom.report;

/** Names of sheets that the text of other reports refers to. */
final class SheetNames {
  static final String TO_MEASURE = "To measure";

  private SheetNames() {}
}
