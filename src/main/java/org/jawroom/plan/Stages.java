package org.jawroom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * Makes one aim after the other as good as can be, none at the cost of an earlier one, and at last
 * the choice unique. Holds the best choice so far throughout; each one was counted in whole
 * numbers.
 */
final class Stages {

  private final Task task;
  private final Wishes wishes;
  private final Demands demands = new Demands();
  private final List<Stage> stages = new ArrayList<>();
  private Choice best;

  Stages(Task task, Choice start, Wishes wishes) {
    this.task = task;
    this.wishes = wishes;
    this.best = start;
  }

  /** Takes over a choice, and hands on the plan that it makes, what is left to do not proven. */
  private void better(Choice choice) {
    best = choice;
    List<Stage> told = new ArrayList<>(stages);
    List<Aim> aims = task.aims();
    aims.subList(Math.min(stages.size(), aims.size()), aims.size())
        .forEach(aim -> told.add(new Stage(aim, task.value(aim, best), false)));
    told.add(new Stage(Aim.ORDER, 0, false));
    wishes.found().accept(Planner.plan(task, best, told));
  }

  /** Works through {@code aims}. */
  Stages pursue(List<Aim> aims) {
    better(best);
    for (Aim aim : aims) {
      boolean proven = aim == Aim.MARGIN ? widestLeastMargin() : most(aim);
      long value = task.value(aim, best);
      demands.reach(aim, value);
      stages.add(new Stage(aim, value, proven));
      better(best);
    }
    return this;
  }

  private boolean most(Aim aim) {
    wishes.listener().accept(new PlanProgress(aim, 1, 1));
    if (task.value(aim, best) >= task.ceiling(aim)) {
      return true;
    }
    return ask(Formulation.of(task, demands, aim), choice -> task.value(aim, choice));
  }

  /** Takes over a better choice; true if none is better still. */
  private boolean ask(Formulation formulation, ToLongFunction<Choice> value) {
    long millis = wishes.remainingMillis().getAsLong();
    if (millis <= 0) {
      return false;
    }
    Program program = formulation.program();
    Solver.Answer answer = Solver.maximise(program, millis);
    formulation
        .read(answer.values())
        .filter(choice -> value.applyAsLong(choice) > value.applyAsLong(best))
        .ifPresent(this::better);
    return answer.state() == Solver.State.OPTIMAL
        && program.isCertain()
        && value.applyAsLong(best) == program.value(answer.objective());
  }

  /** Halves on the margins there are; the solver sees which fits are left, never a margin. */
  private boolean widestLeastMargin() {
    long[] margins = task.fits().stream().mapToLong(Fit::leastMargin).sorted().distinct().toArray();
    int questions = Long.SIZE - Long.numberOfLeadingZeros(margins.length);
    int step = 0;
    int above = margins.length;
    while (true) {
      int held = indexOf(margins, task.value(Aim.MARGIN, best));
      if (above - held <= 1) {
        return true;
      }
      wishes.listener().accept(new PlanProgress(Aim.MARGIN, ++step, questions));
      int middle = (held + above) >>> 1;
      Demands with = new Demands(demands).reach(Aim.MARGIN, margins[middle]);
      long millis = wishes.remainingMillis().getAsLong();
      if (millis <= 0) {
        return false;
      }
      Formulation formulation = Formulation.of(task, with, Aim.EQUIPPED);
      Solver.Answer answer = Solver.maximise(formulation.program(), millis);
      Optional<Choice> found = formulation.read(answer.values());
      if (found.isPresent()) {
        better(found.orElseThrow());
      } else if (answer.state() == Solver.State.INFEASIBLE && formulation.program().isCertain()) {
        above = middle;
      } else {
        return false;
      }
    }
  }

  /** The place of {@code margin}; the last for a choice without any. */
  private static int indexOf(long[] margins, long margin) {
    int place = Arrays.binarySearch(margins, margin);
    return place >= 0 ? place : margins.length - 1;
  }

  /**
   * Settles the machines on the earliest vises that still let the rest be as good, the first
   * machine first: a few at a time, as the digits of one number.
   */
  Stages inOrder() {
    boolean proven = true;
    int machines = task.cell().machines().size();
    for (int first = 0; first < machines; ) {
      wishes.listener().accept(new PlanProgress(Aim.ORDER, first + 1, machines));
      Ranking ranking = Ranking.from(task, first, task.value(Aim.MARGIN, best));
      if (ranking.of(best) < ranking.ceiling()) {
        proven &= ask(Formulation.earliest(task, demands, ranking), ranking::of);
      }
      for (int machine = first; machine < ranking.end(); machine++) {
        demands.settle(machine, best.fitOf(machine));
      }
      first = ranking.end();
    }
    stages.add(new Stage(Aim.ORDER, 0, proven));
    return this;
  }

  Choice best() {
    return best;
  }

  List<Stage> stages() {
    return List.copyOf(stages);
  }
}
