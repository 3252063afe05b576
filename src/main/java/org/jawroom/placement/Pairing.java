package org.jawroom.placement;

import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/** The one entry to the solver. */
public final class Pairing {
  private Pairing() {}

  /** Everything there is to say of {@code vise} on {@code machine}; pure. */
  public static Outcome solve(Settings settings, Machine machine, Vise vise) {
    throw new UnsupportedOperationException();
  }
}
