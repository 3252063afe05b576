package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToLongFunction;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Ranking;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.exact.Bound;
import org.jawroom.plan.exact.ExactSearch;
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
  private final List<Bound> bounds = new ArrayList<>();

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
    for (int place = 0; place < aims.size(); place++) {
      Aim aim = aims.get(place);
      wishes.listener().accept(new PlanProgress(aim, 1, 1));
      if (bounds.isEmpty()) {
        search(aims.subList(place, aims.size()));
      }
      boolean proven = most(aim);
      demands.reach(aim, task.value(aim, best));
      stages.add(stage(aim, proven));
      better(best);
    }
    return this;
  }

  /**
   * Searches exactly for the best choice by all aims left; where the pieces held are among them,
   * for one that holds all, since they are no sum over the machines.
   */
  private void search(List<Aim> left) {
    BooleanSupplier goesOn = () -> wishes.remainingMillis().getAsLong() > 0;
    Demands wanted = new Demands(demands);
    if (left.get(0) == Aim.HELD) {
      wanted.reach(Aim.HELD, task.ceiling(Aim.HELD));
    }
    List<Aim> sums = left.stream().filter(aim -> aim != Aim.HELD).toList();
    if (goesOn.getAsBoolean()) {
      ExactSearch.search(
              task,
              wanted,
              sums,
              Optional.of(best).filter(choice -> wanted.areMetBy(task, choice)),
              goesOn,
              this::better)
          .ifPresent(bounds::add);
    }
    if (!bounds.isEmpty() && !bounds.get(0).complete()) {
      sums.stream().skip(1).forEach(aim -> bounds.add(ExactSearch.ceiling(task, aim)));
    }
  }

  /** No choice with the values of the incumbent has a greater value of the aim. */
  private long ceiling(Aim aim) {
    return bounds.stream()
        .mapToLong(bound -> bound.ceiling(aim, before -> task.value(before, best)))
        .min()
        .orElse(Long.MAX_VALUE);
  }

  private Stage stage(Aim aim, boolean proven) {
    long value = task.value(aim, best);
    return new Stage(
        aim, value, proven, proven ? value : Math.min(ceiling(aim), task.ceiling(aim)));
  }

  private static Stage order(boolean proven) {
    return new Stage(Aim.ORDER, 0, proven, 0);
  }

  private boolean most(Aim aim) {
    if (task.value(aim, best) >= Math.min(ceiling(aim), task.ceiling(aim))) {
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
    boolean settled = !bounds.isEmpty() && bounds.get(0).complete();
    if (settled) {
      wishes.listener().accept(new PlanProgress(Aim.ORDER, 1, 1));
    }
    for (int first = settled ? machines : 0; first < machines; ) {
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
