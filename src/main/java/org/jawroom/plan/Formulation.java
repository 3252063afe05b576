package org.jawroom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Ranking;
import org.jawroom.plan.choice.Reduction;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.program.Program;
import org.jawroom.plan.program.Sum;

/**
 * A task as a mixed-integer program.
 *
 * <p>Each fit is one binary column. Derived columns are continuous, because integral fits force
 * them to be integral at the optimum: whether a group of jobs is held, how many of a kind are
 * bought, how many stand on tables.
 */
final class Formulation {

  private static final int NONE = -1;

  private final Task task;
  private final Demands demands;
  private final Program program = new Program();
  private final int[] columnOf;
  private final int[] boughtOf;

  private Formulation(Task task, Demands demands, boolean onlyHolding) {
    this.task = task;
    this.demands = demands;
    columnOf = new int[task.fits().size()];
    boughtOf = new int[task.cell().vises().size()];
    Arrays.fill(columnOf, NONE);
    Arrays.fill(boughtOf, NONE);
    Set<Integer> left = onlyHolding ? Reduction.worthHaving(task) : allowed();
    left.stream().sorted().forEach(fit -> columnOf[fit] = program.column(true, 1));
    onePerMachine();
    stock();
    task.budget().ifPresent(most -> program.atLeast(sum(Aim.COST), -most));
    demands.reached().forEach(this::demand);
    demands.mostBought().forEach((item, most) -> program.atMost(bought(item), most));
  }

  /** Maximizes {@code aim} subject to the demands. */
  static Formulation of(Task task, Demands demands, Aim aim) {
    boolean onlyHolding =
        demands.reached().keySet().stream().allMatch(Formulation::countsHoldingOnly)
            && demands.settled().isEmpty()
            && countsHoldingOnly(aim);
    Formulation formulation = new Formulation(task, demands, onlyHolding);
    formulation.program.maximise(formulation.sum(aim));
    return formulation;
  }

  /** Minimizes the purchases of an item subject to the demands. */
  static Formulation fewest(Task task, Demands demands, int item) {
    Formulation formulation = new Formulation(task, demands, true);
    Sum fewer = new Sum();
    formulation.bought(item).forEach((column, one) -> fewer.add(column, -1));
    formulation.program.maximise(fewer);
    return formulation;
  }

  /** Puts the earliest vises on a few machines subject to the demands. */
  static Formulation earliest(Task task, Demands demands, Ranking ranking) {
    Formulation formulation = new Formulation(task, demands, false);
    Sum sum = new Sum();
    formulation.eachFit((fit, pairing) -> formulation.add(sum, fit, ranking.of(fit)));
    formulation.program.maximise(sum);
    return formulation;
  }

  private static boolean countsHoldingOnly(Aim aim) {
    return aim == Aim.HELD || aim == Aim.COST || aim == Aim.THINGS;
  }

  private Set<Integer> allowed() {
    Set<Integer> allowed = new HashSet<>();
    for (int fit = 0; fit < task.fits().size(); fit++) {
      Fit pairing = task.fits().get(fit);
      if (demands.settled().getOrDefault(pairing.machine(), fit) == fit) {
        allowed.add(fit);
      }
    }
    return allowed;
  }

