package org.jawroom.plan.model;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The input of a plan. The order of the lists decides ties.
 *
 * @param fits one per pairing that may be chosen, in any order
 * @param jobs empty: there is no jobs table
 */
public record CellModel(
    List<PlanMachine> machines, List<ViseType> vises, List<Fit> fits, List<Work> jobs) {
  public CellModel {
    machines = List.copyOf(machines);
    vises = List.copyOf(vises);
    fits = List.copyOf(fits);
    jobs = List.copyOf(jobs);
    Set<Pick> picks = new HashSet<>();
    for (Fit fit : fits) {
      if (fit.machine() < 0
          || fit.machine() >= machines.size()
          || fit.vise() < 0
          || fit.vise() >= vises.size()) {
        throw new IllegalArgumentException("machine or vise out of range: " + fit.pick());
      }
      if (!picks.add(fit.pick())) {
        throw new IllegalArgumentException("duplicate pairing: " + fit.pick());
      }
    }
    for (Work job : jobs) {
      if (!picks.containsAll(job.heldBy())) {
        throw new IllegalArgumentException(
            "job is held by a pairing that may not be chosen: " + job.name());
      }
    }
  }
}
