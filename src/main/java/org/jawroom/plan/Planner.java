package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;

/** The one entry: the best plan for a cell. Pure but for the time it is told to keep to. */
public final class Planner {

  private Planner() {}

  /**
   * The best plan, or as good a one as time allows; always one that stock, market and budget allow.
   */
  public static Plan plan(Cell cell, Wishes wishes) {
    Task task = new Task(cell, wishes.buy(), wishes.budget(), wishes.keep());
    Stages stages =
        new Stages(task, start(task, wishes), wishes.remainingMillis(), wishes.listener())
            .pursue(task.aims())
            .inOrder();
    Choice best = stages.best();
    List<Integer> held = new ArrayList<>();
    task.groups().stream().filter(best::holds).forEach(group -> held.addAll(group.jobs()));
    held.sort(null);
    List<Purchase> purchases = Shopping.list(task, best);
    return new Plan(
        SettingOut.of(task, best),
        held,
        new Remedies(cell, purchases, held, wishes).all(),
        purchases,
        Shopping.cost(purchases),
        stages.stages());
  }

  /**
   * What stands there now, if that may stay as it is: where time is short, something must be in
   * hand.
   */
  private static Choice start(Task task, Wishes wishes) {
    return wishes
        .keep()
        .map(now -> Choice.kept(task))
        .filter(task::allows)
        .orElseGet(() -> Choice.bare(task));
  }
}
