package org.jawroom.placement.standing;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.standing.StandingOutcome.Neighbour;
import org.jawroom.placement.standing.StandingOutcome.Says;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;

/**
 * By hand: a table of 1000 × 400 mm with slots at y = −100, 0 and 100; a vise 100 wide whose
 * casting reaches 40 to the rear and 90 to the front of the jaw, and whose jaw, 20 thick, opens 80.
 * Bolted in the middle slot it stands at y = 20. The spacing is 6 mm.
 */
class StandingTableTest {
  private static final long Y = 20 * MM;

  private final ViseDraft left = vise("left");
  private final ViseDraft right = vise("right");

  @Test
  void solve_sideBySide_exactlyTheSpacingIsEnough() {
    assertEquals(List.of(), gaps(106 * MM + 1));
    assertEquals(List.of(), gaps(106 * MM));
    assertEquals(List.of(OptionalLong.of(6 * MM - 1)), gaps(106 * MM - 1));
    assertEquals(List.of(OptionalLong.of(0)), gaps(100 * MM));
    assertEquals(List.of(OptionalLong.of(-30 * MM)), gaps(70 * MM));
  }

  /** In the same place: the least that parts them is a whole base along x. */
  @Test
  void solve_oneIntoTheOther_overlapByTheLeastMoveOnTheTable() {
    assertEquals(List.of(OptionalLong.of(-100 * MM)), gaps(0));
  }

  /** A high narrow bed beside a low one: what reaches over the other keeps the spacing above it. */
  @Test
  void solve_aPartAboveTheOther_countsTheHeightBetween() {
    left.jawHeight = 0;
    left.boltGrip = OptionalLong.of(10 * MM);
    left.bedHeight = 44 * MM;
    right.parts.add(arm(50 * MM));
    assertEquals(List.of(), gaps(150 * MM));

    left.bedHeight = 44 * MM + 1;
    assertEquals(List.of(OptionalLong.of(6 * MM - 1)), gaps(150 * MM));

    left.bedHeight = 50 * MM + 1;
    assertEquals(List.of(OptionalLong.of(-6 * MM)), gaps(150 * MM));
  }

  /** Its origin stands 150 to the right of the other's: it reaches 6 over that one's base. */
  private static VisePart arm(long height) {
    return new VisePart(
        "arm",
        When.ALWAYS,
        Interval.of(0, 10 * MM),
        Interval.of(0, 10 * MM),
        Interval.of(-106 * MM, 0),
        Interval.of(height, height + 10 * MM),
        OptionalLong.empty());
  }

  @Test
  void solve_measuresWithATolerance_theLeastWithinBoth() {
    StandingOutcome one = table(at(left, 0, Y, MM), at(right, 108 * MM, Y, MM)).get(0);
    assertEquals(List.of(), one.close());
    one = table(at(left, 0, Y, MM), at(right, 108 * MM - 1, Y, MM)).get(0);
    assertEquals(List.of(OptionalLong.of(6 * MM - 1)), gaps(one));
  }

  /** The jaw of the rear one opens to y = 120 − 100 = 20, the base of the front one ends at −40. */
  @Test
  void solve_oneBehindTheOther_countsTheOpenJaw() {
    Standing front = at(left, 0, -80 * MM, 0);
    assertEquals(List.of(), table(front, at(right, 0, 120 * MM, 0)).get(0).close());

    right.openingMax = 134 * MM;
    assertEquals(List.of(), table(front, at(right, 0, 120 * MM, 0)).get(0).close());

    right.openingMax = 134 * MM + 1;
    assertEquals(
        List.of(OptionalLong.of(6 * MM - 1)), gaps(table(front, at(right, 0, 120 * MM, 0)).get(0)));
  }

  /** Handles of 80 mm radius: each reaches beyond its base, over the other's handle. */
  @Test
  void solve_twoHandles_oneServesBoth() {
    List.of(left, right).forEach(StandingTableTest::withHandle);
    // The handle sweeps ± 80 about its own axis, the other's base begins 50 before the other's
    // axis.
    assertEquals(List.of(), gaps(136 * MM));
    assertEquals(List.of(OptionalLong.of(6 * MM - 1)), gaps(136 * MM - 1));

    right.handleRadius = Dimension.NONE;
    assertEquals(List.of(), gaps(136 * MM));
  }

  @Test
  void solve_tooClose_isNoPlainFit() {
    List<StandingOutcome> crowded = table(at(left, 0, Y, 0), at(right, 105 * MM, Y, 0));
    for (StandingOutcome outcome : crowded) {
      assertEquals(Says.FITS, outcome.says());
      assertTrue(outcome.placed().orElseThrow().caveats().contains(Caveat.NEIGHBOUR));
    }
    StandingOutcome free = table(at(left, 0, Y, 0), at(right, 106 * MM, Y, 0)).get(0);
    assertFalse(free.placed().orElseThrow().caveats().contains(Caveat.NEIGHBOUR));
  }

