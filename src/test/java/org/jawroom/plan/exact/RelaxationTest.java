package org.jawroom.plan.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.plan.CellSketch;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.junit.jupiter.api.Test;

/** Openings alone: fit 0 is 9, fit 1 is 5 and fit 2, of the same vise as fit 0, is 7. */
class RelaxationTest {

  private static final Task TASK =
      new Task(
          CellSketch.parse("M - - | V 1 1 | F 0/0=+,1,9,1 0/1=+,1,5,1 1/0=+,1,7,1 | J").cell(),
          false,
          OptionalLong.empty(),
          Optional.empty());
  private static final Worths WORTHS = new Worths(TASK, List.of(Aim.OPENING));
  private static final Relaxation ALL = Relaxation.of(TASK, WORTHS);

  @Test
  void of_allFits_isTheWidestOpening() {
    assertOpening(12, ALL);
    assertEquals(1, ALL.choice().fitOf(0));
    assertEquals(2, ALL.choice().fitOf(1));
  }

  /** A fit that must be taken is, even where a bare machine were better. */
  @Test
  void with_aFit_takesIt() {
    Relaxation first = ALL.with(0).orElseThrow();
    assertOpening(9, first);
    assertEquals(Choice.BARE, first.choice().fitOf(1));
    assertEquals(Optional.empty(), first.with(2));
    Task keeping = new Task(TASK.cell(), false, OptionalLong.empty(), Optional.of(Map.of()));
    Relaxation bare = Relaxation.of(keeping, new Worths(keeping, List.of(Aim.CHANGES)));
    assertEquals(Choice.BARE, bare.choice().fitOf(0));
    assertEquals(0, bare.with(0).orElseThrow().choice().fitOf(0));
  }

  @Test
  void without_fits_takesNoneOfThem() {
    BitSet second = new BitSet();
    second.set(1);
    second.set(2);
    assertOpening(9, ALL.without(second).orElseThrow());
    assertEquals(Optional.empty(), ALL.with(1).orElseThrow().without(second));
  }

  @Test
  void worthWith_aFit_isNotBelowWhatItBrings() {
    for (int fit = 0; fit < 3; fit++) {
      BigInteger worth = ALL.with(fit).orElseThrow().worth();
      assertTrue(worth.compareTo(ALL.worthWith(fit)) <= 0, "fit " + fit);
    }
    BitSet least = new BitSet();
    least.set(1);
    least.set(2);
    assertEquals(ALL.worth(), ALL.worthWith(1));
    assertEquals(ALL.worth(), ALL.worthWith(2));
    assertEquals(least, ALL.with(1).orElseThrow().promising(worth -> true));
  }

  private static void assertOpening(long opening, Relaxation relaxation) {
    assertEquals(opening, WORTHS.values(relaxation.worth())[0]);
  }
}
