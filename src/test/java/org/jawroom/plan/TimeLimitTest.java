package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Stage;
import org.jawroom.plan.model.Unheld;
import org.junit.jupiter.api.Test;

class TimeLimitTest {

  /**
   * Two machines, one vise of each of two kinds, a job for each kind on either machine, a third job
   * held by neither.
   */
  private static final CellSketch ASKED =
      CellSketch.parse(
          "M - - | V 1 1 0@700 | F 0/0=-,1,10,5 0/1=+,1,10,5 1/0=+,1,10,5 1/1=-,1,10,5 0/2=+,1,10,5"
              + " | J 1:0/0,1/0 1:0/1,1/1 1:0/2");

  @Test
  void plan_noTimeAtAll_isWhatStockAllowsAndClaimsNothing() {
    // Machine 0 gets the first vise that holds a job, machine 1 the one that holds another job.
    Plan plan = Planner.plan(ASKED.cell(), ASKED.wishes().within(() -> 0));
    assertEquals("{0=[0], 1=[1]}", plan.kinds().toString());
    // Both jobs that can be held, and both machines: no more is possible, so these two aims are
    // proven.
    assertEquals(List.of(0, 1), plan.held());
    assertFalse(plan.isProven());
    assertFalse(plan.isUnique());
    assertEquals(
        "a better plan may exist; not proven: the most of them comfortable and settable, the most vises set out",
        plan.statement());
    assertTrue(
        plan.unheld().stream()
            .allMatch(one -> one.remedy() == Unheld.Remedy.NOT_SOUGHT && !one.proven()));
  }

  @Test
  void plan_noTimeButSomethingToKeep_keepsIt() {
    CellSketch keeping = CellSketch.parse(ASKED + " | keep 0/1 1/0");
    Plan plan = Planner.plan(keeping.cell(), keeping.wishes().within(() -> 0));
    assertEquals("{0=[1], 1=[0]}", plan.kinds().toString());
    assertEquals(List.of(0, 1), plan.held());
    assertFalse(plan.isProven());
  }

  /**
   * Whenever time runs out, the stages before are proven, and those after are not unless they are
   * at their upper bound.
   */
  @Test
  void plan_timeRunsOutAtEveryQuestion_neverClaimsAWorseValue() {
    Plan whole = Planner.plan(ASKED.cell(), ASKED.wishes());
    assertTrue(whole.isProven() && whole.isUnique());
    for (int questions = 0; questions < 12; questions++) {
      AtomicInteger left = new AtomicInteger(questions);
      Plan plan =
          Planner.plan(
              ASKED.cell(),
              ASKED.wishes().within(() -> left.getAndDecrement() > 0 ? Long.MAX_VALUE : 0));
      for (int stage = 0;
          stage < plan.stages().size() && plan.stages().get(stage).proven();
          stage++) {
        assertEquals(whole.stages().get(stage), plan.stages().get(stage));
      }
    }
  }

  /** The last plan published is never worse than those before it. */
  @Test
  void plan_handedOnOnTheWay_getsBetterAndEndsAsThePlan() {
    List<Plan> found = new ArrayList<>();
    Plan plan = Planner.plan(ASKED.cell(), ASKED.wishes().find(found::add));
    assertEquals(plan, found.get(found.size() - 1));
    for (int i = 1; i < found.size(); i++) {
      List<Long> before = found.get(i - 1).stages().stream().map(Stage::value).toList();
      List<Long> after = found.get(i).stages().stream().map(Stage::value).toList();
      assertTrue(Arrays.compare(numbers(before), numbers(after)) <= 0, before + " then " + after);
    }
    Plan first = found.get(0);
    assertFalse(first.isProven());
    assertEquals(plan.stages().size(), first.stages().size());
    assertEquals(Unheld.Remedy.NOT_SOUGHT, first.unheld().get(0).remedy());
  }

  private static long[] numbers(List<Long> values) {
    return values.stream().mapToLong(value -> value).toArray();
  }

  @Test
  void plan_listened_announcesEveryAimInOrder() {
    List<Aim> announced = new ArrayList<>();
    Planner.plan(ASKED.cell(), ASKED.wishes().announce(progress -> announced.add(progress.aim())));
    assertEquals(
        List.of(
            Aim.HELD,
            Aim.EQUIPPED,
            Aim.GOOD,
            Aim.OPENING,
            Aim.JAW,
            Aim.SET_OUT,
            Aim.ORDER,
            Aim.REMEDY),
        announced.stream().distinct().toList());
  }

  /**
   * With two kinds on a table no bound in whole numbers decides, and the solver computes in
   * doubles.
   */
  @Test
  void plan_amountsBeyondThePrecisionOfDoubles_isNotCalledProven() {
    CellSketch wide =
        CellSketch.parse(
            "M - - | V 1 1 1 | F 0/0=+,1,9000000001,5 0/1=+,1,9000000000,5 0/1+2=+,1,9000000006,5"
                + " 1/0=+,1,9000000005,5 1/1=+,1,9000000002,5 1/0+2=+,1,9000000006,5 | J");
    Plan plan = Planner.plan(wide.cell(), wide.wishes());
    assertEquals(2, plan.machines().size());
    assertFalse(plan.stages().get(2).proven());
    assertEquals(
        "a better plan may exist; not proven: the widest openings in all (at most 0.1 % more), the"
            + " most vises set out (at most 33.4 % more)",
        plan.statement());
  }

  /** One kind on each table: the bound in whole numbers is reached. */
  @Test
  void plan_amountsBeyondThePrecisionOfDoubles_isProvenInWholeNumbers() {
    CellSketch wide =
        CellSketch.parse(
            "M - - | V 1 1 | F 0/0=+,1,9000000001,5 0/1=+,1,9000000000,5 1/0=+,1,9000000005,5 1/1=+,1,9000000002,5 | J");
    Plan plan = Planner.plan(wide.cell(), wide.wishes());
    assertEquals(new Stage(Aim.OPENING, 18000000005L, true, 18000000005L), plan.stages().get(2));
    assertEquals("{0=[1], 1=[0]}", plan.kinds().toString());
    assertTrue(plan.isProven() && plan.isUnique());
  }
}