  @Test
  void solve_offTheSlots_standsInTheWayAllTheSame() {
    StandingOutcome one = table(at(left, 0, Y, 0), at(right, 105 * MM, 50 * MM, 0)).get(0);
    assertEquals(List.of(OptionalLong.of(5 * MM)), gaps(one));

    right.turns.remove(Orientation.FRONT);
    one = table(at(left, 0, Y, 0), at(right, 105 * MM, Y, 0)).get(0);
    assertEquals(List.of(OptionalLong.of(5 * MM)), gaps(one));
  }

  @Test
  void solve_onAnotherMachine_isNotHeldAgainstIt() {
    Standing other = at("other mill", right, 0, Y, 0);
    assertEquals(List.of(), table(at(left, 0, Y, 0), other).get(0).close());
  }

  @Test
  void solve_openReadings_theWorstThatMayBe() {
    assertEquals(List.of(true), sure(100 * MM));

    right.baseWidth = Dimension.within(90 * MM, 110 * MM);
    assertEquals(List.of(), gaps(111 * MM));
    assertEquals(List.of(OptionalLong.of(6 * MM - 1)), gaps(111 * MM - 1));
    assertEquals(List.of(false), sure(111 * MM - 1));

    right.baseWidth = Dimension.BLANK;
    right.rearReach = Dimension.BLANK;
    right.frontReach = Dimension.BLANK;
    assertEquals(List.of(OptionalLong.empty()), gaps(300 * MM));
    assertEquals(List.of(false), sure(300 * MM));
  }

  private List<Boolean> sure(long x) {
    return table(at(left, 0, Y, 0), at(right, x, Y, 0)).get(0).close().stream()
        .map(Neighbour::sure)
        .toList();
  }

  private List<OptionalLong> gaps(long x) {
    List<StandingOutcome> both = table(at(left, 0, Y, 0), at(right, x, Y, 0));
    assertEquals(gaps(both.get(0)), gaps(both.get(1)));
    return gaps(both.get(0));
  }

  private static List<OptionalLong> gaps(StandingOutcome outcome) {
    return outcome.close().stream().map(Neighbour::gap).toList();
  }

  private static List<StandingOutcome> table(Standing... standing) {
    return StandingTable.solve(Settings.DEFAULTS, List.of(standing));
  }

  private static Standing at(ViseDraft vise, long x, long y, long tolerance) {
    return at("mill", vise, x, y, tolerance);
  }

  private static Standing at(String name, ViseDraft vise, long x, long y, long tolerance) {
    MachineDraft mill = new MachineDraft();
    mill.name = name;
    mill.tableLength = 1000 * MM;
    mill.tableWidth = 400 * MM;
    mill.travelX = 600 * MM;
    mill.travelY = 200 * MM;
    mill.slotWidth = Dimension.of(14 * MM);
    mill.slotPitch = Dimension.of(100 * MM);
    TapedPlace place = TapedPlace.of(mill.build(), vise.build(), Orientation.FRONT, x, y);
    Provenance measured = new Provenance(tolerance, false, "", "");
    return new Standing(mill.build(), vise.build(), place, "base bolts", measured);
  }

  private static void withHandle(ViseDraft vise) {
    vise.handleRadius = Dimension.of(80 * MM);
    vise.handleDepth = Dimension.of(20 * MM);
    vise.screwHeight = Dimension.of(30 * MM);
    vise.screwDiameter = Dimension.of(20 * MM);
    // The handle then stands beside the base, not in front of it.
    vise.frontReach = Dimension.of(20 * MM);
    vise.openingMax = 0;
  }

  private static ViseDraft vise(String name) {
    ViseDraft vise = new ViseDraft();
    vise.name = name;
    vise.jawWidth = 100 * MM;
    vise.jawHeight = 30 * MM;
    vise.bedHeight = 50 * MM;
    vise.openingMax = 80 * MM;
    vise.baseWidth = Dimension.of(100 * MM);
    vise.rearReach = Dimension.of(40 * MM);
    vise.frontReach = Dimension.of(90 * MM);
    vise.fixedJaw = Dimension.of(20 * MM);
    vise.movingJaw = Dimension.of(20 * MM);
    vise.boltSpacing = Dimension.of(60 * MM);
    vise.boltU = Dimension.of(20 * MM);
    vise.holeU = Dimension.of(14 * MM);
    vise.holeV = Dimension.of(14 * MM);
    return vise;
  }
}
