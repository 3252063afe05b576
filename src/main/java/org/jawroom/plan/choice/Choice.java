package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jawroom.plan.model.Fit;

/** One fit, or none, per machine. Fits are indices into {@link Task#fits}. */
public final class Choice {

  /** Marks a machine without a vise. */
  public static final int BARE = -1;

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

  /** The vises now on the machines, as far as they may stay. */
  public static Choice kept(Task task) {
    int[] fitOf = bare(task).fitOf;
    for (int fit = 0; fit < task.fits().size(); fit++) {
      Fit candidate = task.fits().get(fit);
      if (task.changes(candidate.machine(), fit) == 0) {
        fitOf[candidate.machine()] = fit;
      }
    }
    return new Choice(fitOf);
  }

  /** The choice of the fits {@code taken}; empty if a machine would get more than one. */
  public static Optional<Choice> of(Task task, List<Integer> taken) {
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

  public int fitOf(int machine) {
    return fitOf[machine];
  }

  /** The fits chosen, in machine order. */
  List<Integer> fits() {
    return chosen;
  }

  public boolean holds(Task.Group group) {
    return group.fits().stream().anyMatch(fit -> chosen.contains(fit));
  }
}
