package org.jawroom.clearance.gap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarginFieldTest {
  private static final Interval RANGE = Interval.of(0, 40);
  private static final Interval WIDE = Interval.of(-1000, 1000);

  /** Between the jaw's back (10 closed, 50 open) and a guard that begins at 80 along u. */
  @ParameterizedTest
  @CsvSource({"FRONT, Y", "RIGHT, X", "REAR, Y", "LEFT, X"})
  void limit_eachTurn_isTheFaceTowardTheHandle(Orientation turn, Axis axis) {
    Box wall = beyond(turn, 80);
    Limit limit = limit(part(Interval.of(0, 10), Interval.of(0, 50)), wall, turn, 0, 0);
    assertEquals(axis, limit.axis());
    assertEquals(30, limit.gap());
    assertEquals(JawEnd.OPEN, limit.opening());
    // Required 5; tolerances 2 and 1, added as the worst case.
    assertEquals(30 - 5 - 3, limit.margin());
    assertEquals(wall, limit.guardBox());
    assertEquals(50, limit.partBox().along(axis).length());
  }

  @Test
  void limit_endOfTheOpening_isTheOneThatGivesTheFacingEdge() {
    Box front = beyond(Orientation.RIGHT, 80);
    assertEquals(JawEnd.OPEN, end(part(Interval.of(0, 10), Interval.of(0, 50)), front));
    assertEquals(JawEnd.CLOSED, end(part(Interval.of(0, 50), Interval.of(0, 10)), front));
    assertEquals(JawEnd.ANY, end(part(Interval.of(0, 50), Interval.of(20, 50)), front));
    Box rear = new Box(Interval.of(-500, -60), WIDE, WIDE);
    assertEquals(JawEnd.OPEN, end(part(Interval.of(0, 10), Interval.of(-50, 10)), rear));
    assertEquals(JawEnd.CLOSED, end(part(Interval.of(-50, 10), Interval.of(0, 10)), rear));
    // On an axis other than u, the opening has no effect.
    Box aside = new Box(WIDE, Interval.of(90, 200), WIDE);
    assertEquals(JawEnd.ANY, end(part(Interval.of(0, 10), Interval.of(0, 50)), aside));
    // Equal overlap from either side: the edge toward the guard's low face counts.
    Box around = new Box(Interval.of(-10, 60), WIDE, WIDE);
    assertEquals(JawEnd.OPEN, end(part(Interval.of(0, 10), Interval.of(0, 50)), around));
  }

  @Test
  void limit_equalMargins_takesGuardThenPartThenCutting() {
    Part base = part("base", 0, Situation.CUTTING);
    Part screw = part("screw", 5, Situation.CUTTING);
    Part baseLoading = part("base", 0, Situation.LOADING);
    SweptGuard first = guard("first", 1, Situation.CUTTING);
    SweptGuard second = guard("second", 2, Situation.CUTTING);
    SweptGuard loading = guard("first", 1, Situation.LOADING);
    List<Pair> pairs =
        Pair.all(
            Settings.DEFAULTS, List.of(screw, baseLoading, base), List.of(second, loading, first));

    MarginField field = MarginField.of(pairs, Orientation.RIGHT, RANGE);

    assertEquals(
        List.of(
            "first base cutting",
            "first base loading",
            "first screw cutting",
            "second base cutting",
            "second screw cutting"),
        field.limits(0, 0).stream()
            .map(
                limit ->
                    limit.guard().name()
                        + " "
                        + limit.part().name()
                        + " "
                        + limit.situation().word())
            .toList());
    assertEquals(field.limits(0, 0).get(0), field.limit(0, 0).orElseThrow());
  }

  @Test
  void limits_unequalMargins_beginWithTheTightest() {
    Part part = part(Interval.of(0, 10), Interval.of(0, 50));
    SweptGuard far = swept(beyond(Orientation.RIGHT, 90), 1);
    SweptGuard near = swept(beyond(Orientation.RIGHT, 80), 2);
    MarginField field =
        MarginField.of(
            List.of(new Pair(part, far, 5), new Pair(part, near, 5)), Orientation.RIGHT, RANGE);
    assertEquals(22, field.margin(0, 0));
    assertEquals(List.of(22L, 32L), field.limits(0, 0).stream().map(Limit::margin).toList());
    assertEquals(22, field.limit(0, 0).orElseThrow().margin());
    assertEquals(2, field.bounds().size());
  }

  @Test
  void field_withoutPairs_isFreeAndHasNoLimit() {
    MarginField none = MarginField.of(List.of(), Orientation.FRONT, RANGE);
    assertEquals(Length.ENDLESS, none.margin(3, 4));
    assertEquals(Optional.empty(), none.limit(3, 4));
    assertEquals(List.of(), none.limits(3, 4));
  }

  /** Far from the middle of the table a guard on the near side still faces the low edge. */
  @Test
  void limit_awayFromTheMiddle_looksAtTheFacingEdge() {
    Part part = part(Interval.of(0, 10), Interval.of(-50, 10));
    Limit limit = limit(part, new Box(Interval.of(60, 90), WIDE, WIDE), Orientation.RIGHT, 200, 0);
    assertEquals(60, limit.gap());
    assertEquals(JawEnd.OPEN, limit.opening());
  }

  private static JawEnd end(Part part, Box guard) {
    return limit(part, guard, Orientation.RIGHT, 0, 0).opening();
  }

  private static Limit limit(Part part, Box guard, Orientation turn, long x, long y) {
    List<Pair> pairs = List.of(new Pair(part, swept(guard, 1), 5));
    return MarginField.of(pairs, turn, RANGE).limit(x, y).orElseThrow();
  }

  /** Everything beyond {@code from} in the direction of the handle. */
  private static Box beyond(Orientation turn, long from) {
    Interval u = Interval.of(from, 500);
    return new Box(turn.x(u, WIDE), turn.y(u, WIDE), WIDE);
  }

  private static Part part(Interval closed, Interval open) {
    return NamedPieces.part(
        "jaw",
        2,
        false,
        Situation.CUTTING,
        new OpeningInterval(closed, open, RANGE),
        Interval.of(-20, 20),
        Interval.of(0, 30),
        1);
  }

  private static Part part(String name, int rank, Situation situation) {
    OpeningInterval u = OpeningInterval.constant(Interval.of(0, 10), RANGE);
    return NamedPieces.part(
        name, rank, false, situation, u, Interval.of(0, 1), Interval.of(0, 1), 0);
  }

  private static SweptGuard guard(String name, int rank, Situation situation) {
    return NamedPieces.guard(name, rank, false, situation, beyond(Orientation.RIGHT, 20), 5, 0);
  }

  private static SweptGuard swept(Box box, int rank) {
    return NamedPieces.guard("guard", rank, false, Situation.CUTTING, box, 5, 2);
  }

  private static Interval interval(Random random) {
    int lo = random.nextInt(60) - 30;
    return Interval.of(lo, lo + random.nextInt(30));
  }
}
