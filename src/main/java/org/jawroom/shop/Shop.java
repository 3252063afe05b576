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
    List<Check> checks) {

  /** A shop without checks on its machines. */
  public Shop(Settings settings, List<Machine> machines, List<Vise> vises, List<Job> jobs) {
    this(settings, machines, vises, jobs, List.of());
  }

  /** The same shop with what its checks say. */
  public Shop with(Evidence evidence) {
    Settings marked = settings.toBuilder().evidence(evidence).build();
    return new Shop(marked, machines, vises, jobs, checks);
  }

  public Shop {
    checks = List.copyOf(checks);
    machines = List.copyOf(machines);
    vises = List.copyOf(vises);
    jobs = List.copyOf(jobs);
  }
}