  private void onePerMachine() {
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      Sum sum = ones(task.ofMachine(machine));
      if (!sum.isConstant()) {
        if (demands.settled().getOrDefault(machine, Choice.BARE) != Choice.BARE) {
          program.atLeast(sum, 1);
        }
        program.atMost(sum, 1);
      }
    }
  }

  private void stock() {
    for (int vise = 0; vise < boughtOf.length; vise++) {
      int beyond = mostUsed(vise) - task.stock(vise);
      if (beyond > 0) {
        Sum used = new Sum();
        for (int fit : task.ofVise(vise)) {
          add(used, fit, task.uses(fit, vise));
        }
        if (task.sells(vise)) {
          boughtOf[vise] = program.column(false, beyond);
          used.add(boughtOf[vise], -1);
        }
        program.atMost(used, task.stock(vise));
      }
    }
  }

  private void demand(Aim aim, long value) {
    if (aim == Aim.HELD && value == task.groups().stream().mapToLong(Task.Group::quantity).sum()) {
      task.groups().forEach(group -> program.atLeast(ones(group.fits()), 1));
    } else {
      program.atLeast(sum(aim), value);
    }
  }

  private Sum sum(Aim aim) {
    Sum sum = new Sum();
    switch (aim) {
      case HELD -> held(sum);
      case COST -> eachBought((item, column) -> sum.add(column, -task.price(item)));
      case THINGS -> eachBought((item, column) -> sum.add(column, -1));
      case EQUIPPED -> eachFit((fit, pairing) -> add(sum, fit, 1));
      case GOOD, OPENING, JAW ->
          eachFit((fit, pairing) -> add(sum, fit, Task.amount(aim, pairing)));
      case CHANGES -> changes(sum);
      case SET_OUT -> setOut(sum);
      default -> throw new IllegalArgumentException(aim + " is not a linear sum");
    }
    return sum;
  }

  private void held(Sum sum) {
    for (Task.Group group : task.groups()) {
      int held = program.column(false, 1);
      program.atLeast(ones(group.fits()).add(held, -1), 0);
      sum.add(held, group.quantity());
    }
  }

  private void eachBought(BiConsumer<Integer, Integer> action) {
    for (int item = 0; item < task.items(); item++) {
      int each = item;
      bought(item).forEach((column, one) -> action.accept(each, column));
    }
  }

  /** The number of units of an item that are bought. */
  private Sum bought(int item) {
    int machine = item - boughtOf.length;
    if (machine >= 0) {
      return task.cell().machines().get(machine).isOwned()
          ? new Sum()
          : ones(task.ofMachine(machine));
    }
    return boughtOf[item] == NONE ? new Sum() : new Sum().add(boughtOf[item], 1);
  }

  /** What a machine changes if it stays bare, and what each fit makes of that. */
  private void changes(Sum sum) {
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      int bare = task.changes(machine, Choice.BARE);
      sum.add(-bare);
      for (int fit : task.ofMachine(machine)) {
        add(sum, fit, bare - task.changes(machine, fit));
      }
    }
  }

  private void setOut(Sum sum) {
    for (int vise = 0; vise < boughtOf.length; vise++) {
      Sum stand = new Sum();
      for (int fit : task.ofVise(vise)) {
        add(stand, fit, Math.min(task.mostOut(fit, vise), limit(vise)));
      }
      if (stand.isConstant()) {
        continue;
      }
      int out = program.column(false, Math.min(stand.size(), limit(vise)));
      sum.add(out, 1);
      program.atLeast(stand.add(out, -1), 0);
      Sum there = new Sum().add(out, -1).add(task.stock(vise));
      if (boughtOf[vise] != NONE) {
        there.add(boughtOf[vise], 1);
      }
      program.atLeast(there, 0);
    }
  }

  /**
   * An upper bound on the number of a kind set out: the stock, or the number that machines can use
   * if more is for sale.
   */
  private long limit(int vise) {
    return boughtOf[vise] == NONE ? task.stock(vise) : Math.max(task.stock(vise), mostUsed(vise));
  }

  private int mostUsed(int vise) {
    return task.mostUsed(
        vise, task.ofVise(vise).stream().filter(fit -> columnOf[fit] != NONE).toList());
  }

  private Sum ones(List<Integer> fits) {
    Sum sum = new Sum();
    fits.forEach(fit -> add(sum, fit, 1));
    return sum;
  }

  private void add(Sum sum, int fit, long amount) {
    if (columnOf[fit] != NONE && amount != 0) {
      sum.add(columnOf[fit], amount);
    }
  }

  private interface FitAction {
    void take(int fit, Fit pairing);
  }

  private void eachFit(FitAction action) {
    for (int fit = 0; fit < columnOf.length; fit++) {
      if (columnOf[fit] != NONE) {
        action.take(fit, task.fits().get(fit));
      }
    }
  }

  Program program() {
    return program;
  }

  /**
   * Rounds column values to a choice; empty if they are not one, or if it violates a demand when
   * recounted in whole numbers.
   */
  Optional<Choice> read(double[] values) {
    List<Integer> taken = new ArrayList<>();
    for (int fit = 0; fit < columnOf.length; fit++) {
      if (columnOf[fit] != NONE && values.length > 0 && values[columnOf[fit]] > 0.5) {
        taken.add(fit);
      }
    }
    return Choice.of(task, taken).filter(choice -> demands.areMetBy(task, choice));
  }
}
