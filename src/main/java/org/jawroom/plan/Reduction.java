package org.jawroom.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Leaves out fits that cannot matter as long as only held jobs and money count, when a machine may
 * as well stay bare.
 */
final class Reduction {

  private Reduction() {}

  /**
   * A fit that holds no job is worth no more than a bare machine. One that holds nothing another on
   * the same machine does not hold as well is worth no more than the other, if there are so many of
   * the other's kind in stock that all machines could have it: whoever takes the first could take
   * the other for nothing.
   */
  static Set<Integer> worthHaving(Task task) {
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
    int vise = task.fits().get(fit).vise();
    return task.stock(vise) >= task.ofVise(vise).size();
  }
}
