package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.FirstChoice;
import org.jawroom.plan.choice.SettingOut;
import org.jawroom.plan.choice.Shopping;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Stage;
import org.jawroom.plan.model.Unheld;
import org.jawroom.plan.model.Wishes;

/** The entry point: computes the best plan for a cell. Pure except for the time limit. */
public final class Planner {

  private Planner() {}

  /**
   * The best plan, or the incumbent when time runs out; it always respects stock, market and
   * budget.
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

  /** The plan for a choice, before remedies are searched for. */
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
   * The initial incumbent: the present state if it is allowed, else a greedy choice, so that a plan
   * exists even if time is short.
   */
  private static Choice start(Task task, Wishes wishes) {
    return wishes
        .keep()
        .map(now -> Choice.kept(task))
        .filter(task::allows)
        .orElseGet(() -> FirstChoice.of(task));
  }
}
