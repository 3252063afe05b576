package org.jawroom.advice;

import org.jawroom.placement.Outcome;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/** The entries to this package. */
public final class Advisor {
  private Advisor() {}

  /** What the reports of a shop tell of the pairing whose outcome is {@code outcome}; pure. */
  public static Advice advise(Settings settings, Outcome outcome) {
    throw new UnsupportedOperationException();
  }

  /** Everything there is to say of {@code vise} on {@code machine}; pure. */
  public static Explanation explain(Settings settings, Machine machine, Vise vise) {
    throw new UnsupportedOperationException();
  }
}
