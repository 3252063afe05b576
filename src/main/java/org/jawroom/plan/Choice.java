package org.jawroom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One fit, or none, for each machine; fits by their place in {@link Task#fits}. */
final class Choice {

  /** No vise on this machine. */
  static final int BARE = -1;

  private final int[] fitOf;
  private final List<Integer> chosen = new ArrayList<>();

  private Choice(int[] fitOf) {
    this.fitOf = fitOf;
    for (int fit : fitOf) {
      if (fit != BARE) {
        chosen.add(fit);
      }
    }
  }

  static Choice bare(Task task) {
    int[] fitOf = new int[task.cell().machines().size()];
    Arrays.fill(fitOf, BARE);
    return new Choice(fitOf);
  }

  /** What is on the machines now, as far as it may stay. */
  static Choice kept(Task task) {
    int[] fitOf = bare(task).fitOf;
    for (int fit = 0; fit < task.fits().size(); fit++) {
      Fit told = task.fits().get(fit);
      Integer now = task.keep().get(told.machine());
      if (now != null && now == told.vise()) {
        fitOf[told.machine()] = fit;
      }
    }
    return new Choice(fitOf);
  }

  /** The fits {@code taken}, unless that is more than one for a machine. */
  static Optional<Choice> of(Task task, List<Integer> taken) {
    int[] fitOf = bare(task).fitOf;
    for (int fit : taken) {
      int machine = task.fits().get(fit).machine();
      if (fitOf[machine] != BARE) {
        return Optional.empty();
      }
      fitOf[machine] = fit;
    }
    return Optional.of(new Choice(fitOf));
  }

  int fitOf(int machine) {
    return fitOf[machine];
  }

  /** The fits chosen, in the order of the machines. */
  List<Integer> fits() {
    return chosen;
  }

  boolean holds(Task.Group group) {
    return group.fits().stream().anyMatch(fit -> chosen.contains(fit));
  }
}
