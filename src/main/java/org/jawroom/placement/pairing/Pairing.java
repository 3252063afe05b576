package org.jawroom.placement.pairing;

import org.jawroom.clearance.Setup;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The entry point of the solver; pure. */
public final class Pairing {
  private Pairing() {}

  /** The outcome of {@code vise} on {@code machine}. */
  public static Outcome solve(Settings settings, Machine machine, Vise vise) {
    return solved(settings, machine, vise).outcome();
  }

  /** The outcome with what was worked out for it. */
  public static SolvedPairing solved(Settings settings, Machine machine, Vise vise) {
    PreparedMachine prepared = PreparedMachine.of(settings, machine, Setup.PLAIN);
    return SolvedPairing.of(prepared, PreparedVise.on(prepared, vise));
  }
}
