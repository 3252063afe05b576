package org.jawroom.shop;

import java.util.List;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** A whole shop: everything one run of the tool works on, in input order. */
public record Shop(
    Settings settings,
    List<Machine> machines,
    List<Vise> vises,
    List<Job> jobs,
    List<Check> checks,
    List<ViseSet> sets) {

  /** A shop without checks on its machines and without sets of vises. */
  public Shop(Settings settings, List<Machine> machines, List<Vise> vises, List<Job> jobs) {
    this(settings, machines, vises, jobs, List.of(), List.of());
  }

  /** The same shop with what its checks say. */
  public Shop with(Evidence evidence) {
    Settings marked = settings.toBuilder().evidence(evidence).build();
    return new Shop(marked, machines, vises, jobs, checks, sets);
  }

  /** The same shop with other machines. */
  public Shop withMachines(List<Machine> others) {
    return new Shop(settings, others, vises, jobs, checks, sets);
  }

  /** The same shop with other vises. */
  public Shop withVises(List<Vise> others) {
    return new Shop(settings, machines, others, jobs, checks, sets);
  }

  /** The same shop with other jobs. */
  public Shop withJobs(List<Job> others) {
    return new Shop(settings, machines, vises, others, checks, sets);
  }

  /** The same shop with other checks. */
  public Shop withChecks(List<Check> others) {
    return new Shop(settings, machines, vises, jobs, others, sets);
  }

  public Shop {
    checks = List.copyOf(checks);
    sets = List.copyOf(sets);
    machines = List.copyOf(machines);
    vises = List.copyOf(vises);
    jobs = List.copyOf(jobs);
  }
}
