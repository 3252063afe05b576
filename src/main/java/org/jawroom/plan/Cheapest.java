package org.jawroom.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.ToLongFunction;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.program.Solver;

/**
 * Finds the cheapest way to meet demands, lexicographically: least money, then fewest things, then
 * the fewest of each item, starting with the last in the tables.
 */
final class Cheapest {

  enum State {
    FOUND,
    NONE,
    UNKNOWN
  }

  private final Task task;
  private final Demands demands;
  private final LongSupplier remainingMillis;
  private Optional<Choice> best = Optional.empty();
  private boolean none;
  private boolean proven = true;

  Cheapest(Task task, Demands demands, LongSupplier remainingMillis) {
    this.task = task;
    this.demands = demands;
    this.remainingMillis = remainingMillis;
    seek();
  }

  private void seek() {
    for (Aim aim : List.of(Aim.COST, Aim.THINGS)) {
      if (aim == Aim.COST || best.isPresent()) {
        ask(Formulation.of(task, demands, aim), choice -> task.value(aim, choice));
        best.ifPresent(choice -> demands.reach(aim, task.value(aim, choice)));
      }
    }
    for (int item = task.items() - 1; item >= 0 && best.isPresent(); item--) {
      int each = item;
      if (task.bought(best.orElseThrow(), item) > 0) {
        ask(Formulation.fewest(task, demands, item), choice -> -task.bought(choice, each));
      }
      demands.buyAtMost(item, task.bought(best.orElseThrow(), item));
    }
  }

  private void ask(Formulation formulation, ToLongFunction<Choice> value) {
    if (remainingMillis.getAsLong() <= 0) {
      proven = false;
      return;
    }
    Solver.Answer answer = Solver.maximise(formulation.program(), remainingMillis);
    formulation
        .read(answer.values())
        .filter(
            choice ->
                best.isEmpty() || value.applyAsLong(choice) > value.applyAsLong(best.orElseThrow()))
        .ifPresent(choice -> best = Optional.of(choice));
    boolean certain = formulation.program().isCertain();
    none = answer.state() == Solver.State.INFEASIBLE && certain && best.isEmpty();
    proven &=
        answer.state() == Solver.State.OPTIMAL
            && certain
            && best.isPresent()
            && value.applyAsLong(best.orElseThrow())
                == formulation.program().value(answer.objective());
  }

  State state() {
    return best.isPresent() ? State.FOUND : none ? State.NONE : State.UNKNOWN;
  }

  Choice choice() {
    return best.orElseThrow();
  }

  boolean isProven() {
    return proven;
  }
}
