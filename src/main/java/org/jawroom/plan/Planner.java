package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;

/** The one entry: the best plan for a cell. Pure but for the time it is told to keep to. */
public final class Planner {

  private Planner() {}

  /**
   * The best plan, or as good a one as time allows; always one that stock, market and budget allow.
   */
  public static Plan plan(CellModel cell, Wishes wishes) {
    Task task = new Task(cell, wishes.buy(), wishes.budget(), wishes.keep());
    Stages stages = new Stages(task, start(task, wishes), wishes);
    stages.pursue(task.aims()).inOrder();
    Plan unremedied = plan(task, stages.best(), stages.stages());
    List<Unheld> remedies =
        new UnheldRemedies(cell, unremedied.purchases(), unremedied.held(), wishes)
            .all(unheld -> wishes.found().accept(unremedied.with(unheld)));
    return unremedied.with(remedies);
  }

  /** The plan that a choice makes, its remedies not looked for. */
  static Plan plan(Task task, Choice choice, List<Stage> stages) {
    List<Integer> held = new ArrayList<>();
    task.groups().stream().filter(choice::holds).forEach(group -> held.addAll(group.jobs()));
    held.sort(null);
    List<Purchase> purchases = Shopping.list(task, choice);
    return new Plan(
        SettingOut.of(task, choice),
        held,
        UnheldRemedies.notSought(task.cell(), held),
        purchases,
        Shopping.cost(purchases),
        stages);
  }

  /**
   * What stands there now, if that may stay as it is, else what is found without a solver: where
   * time is short, something must be in hand.
   */
  private static Choice start(Task task, Wishes wishes) {
    return wishes
        .keep()
        .map(now -> Choice.kept(task))
        .filter(task::allows)
        .orElseGet(() -> FirstChoice.of(task));
  }
}
