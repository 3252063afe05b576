package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A greedy choice, machine by machine, without backtracking and without purchases. It serves as the
 * initial incumbent, so that a plan exists even if time is short.
 */
public final class FirstChoice {
  private final Task task;
  private final List<List<Integer>> groupsOf;
  private final Set<Integer> held = new HashSet<>();

  private FirstChoice(Task task) {
    this.task = task;
    this.groupsOf = new ArrayList<>(Collections.nCopies(task.fits().size(), List.of()));
    for (int group = 0; group < task.groups().size(); group++) {
      for (int fit : task.groups().get(group).fits()) {
        List<Integer> more = new ArrayList<>(groupsOf.get(fit));
        more.add(group);
        groupsOf.set(fit, more);
      }
    }
  }

  /** For each owned machine, the vise left in stock that adds the most pieces held. */
  public static Choice of(Task task) {
    return new FirstChoice(task).choose();
  }

  private Choice choose() {
    int[] left = new int[task.cell().vises().size()];
    Arrays.setAll(left, task::stock);
    List<Integer> taken = new ArrayList<>();
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      if (task.cell().machines().get(machine).isOwned()) {
        int best = Choice.BARE;
        for (int fit : task.ofMachine(machine)) {
          if (isLeft(left, fit) && (best == Choice.BARE || gain(fit) > gain(best))) {
            best = fit;
          }
        }
        if (best != Choice.BARE) {
          taken.add(best);
          for (int vise = 0; vise < left.length; vise++) {
            left[vise] -= task.uses(best, vise);
          }
          held.addAll(groupsOf.get(best));
        }
      }
    }
    return Choice.of(task, taken).orElseThrow();
  }

  private boolean isLeft(int[] left, int fit) {
    return IntStream.range(0, left.length).allMatch(vise -> task.uses(fit, vise) <= left[vise]);
  }

  /** The number of additional pieces held with this fit. */
  private long gain(int fit) {
    return groupsOf.get(fit).stream()
        .filter(group -> !held.contains(group))
        .mapToLong(group -> task.groups().get(group).quantity())
        .sum();
  }
}
