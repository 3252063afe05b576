package org.jawroom.shop;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** A whole shop: everything one run of the tool works on, in input order. */
public record Shop(
    Settings settings,
    List<Machine> machines,
    List<Vise> vises,
    List<Job> jobs,
    List<Check> checks,
    List<Standing> standing,
    List<ViseSet> sets) {

  /** A shop without checks on its machines, vises standing there, and sets of vises. */
  public Shop(Settings settings, List<Machine> machines, List<Vise> vises, List<Job> jobs) {
    this(settings, machines, vises, jobs, List.of(), List.of(), List.of());
  }

  /** The same shop with what its checks say. */
  public Shop with(Evidence evidence) {
    Settings marked = settings.toBuilder().evidence(evidence).build();
    return new Shop(marked, machines, vises, jobs, checks, standing, sets);
  }

  /** The same shop with other machines, and what stands on these. */
  public Shop withMachines(List<Machine> others) {
    Set<String> names = others.stream().map(Machine::name).collect(Collectors.toSet());
    List<Standing> there =
        standing.stream().filter(one -> names.contains(one.machine().name())).toList();
    return new Shop(settings, others, vises, jobs, checks, there, sets);
  }

  /** The same shop with other vises, and where these stand. */
  public Shop withVises(List<Vise> others) {
    Set<String> names = others.stream().map(Vise::name).collect(Collectors.toSet());
    List<Standing> there =
        standing.stream().filter(one -> names.contains(one.vise().name())).toList();
    return new Shop(settings, machines, others, jobs, checks, there, sets);
  }

  /** The same shop with other jobs. */
  public Shop withJobs(List<Job> others) {
    return new Shop(settings, machines, vises, others, checks, standing, sets);
  }

  /** The same shop with other checks. */
  public Shop withChecks(List<Check> others) {
    return new Shop(settings, machines, vises, jobs, others, standing, sets);
  }

  public Shop {
    checks = List.copyOf(checks);
    standing = List.copyOf(standing);
    sets = List.copyOf(sets);
    machines = List.copyOf(machines);
    vises = List.copyOf(vises);
    jobs = List.copyOf(jobs);
  }
}
