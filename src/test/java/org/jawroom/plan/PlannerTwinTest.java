package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Small random cells against exhaustive search. {@code mvn test -Dtest=PlannerTwinTest
 * -Dplan.seeds=20000 -Dplan.first=5000} tries more.
 */
class PlannerTwinTest {

  private static final long FIRST = Long.getLong("plan.first", 1);
  private static final int SEEDS = Integer.getInteger("plan.seeds", 1000);

  @Test
  void plan_onRandomCells_isTheBestOfAllInEveryOrderOfPreference() {
    for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
      CellText asked = RandomCells.cell(seed);
      String where = "seed " + seed + ": " + asked;
      Plan plan = Planner.plan(asked.cell(), asked.wishes());
      assertEquals(new SimplePlanner(asked).best(), SimplePlanner.asText(plan), where);
      assertTrue(plan.isProven() && plan.isUnique(), where);
      assertRemedies(asked.cell(), plan, where);
    }
  }

  /** With Gomory cuts the solver misses the only way to hold the third job. */
  @Test
  void plan_halvesEverywhereInTheRelaxation_findsTheRemedyAllTheSame() {
    CellText asked =
        CellText.parse(
            "M - 400 - | V 2 3 2 3@300 1@500"
                + " | F 0/0=3,1,250 0/1=-1,3,200 0/3=0,2,0 1/1=2,2,200 1/2=3,2,0 2/0=*,1,0 2/2=-3,3,50 2/3=4,2,0"
                + " | J 4:0/1,0/3,1/1,1/2 3:0/0,0/1,1/2 1:0/3,2/0 3:0/0,1/1,2/0,2/3 2:0/0,0/3,2/2,2/3");
    Plan plan = Planner.plan(asked.cell(), asked.wishes());
    assertRemedies(asked.cell(), plan, asked.toString());
    assertEquals(
        List.of(
            new Unheld(
                2,
                Unheld.Remedy.BUY,
                List.of(new Purchase(Purchase.What.MACHINE, 1, 1, 400)),
                400,
                true)),
        plan.unheld());
  }

  /** Each remedy is the cheapest, and becomes true when its purchases are added to the inputs. */
  private static void assertRemedies(CellModel cell, Plan plan, String where) {
    SimplePlanner now = SimplePlanner.after(cell, plan.purchases());
    for (Unheld one : plan.unheld()) {
      List<Integer> wanted = new ArrayList<>(plan.held());
      wanted.add(one.job());
      boolean buys = one.remedy() == Unheld.Remedy.BUY;
      assertTrue(one.proven(), where);
      assertEquals(now.cheapest(wanted), buys ? now.asText(one.purchases()) : "none", where);
      if (buys) {
        List<Purchase> all = new ArrayList<>(plan.purchases());
        all.addAll(one.purchases());
        long held = wanted.stream().mapToLong(job -> cell.jobs().get(job).quantity()).sum();
        assertTrue(SimplePlanner.after(cell, all).held() >= held, where);
      }
    }
  }
}
