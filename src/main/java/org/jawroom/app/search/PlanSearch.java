package org.jawroom.app.search;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Solving;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.CellSet;
import org.jawroom.cell.ShopCell;
import org.jawroom.plan.Planner;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Wishes;
import org.jawroom.shop.Shop;

/**
 * Searches for the plan of a shop within a time limit: solves its pairings and sets, then plans.
 *
 * @param wishes the demands on the plan; time and listeners are set here
 * @param kinds the most kinds of vise on a machine
 * @param before the current assignments
 */
public record PlanSearch(
    Wishes wishes,
    int kinds,
    Optional<Map<Integer, List<Integer>>> before,
    int threads,
    Deadline deadline) {

  /** The best plan, or the best so far when time runs out; empty if there is none by then. */
  public Optional<CellPlan> of(Shop shop, Progress progress) {
    try {
      return InTime.<CellPlan>run(deadline, found -> plan(shop, progress, found))
          .filter(plan -> plan.plan().isProven() || !plan.plan().machines().isEmpty());
    } finally {
      progress.end();
    }
  }

  private CellPlan plan(Shop shop, Progress progress, Consumer<CellPlan> found) {
    List<CellPairing> pairings = Solving.cell(shop, threads, progress);
    progress.step("vises side by side");
    List<CellSet> sets = Solving.sets(shop, pairings, kinds, threads);
    ShopCell cell = ShopCell.of(shop, pairings, kinds, sets);
    Wishes asked =
        before
            .map(wishes::keeping)
            .orElse(wishes)
            .within(deadline::toSolve)
            .announce(
                step ->
                    progress.step(
                        step.aim() + ", step " + step.step() + " of at most " + step.steps()))
            .find(soFar -> found.accept(plan(cell, soFar)));
    return plan(cell, Planner.plan(cell.cell(), asked));
  }

  private CellPlan plan(ShopCell cell, Plan plan) {
    return new CellPlan(cell, plan, before);
  }
}
