package org.jawroom.report.format;

/** Names of sheets that the text of other reports refers to. */
public final class SheetNames {
  public static final String TO_MEASURE = "To measure";

  private SheetNames() {}
}
