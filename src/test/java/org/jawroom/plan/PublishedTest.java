package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.ViseType;
import org.jawroom.plan.model.Wishes;
import org.junit.jupiter.api.Test;

/**
 * Published assignment problems as cells: workers are machines, tasks are kinds of vise with a
 * stock of one.
 *
 * <p>For a least sum, a cost becomes an opening of 1000 less the cost, so that the widest total
 * opening is the least sum; for a greatest sum it becomes the opening itself. With all openings
 * equal the jaws take its place.
 */
class PublishedTest {

  /** The example in the documentation of SciPy's linear_sum_assignment, which gives 5. */
  private static final long[][] SCIPY = {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}};

  /** The example in the documentation of lp.assign, R package lpSolve, which gives 8. */
  private static final long[][] LP_ASSIGN = {
    {2, 7, 7, 1}, {7, 7, 2, 9}, {7, 3, 8, 8}, {2, 2, 10, 2}
  };

  @Test
  void widestOpening_ofScipysExample_isTheLeastSum() {
    Plan plan = byOpening(SCIPY, -1);
    assertEquals(5, leastSum(plan, 3));
    assertEquals(List.of(1, 0, 2), vises(plan));
  }

  /** 11: the greatest sum of the same table, from a public test of another library. */
  @Test
  void widestOpening_ofScipysExample_isTheGreatestSum() {
    assertEquals(11, byOpening(SCIPY, 1).value(Aim.OPENING).orElseThrow());
  }

  @Test
  void widestOpening_ofLpSolvesExample_isTheLeastSum() {
    assertEquals(8, leastSum(byOpening(LP_ASSIGN, -1), 4));
  }

  @Test
  void widestJaws_openingsEqual_areTheLeastSum() {
    Plan plan = plan(SCIPY, 7, 0, 1000, -1);
    assertEquals(5, 3000 - plan.value(Aim.JAW).orElseThrow());
    assertEquals(List.of(1, 0, 2), vises(plan));
  }

  private static Plan byOpening(long[][] costs, int sign) {
    return plan(costs, sign < 0 ? 1000 : 0, sign, 7, 0);
  }

  private static Plan plan(long[][] costs, long opening, int more, long jaw, int wider) {
    List<PlanMachine> machines = new ArrayList<>();
    List<ViseType> vises = new ArrayList<>();
    List<Fit> fits = new ArrayList<>();
    for (int machine = 0; machine < costs.length; machine++) {
      machines.add(new PlanMachine("worker " + machine, OptionalLong.empty()));
      for (int vise = 0; vise < costs[machine].length; vise++) {
        long cost = costs[machine][vise];
        fits.add(
            new Fit(new Pick(machine, vise), true, 1, opening + more * cost, jaw + wider * cost));
      }
    }
    LongStream.range(0, costs[0].length)
        .forEach(vise -> vises.add(new ViseType("task " + vise, 1, OptionalLong.empty())));
    Plan plan = Planner.plan(new CellModel(machines, vises, fits, List.of()), Wishes.none());
    assertTrue(plan.isProven());
    assertEquals(
        "no better plan exists in this order: the most machines equipped, then the most of them"
            + " comfortable and settable, then the widest openings in all, then the widest jaws"
            + " in all, then the most vises set out",
        plan.statement());
    return plan;
  }

  private static long leastSum(Plan plan, int machines) {
    return 1000L * machines - plan.value(Aim.OPENING).orElseThrow();
  }

  private static List<Integer> vises(Plan plan) {
    return plan.machines().stream().map(one -> one.fit().vises().get(0)).toList();
  }
}
