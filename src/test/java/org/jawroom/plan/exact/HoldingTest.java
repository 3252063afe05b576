package org.jawroom.plan.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.plan.CellSketch;
import org.jawroom.plan.choice.Task;
import org.junit.jupiter.api.Test;

/** Fits 0 to 3; jobs of 5, 3 and 2 pieces, the first held whenever the second is. */
class HoldingTest {

  private static final Task TASK =
      new Task(
          CellSketch.parse(
                  "M - - - - | V 4 | F 0/0=+,1,1,1 1/0=+,1,1,1 2/0=+,1,1,1 3/0=+,1,1,1"
                      + " | J 5:0/0,1/0 3:0/0 2:2/0,3/0")
              .cell(),
          false,
          OptionalLong.empty(),
          Optional.empty());

  @Test
  void missed_allMustBeHeld_leavesOutWhatAnotherImplies() {
    Holding all = Holding.of(TASK, 10);
    assertEquals(List.of(3L, 2L), quantities(all.missed(fits(1))));
    assertEquals(List.of(2L), quantities(all.missed(fits(0, 1))));
    assertEquals(List.of(), all.missed(fits(0, 3)));
  }

  /** Seven pieces may be missed by three: the first job must be held, and one of the others. */
  @Test
  void missed_someMayBeMissed_isEmptyOnceEnoughIsHeld() {
    Holding most = Holding.of(TASK, 7);
    assertEquals(List.of(), most.missed(fits(0)));
    assertEquals(List.of(), most.missed(fits(1, 2)));
    List<Holding.Held> missed = most.missed(fits(1));
    assertEquals(List.of(3L, 2L), quantities(missed));
    assertTrue(most.mayMiss(missed.get(0)));
    Holding given = most.without(missed.get(0));
    assertFalse(given.mayMiss(missed.get(1)));
    assertEquals(List.of(2L), quantities(given.missed(fits(1))));
  }

  @Test
  void needed_ofMoreThanEnough_isWhatCannotBeLeftOut() {
    assertEquals(fits(0, 3), Holding.of(TASK, 10).needed(fits(0, 1, 2, 3)));
    assertEquals(fits(1, 3), Holding.of(TASK, 7).needed(fits(1, 2, 3)));
    assertEquals(fits(), Holding.of(TASK, 0).needed(fits(1, 2, 3)));
  }

  private static BitSet fits(int... fits) {
    BitSet set = new BitSet();
    for (int fit : fits) {
      set.set(fit);
    }
    return set;
  }

  private static List<Long> quantities(List<Holding.Held> groups) {
    return groups.stream().map(Holding.Held::quantity).toList();
  }
}
