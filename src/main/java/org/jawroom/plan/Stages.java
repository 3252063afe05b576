package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Ranking;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.PlanProgress;
import org.jawroom.plan.model.Stage;
import org.jawroom.plan.model.Wishes;
import org.jawroom.plan.program.Program;
import org.jawroom.plan.program.Solver;

/**
 * Lexicographic optimization: optimizes one aim after the other, each subject to the values reached
 * before, and finally makes the choice unique. Keeps an incumbent throughout; every incumbent is
 * verified in whole numbers.
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

  /**
   * Makes a choice the incumbent and publishes its plan, with the remaining aims marked as not
   * proven.
   */
  private void better(Choice choice) {
    best = choice;
    List<Stage> published = new ArrayList<>(stages);
    List<Aim> aims = task.aims();
    aims.subList(Math.min(stages.size(), aims.size()), aims.size())
        .forEach(aim -> published.add(stage(aim, false)));
    published.add(order(false));
    wishes.found().accept(Planner.plan(task, best, published));
  }

  /** Optimizes {@code aims} in order. */
  Stages pursue(List<Aim> aims) {
    better(best);
    for (Aim aim : aims) {
      boolean proven = most(aim);
      long value = task.value(aim, best);
      demands.reach(aim, value);
      stages.add(stage(aim, proven));
      better(best);
    }
    return this;
  }

  private Stage stage(Aim aim, boolean proven) {
    return new Stage(aim, task.value(aim, best), proven, task.ceiling(aim));
  }

  private static Stage order(boolean proven) {
    return new Stage(Aim.ORDER, 0, proven, 0);
  }

  private boolean most(Aim aim) {
    wishes.listener().accept(new PlanProgress(aim, 1, 1));
    if (task.value(aim, best) >= task.ceiling(aim)) {
      return true;
    }
    return ask(Formulation.of(task, demands, aim), choice -> task.value(aim, choice));
  }

  /**
   * Adopts a better choice if the solver finds one; returns whether the incumbent is proven
   * optimal.
   */
  private boolean ask(Formulation formulation, ToLongFunction<Choice> value) {
    if (wishes.remainingMillis().getAsLong() <= 0) {
      return false;
    }
    Program program = formulation.program();
    Solver.Answer answer = Solver.maximise(program, wishes.remainingMillis());
    formulation
        .read(answer.values())
        .filter(choice -> value.applyAsLong(choice) > value.applyAsLong(best))
        .ifPresent(this::better);
    return answer.state() == Solver.State.OPTIMAL
        && program.isCertain()
        && value.applyAsLong(best) == program.value(answer.objective());
  }

  /**
   * Fixes, from the first machine on, the earliest vise that keeps all values reached; a few
   * machines at a time, as the digits of one number.
   */
  Stages inOrder() {
    boolean proven = true;
    int machines = task.cell().machines().size();
    for (int first = 0; first < machines; ) {
      wishes.listener().accept(new PlanProgress(Aim.ORDER, first + 1, machines));
      Ranking ranking = Ranking.from(task, first);
      if (ranking.of(best) < ranking.ceiling()) {
        proven &= ask(Formulation.earliest(task, demands, ranking), ranking::of);
      }
      for (int machine = first; machine < ranking.end(); machine++) {
        demands.settle(machine, best.fitOf(machine));
      }
      first = ranking.end();
    }
    stages.add(order(proven));
    return this;
  }

  Choice best() {
    return best;
  }

  List<Stage> stages() {
    return List.copyOf(stages);
  }
}
