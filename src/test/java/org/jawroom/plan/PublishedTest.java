package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Published assignment problems as cells: workers are machines, tasks are kinds of vise with a
 * stock of one.
 *
 * <p>For a least sum, a cost becomes an opening of 1000 less the cost, so that the widest total
 * opening is the least sum; for a greatest sum it becomes the opening itself. For a bottleneck, a
 * cost becomes a negative margin with all openings equal, so that the largest least margin is the
 * least greatest cost; or the margin itself, for the largest least value.
 */
class PublishedTest {

  /** The example in the documentation of SciPy's linear_sum_assignment, which gives 5. */
  private static final long[][] SCIPY = {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}};

  /** The example in the documentation of lp.assign, R package lpSolve, which gives 8. */
  private static final long[][] LP_ASSIGN = {
    {2, 7, 7, 1}, {7, 7, 2, 9}, {7, 3, 8, 8}, {2, 2, 10, 2}
  };

  /** The bottleneck example of the R package couplr, which gives 6, by 1, 2, 3. */
  private static final long[][] COUPLR = {{5, 9, 2}, {10, 3, 7}, {8, 4, 6}};

  /**
   * A public test of a bottleneck assignment: the cheapest total, 5, contains a 5; the bottleneck
   * is 4.
   */
  private static final long[][] DIFFERING = {{0, 4}, {4, 5}};

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
  void widestOpening_ofTheDifferingExample_isTheLeastSumAndHasTheFive() {
    Plan plan = byOpening(DIFFERING, -1);
    assertEquals(5, leastSum(plan, 2));
    assertEquals(List.of(0, 1), vises(plan));
  }

  @Test
  void leastMargin_ofCouplrsExample_isTheBottleneck() {
    Plan plan = byMargin(COUPLR, -1);
    assertEquals(-6, plan.value(Aim.MARGIN).orElseThrow());
    assertEquals(List.of(0, 1, 2), vises(plan));
  }

  @Test
  void leastMargin_ofTheDifferingExample_isTheBottleneck() {
    Plan plan = byMargin(DIFFERING, -1);
    assertEquals(-4, plan.value(Aim.MARGIN).orElseThrow());
    assertEquals(List.of(1, 0), vises(plan));
  }

  private static Plan byOpening(long[][] costs, int sign) {
    return plan(costs, 0, sign < 0 ? 1000 : 0, sign);
  }

  private static Plan byMargin(long[][] costs, int sign) {
    return plan(costs, sign, 0, 0);
  }

  private static Plan plan(long[][] costs, int margin, long opening, int less) {
    List<PlanMachine> machines = new ArrayList<>();
    List<ViseType> vises = new ArrayList<>();
    List<Fit> fits = new ArrayList<>();
    for (int machine = 0; machine < costs.length; machine++) {
      machines.add(new PlanMachine("worker " + machine, OptionalLong.empty()));
      for (int vise = 0; vise < costs[machine].length; vise++) {
        long cost = costs[machine][vise];
        fits.add(
            new Fit(
                new Pick(machine, vise), OptionalLong.of(margin * cost), 1, opening + less * cost));
      }
    }
    LongStream.range(0, costs[0].length)
        .forEach(vise -> vises.add(new ViseType("task " + vise, 1, OptionalLong.empty())));
    Plan plan = Planner.plan(new CellModel(machines, vises, fits, List.of()), Wishes.none());
    assertTrue(plan.isProven());
    assertEquals("no better plan exists", plan.statement());
    return plan;
  }

  private static long leastSum(Plan plan, int machines) {
    return 1000L * machines - plan.value(Aim.OPENING).orElseThrow();
  }

  private static List<Integer> vises(Plan plan) {
    return plan.machines().stream().map(one -> one.fit().vise()).toList();
  }
}
