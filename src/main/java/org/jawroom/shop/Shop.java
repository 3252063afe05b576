package org.jawroom.shop;

import java.util.List;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** A whole shop: everything one run of the tool works on, in input order. */
public record Shop(Settings settings, List<Machine> machines, List<Vise> vises, List<Job> jobs) {
  public Shop {
    machines = List.copyOf(machines);
    vises = List.copyOf(vises);
    jobs = List.copyOf(jobs);
  }
}
