package org.jawroom.report.format;

import java.util.OptionalLong;
import org.jawroom.geometry.Length;

/** How a bolt's thread is written. */
public final class ThreadWords {
  private ThreadWords() {}

  /** {@code M16}; empty without bolts. Nominal diameters are whole millimetres. */
  public static String of(OptionalLong diameter) {
    return diameter.isPresent() ? of(diameter.getAsLong()) : "";
  }

  /** {@code M16}. */
  public static String of(long diameter) {
    return "M" + diameter / Length.MM;
  }
}
