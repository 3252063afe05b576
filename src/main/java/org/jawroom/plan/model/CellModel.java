package org.jawroom.plan.model;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The input of a plan. The order of the lists decides ties.
 *
 * @param fits one for each that may be chosen, in any order
 * @param jobs empty: there is no jobs table
 */
public record CellModel(
    List<PlanMachine> machines, List<ViseType> vises, List<Fit> fits, List<Work> jobs) {
  public CellModel {
    machines = List.copyOf(machines);
    vises = List.copyOf(vises);
    fits = List.copyOf(fits);
    jobs = List.copyOf(jobs);
    for (ViseType vise : vises) {
      int kind = vise.formOf().orElse(0);
      if (vise.formOf().isPresent()
          && (!isIndex(kind, vises) || vises.get(kind).formOf().isPresent())) {
        throw new IllegalArgumentException("another form of no kind: " + vise.name());
      }
    }
    Set<Pick> picks = new HashSet<>();
    for (Fit fit : fits) {
      List<ViseType> known = vises;
      if (!isIndex(fit.machine(), machines)
          || !fit.vises().stream().allMatch(vise -> isIndex(vise, known))) {
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

  private static boolean isIndex(int index, List<?> list) {
    return index >= 0 && index < list.size();
  }

  /** The kind whose stock and price a vise shares; itself unless it is another form. */
  public int kind(int vise) {
    return vises.get(vise).formOf().orElse(vise);
  }
}
