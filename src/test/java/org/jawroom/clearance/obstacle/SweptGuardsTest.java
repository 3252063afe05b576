package org.jawroom.clearance.obstacle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SweptGuardsTest {
  private static final Box BOX =
      new Box(Interval.of(-30, 40), Interval.of(5, 25), Interval.of(-2, 90));
  private static final SweptGuard CUTTING =
      NamedPieces.guard("door", 3, false, Situation.CUTTING, BOX, 7, 1);

  @Test
  void repeats_sameWhileLoading_doesAndNeedNotBeAskedAgain() {
    SweptGuard loading = NamedPieces.guard("door", 3, false, Situation.LOADING, BOX, 7, 1);

    assertEquals(true, SweptGuards.of(List.of(CUTTING, loading), 0).repeats(1));
  }

  static Stream<SweptGuard> others() {
    Box wider = new Box(Interval.of(-30, 41), BOX.y(), BOX.z());
    return Stream.of(
        NamedPieces.guard("door", 3, false, Situation.CUTTING, BOX, 7, 1),
        NamedPieces.guard("door", 3, true, Situation.LOADING, BOX, 7, 1),
        NamedPieces.guard("door", 3, false, Situation.LOADING, wider, 7, 1),
        NamedPieces.guard("door", 3, false, Situation.LOADING, BOX, 8, 1),
        NamedPieces.guard("door", 3, false, Situation.LOADING, BOX, 7, 2));
  }

  @ParameterizedTest
  @MethodSource("others")
  void repeats_anythingElse_doesNot(SweptGuard other) {
    assertEquals(false, SweptGuards.of(List.of(CUTTING, other), 0).repeats(1));
  }

  @Test
  void repeats_afterOneThatIsWhileLoadingToo_doesNot() {
    SweptGuard loading = NamedPieces.guard("door", 3, false, Situation.LOADING, BOX, 7, 1);

    assertEquals(false, SweptGuards.of(List.of(loading, loading), 0).repeats(1));
  }

  @Test
  void rows_eachTurn_areTheBoxSeenFromTheVise() {
    SweptGuards guards = SweptGuards.of(List.of(CUTTING), 0);

    // Clearance model, section 1: u points where the handle does, v a quarter turn
    // counter-clockwise.
    assertRow(guards.rows(Orientation.RIGHT), -30, 40, 5, 25);
    assertRow(guards.rows(Orientation.LEFT), -40, 30, -25, -5);
    assertRow(guards.rows(Orientation.REAR), 5, 25, -40, 30);
    assertRow(guards.rows(Orientation.FRONT), -25, -5, -30, 40);
  }

  private static void assertRow(long[] row, long uLo, long uHi, long vLo, long vHi) {
    assertEquals(
        List.of(uLo, uHi, vLo, vHi, -2L, 90L), java.util.Arrays.stream(row).boxed().toList());
  }
}
