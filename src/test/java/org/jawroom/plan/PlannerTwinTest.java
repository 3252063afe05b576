package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Unheld;
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
    int bought = 0;
    int unheld = 0;
    int several = 0;
    for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
      CellSketch asked = RandomCells.cell(seed);
      String where = "seed " + seed + ": " + asked;
      Plan plan = Planner.plan(asked.cell(), asked.wishes());
      assertEquals(new SimplePlanner(asked).best(), SimplePlanner.asText(plan), where);
      assertTrue(plan.isProven() && plan.isUnique(), where);
      assertRemedies(asked.cell(), plan, where);
      bought += plan.purchases().isEmpty() ? 0 : 1;
      unheld += plan.unheld().isEmpty() ? 0 : 1;
      several += plan.machines().stream().allMatch(one -> one.fit().pick().isOfOneKind()) ? 0 : 1;
    }
    assertTrue(
        20 * bought > SEEDS && 20 * unheld > SEEDS && 20 * several > SEEDS,
        bought + " buy, " + unheld + " unheld, " + several + " with several kinds on a table");
  }

  /** With Gomory cuts the solver misses the only way to hold the third job. */
  @Test
  void plan_halvesEverywhereInTheRelaxation_findsTheRemedyAllTheSame() {
    CellSketch asked =
        CellSketch.parse(
            "M - 400 - | V 2 3 2 3@300 1@500"
                + " | F 0/0=+,1,250,9 0/1=-,3,200,9 0/3=+,2,0,9 1/1=+,2,200,9 1/2=+,2,0,9 2/0=+,1,0,9 2/2=-,3,50,9 2/3=+,2,0,9"
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

  /** Each aim decides against all that follow it, without jobs and with them. */
  @Test
  void plan_eachAim_goesBeforeAllThatFollow() {
    // One machine, two vises; the job is held by the first.
    assertVise(0, "M - | V 1 1 | F 0/0=-,1,0,0 0/1=+,1,9,9 | J 1:0/0");
    // Two machines equipped with small vises rather than one with the wide one of which all is
    // best.
    assertVise(1, "M - - | V 1 1 | F 0/0=+,1,90,90 0/1=-,1,1,1 1/0=-,1,1,1 | J");
    assertVise(0, "M - | V 1 1 | F 0/0=+,1,0,0 0/1=-,1,9,9 | J");
    assertVise(0, "M - | V 1 1 | F 0/0=+,1,9,0 0/1=+,1,8,9 | J");
    assertVise(0, "M - | V 1 1 | F 0/0=+,1,9,9 0/1=+,1,9,8 | J | keep 0/1");
    assertVise(1, "M - | V 2 2 | F 0/0=+,2,9,9 0/1=+,1,9,9 | J | keep 0/1");
    assertVise(1, "M - | V 2 2 | F 0/0=+,1,9,9 0/1=+,2,9,9 | J");
    assertVise(0, "M - | V 1 1 | F 0/0=+,1,9,9 0/1=+,1,9,9 | J");
  }

  private static void assertVise(int vise, String cell) {
    CellSketch asked = CellSketch.parse(cell);
    assertEquals(List.of(vise), Planner.plan(asked.cell(), asked.wishes()).kinds().get(0), cell);
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
