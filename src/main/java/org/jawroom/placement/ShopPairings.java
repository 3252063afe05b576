package org.jawroom.placement;

import java.util.List;
import java.util.TreeSet;
import org.jawroom.clearance.Setup;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;

/**
 * The pairings of a shop. Whatever depends on a machine or a vise alone is computed once.
 * Immutable, so several threads may use it at a time.
 */
public final class ShopPairings {
  private final List<PreparedMachine> machines;
  private final List<PreparedVise> vises;

  private ShopPairings(List<PreparedMachine> machines, List<PreparedVise> vises) {
    this.machines = machines;
    this.vises = vises;
  }

  public static ShopPairings of(Shop shop) {
    List<PreparedMachine> machines =
        shop.machines().stream()
            .map(machine -> PreparedMachine.of(shop.settings(), machine, Setup.PLAIN))
            .toList();
    TreeSet<Long> threads = new TreeSet<>();
    machines.forEach(machine -> threads.addAll(machine.threads()));
    List<PreparedVise> vises =
        shop.vises().stream()
            .map(vise -> PreparedVise.of(shop.settings(), vise, 0, threads))
            .toList();
    return new ShopPairings(machines, vises);
  }

  /**
   * Equivalent to {@link Pairing#solve}.
   *
   * @param machine index of the machine in input order, from 0; {@code vise} likewise
   */
  public Outcome solve(int machine, int vise) {
    return solved(machine, vise).outcome();
  }

  /** Equivalent to {@link Pairing#solved}. */
  public SolvedPairing solved(int machine, int vise) {
    return SolvedPairing.of(machines.get(machine), vises.get(vise));
  }

  /** Equivalent to {@link Model#of} without any setup. */
  public Model model(int machine, int vise) {
    return Model.of(machines.get(machine), vises.get(vise));
  }

  /**
   * Equivalent to {@link JobPairing#solve}.
   *
   * @param model that of the pairing
   */
  public List<JobOutcome> jobs(int machine, int vise, Model model, List<Job> jobs) {
    return JobPairing.solve(machines.get(machine), vises.get(vise), model, jobs);
  }
}
