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
   * is dominated by another on the same machine that holds at least the same jobs, if the stock of
   * the other's kinds suffices for all machines that could use them: the other is then available at
   * no cost.
   */
  public static Set<Integer> worthHaving(Task task) {
    Map<Integer, Set<Integer>> holds = new HashMap<>();
    for (int group = 0; group < task.groups().size(); group++) {
      for (int fit : task.groups().get(group).fits()) {
        holds.computeIfAbsent(fit, none -> new HashSet<>()).add(group);
      }
    }
    Set<Integer> worth = new HashSet<>();
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      List<Integer> left = new ArrayList<>(task.ofMachine(machine));
      left.removeIf(fit -> !holds.containsKey(fit));
      for (int fit : List.copyOf(left)) {
        if (left.stream()
            .anyMatch(
                other ->
                    other != fit
                        && abounds(task, other)
                        && holds.get(other).containsAll(holds.get(fit)))) {
          left.remove((Integer) fit);
        }
      }
      worth.addAll(left);
    }
    return worth;
  }

  private static boolean abounds(Task task, int fit) {
    return IntStream.range(0, task.cell().vises().size())
        .filter(kind -> task.uses(fit, kind) > 0)
        .allMatch(kind -> task.stock(kind) >= task.mostUsed(kind, task.ofVise(kind)));
  }
}
