package org.jawroom.report.card.statement;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.report.format.PeopleUnit;
import org.junit.jupiter.api.Test;

/**
 * Finger 25, hand 100 mm: ISO 13854, as three pages quote it after EN 349 (unchanged since, from
 * memory).
 */
class PinchGapsTest {
  private static final Box BOX =
      new Box(Interval.of(0, MM), Interval.of(0, MM), Interval.of(0, MM));

  @Test
  void words_gapsAroundFingerAndHand_areNamedByWhatFits() {
    assertEquals(List.of(), words(closing("base", 100 * MM)));
    assertEquals(
        List.of("base to door closes to 99.9 (less than a" + " hand)"),
        words(closing("base", 100 * MM - 1)));
    assertEquals(
        List.of("base to door closes to 25 (less than a hand)"), words(closing("base", 25 * MM)));
    assertEquals(
        List.of("base to door closes to 24.9 (less than a" + " finger)"),
        words(closing("base", 25 * MM - 1)));
  }

  @Test
  void words_tolerance_bringsItCloser() {
    Limit limit = limit("base", "door", 101 * MM, 2 * MM, Situation.CUTTING);
    assertEquals(List.of("base to door closes to 99 (less than a hand)"), words(limit));
  }

  @Test
  void words_whatStandsStillOrLoads_doesNotClose() {
    assertEquals(List.of(), words(limit("handle", "table", 30 * MM, 0, Situation.CUTTING)));
    assertEquals(List.of(), words(limit("base", "door", 30 * MM, 0, Situation.LOADING)));
  }

  @Test
  void words_more_areTheThreeThatCloseMost() {
    assertEquals(
        List.of(
            "d to door closes to 20 (less than a finger)",
            "b to door closes to 30 (less than a hand)",
            "c to door closes to 40 (less than a hand)"),
        words(
            closing("a", 50 * MM),
            closing("b", 30 * MM),
            closing("c", 40 * MM),
            closing("d", 20 * MM)));
  }

  private static Limit closing(String part, long gap) {
    return limit(part, "door", gap, 0, Situation.CUTTING);
  }

  private static Limit limit(
      String part, String guard, long gap, long tolerance, Situation situation) {
    return NamedPieces.limit(
        gap, 6 * MM, tolerance, guard, part, Axis.Y, situation, JawEnd.ANY, BOX, BOX);
  }

  private static List<String> words(Limit... pairs) {
    return new PinchGaps(PeopleUnit.MM, List.of(pairs)).words();
  }
}
