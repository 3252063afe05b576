package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Small random cells, against a search that tries everything. More of them:
 * {@code mvn test -Dtest=PlannerTwinTest -Dplan.seeds=20000 -Dplan.first=5000}.
 */
class PlannerTwinTest {

  private static final long FIRST = Long.getLong("plan.first", 1);
  private static final int SEEDS = Integer.getInteger("plan.seeds", 1200);

  @Test
  void plan_onRandomCells_isTheBestOfAllInEveryOrderOfPreference() {
    for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
      CellText asked = RandomCells.cell(seed);
      String where = "seed " + seed + ": " + asked;
      Plan plan = Planner.plan(asked.cell(), asked.wishes());
      assertEquals(new SimplePlanner(asked).best(), SimplePlanner.told(plan), where);
      assertTrue(plan.isProven() && plan.isUnique(), where);
      assertRemedies(asked.cell(), plan, where);
    }
  }

  /** Each claim is the cheapest there is, and made true by adding the purchase to the inputs. */
  private static void assertRemedies(Cell cell, Plan plan, String where) {
    SimplePlanner now = SimplePlanner.after(cell, plan.purchases());
    for (Unheld one : plan.unheld()) {
      List<Integer> wanted = new ArrayList<>(plan.held());
      wanted.add(one.job());
      boolean buys = one.remedy() == Unheld.Remedy.BUY;
      assertTrue(one.proven(), where);
      assertEquals(now.cheapest(wanted), buys ? now.told(one.purchases()) : "none", where);
      if (buys) {
        List<Purchase> all = new ArrayList<>(plan.purchases());
        all.addAll(one.purchases());
        long held = wanted.stream().mapToLong(job -> cell.jobs().get(job).quantity()).sum();
        assertTrue(SimplePlanner.after(cell, all).held() >= held, where);
      }
    }
  }
}
