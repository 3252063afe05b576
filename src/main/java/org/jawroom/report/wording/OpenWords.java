package org.jawroom.report.wording;

import org.jawroom.shop.OpenReading;

/** Open readings in words. */
public final class OpenWords {
  private OpenWords() {}

  /** {@code rear_gap}, {@code gap of the hose arm}, {@code hole_u of ends}. */
  public static String column(OpenReading reading) {
    String item = reading.measurand().item();
    return reading.column().column() + (item.isEmpty() ? "" : " of " + item);
  }

  /** The same as files print it: {@code guards.gap (the hose arm)}. */
  public static String path(OpenReading reading) {
    String item = reading.measurand().item();
    return reading.column().path() + (item.isEmpty() ? "" : " (" + item + ")");
  }
}
