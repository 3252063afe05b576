package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Removes dominated fits. Valid while only held jobs and money count and a machine may stay bare.
 */
public final class Reduction {

  private Reduction() {}

  /**
   * The fits that are not dominated. A fit that holds no job is dominated by a bare machine. A fit
   * is dominated by another on the same machine that holds at least the same jobs, if the other
   * takes no more of any kind than the fit itself, but for kinds of which the stock suffices for
   * all machines that could use them: put in its place, the other then costs nothing and takes
   * nothing that is missed elsewhere. That is transitive, so a dominated fit may go before what
   * dominates it does.
   */
  public static Set<Integer> worthHaving(Task task) {
    Map<Integer, Set<Integer>> holds = new HashMap<>();
    for (int group = 0; group < task.groups().size(); group++) {
      for (int fit : task.groups().get(group).fits()) {
        holds.computeIfAbsent(fit, none -> new HashSet<>()).add(group);
      }
    }
    Set<Integer> worth = new HashSet<>();
    boolean[] abounds = abounds(task);
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      List<Integer> left = new ArrayList<>(task.ofMachine(machine));
      left.removeIf(fit -> !holds.containsKey(fit));
      for (int fit : List.copyOf(left)) {
        if (left.stream()
            .anyMatch(
                other ->
                    other != fit
                        && isNoDearer(task, other, fit, abounds)
                        && holds.get(other).containsAll(holds.get(fit)))) {
          left.remove((Integer) fit);
        }
      }
      worth.addAll(left);
    }
    return worth;
  }

  /** For each kind, whether the stock suffices whatever the machines carry. */
  private static boolean[] abounds(Task task) {
    boolean[] abounds = new boolean[task.cell().vises().size()];
    for (int kind = 0; kind < abounds.length; kind++) {
      abounds[kind] = task.stock(kind) >= task.mostUsed(kind, task.ofVise(kind));
    }
    return abounds;
  }

  private static boolean isNoDearer(Task task, int other, int fit, boolean[] abounds) {
    return IntStream.range(0, abounds.length)
        .allMatch(kind -> abounds[kind] || task.uses(other, kind) <= task.uses(fit, kind));
  }
}
