package org.jawroom.report.wording;

import static org.jawroom.report.Invented.machine;
import static org.jawroom.report.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Made;
import org.junit.jupiter.api.Test;

class OutcomeRankingTest {

  private static Made made(Verdict verdict, String margin) {
    Made made =
        new Made(machine("m"), vise("v"), verdict)
            .best(margin)
            .limit(margin, "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY);
    return verdict == Verdict.LIMITED ? made.best("-1") : made;
  }

  private static void assertBest(Outcome expected, Outcome other) {
    assertEquals(Optional.of(expected), OutcomeRanking.best(List.of(expected, other)));
    assertEquals(Optional.of(expected), OutcomeRanking.best(List.of(other, expected)));
  }

  private static void assertNever(Outcome outcome) {
    assertEquals(Optional.empty(), OutcomeRanking.best(List.of(outcome)));
  }

  @Test
  void best_clearBeforeLimited() {
    assertBest(
        made(Verdict.FITS, "1").shortfall("50").done(),
        made(Verdict.LIMITED, "9").usable("0", "99").done());
  }

  @Test
  void best_lessReachShortfallBeforeMargin() {
    assertBest(made(Verdict.FITS, "1").done(), made(Verdict.FITS, "9").shortfall("0.1").done());
  }

  @Test
  void best_amongTheClear_isTheLargestMargin() {
    assertBest(
        made(Verdict.FITS, "2").usable("0", "50").done(),
        made(Verdict.FITS, "1").usable("0", "99").done());
  }

  @Test
  void best_amongTheLimited_isTheWidestOpening() {
    assertBest(
        made(Verdict.LIMITED, "1").usable("0", "99").done(),
        made(Verdict.LIMITED, "2").usable("0", "98").done());
  }

  @Test
  void best_ofEqualOnes_isTheFirst() {
    Outcome first = made(Verdict.FITS, "1").nose("100").done();
    assertEquals(
        Optional.of(first),
        OutcomeRanking.best(List.of(first, made(Verdict.FITS, "1").nose("200").done())));
  }

  @Test
  void best_whatCannotBeUsedOrWasNotHeldAgainstAnything_isNever() {
    assertNever(made(Verdict.FITS, "9").load("-0.001").done());
    assertNever(made(Verdict.FITS, "9").room("0").done());
    assertNever(
        new Made(machine("m"), vise("v"), Verdict.FITS).at(Orientation.FRONT, "0", "0").done());
    assertNever(made(Verdict.MEASURE, "-1").done());
    assertNever(made(Verdict.NO_PLACE, "-1").done());
    assertNever(new Made(machine("m"), vise("v"), Verdict.UNKNOWN).done());
  }

  @Test
  void best_loadAndRoomNotKnown_doNotRuleItOut() {
    Outcome outcome = made(Verdict.FITS, "1").done();
    assertEquals(Optional.of(outcome), OutcomeRanking.best(List.of(outcome)));
  }
}
