package org.jawroom.placement.standing;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.standing.StandingOutcome.Says;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.junit.jupiter.api.Test;

/**
 * A table of 600 × 300 mm with slots at y = −100, 0 and 100, a guard whose face stands at x = 350,
 * and a vise with the handle to the front, its base ± 100 wide, its bolts 20 in front of the jaw
 * with 1 mm of play. Held in the middle slot it stands at y = 20 ± 1; with 6 mm of clearance its
 * base may reach up to x = 344, its origin up to 244.
 */
class StandingPairingTest {
  private static final long X = 244 * MM;
  private static final long Y = 20 * MM;

  private final MachineDraft mill = mill();
  private final ViseDraft vise = vise();

  @Test
  void solve_atTheRequiredClearance_touchingIsClear() {
    assertEquals(Says.FITS, at(X - 1, Y, 0).says());
    assertEquals(OptionalLong.of(1), at(X - 1, Y, 0).margin());
    assertEquals(Says.FITS, at(X, Y, 0).says());
    assertEquals(OptionalLong.of(0), at(X, Y, 0).margin());
    assertEquals(Says.HITS, at(X + 1, Y, 0).says());
    assertEquals(OptionalLong.of(-1), at(X + 1, Y, 0).margin());
  }

  @Test
  void solve_measuresWithATolerance_theWorstWithinIt() {
    assertEquals(OptionalLong.of(0), at(X - MM, Y, MM).margin());
    assertEquals(Says.FITS, at(X - MM, Y, MM).says());
    assertEquals(Says.HITS, at(X - MM + 1, Y, MM).says());
  }

  @Test
  void solve_besideTheSlot_offTheSlotsUnlessTheToleranceReachesIt() {
    assertEquals(Says.FITS, at(X, Y + MM, 0).says());
    assertEquals(Says.OFF_SLOTS, at(X, Y + MM + 1, 0).says());
    assertEquals(Says.FITS, at(X - 1, Y + MM + 1, 1).says());
    assertEquals(Says.FITS, at(X, Y - MM, 0).says());
    assertEquals(Says.OFF_SLOTS, at(X, Y - MM - 1, 0).says());

    StandingOutcome off = at(X, Y + 5 * MM, 0);

    assertEquals(Optional.of(new Place(X, Y + MM)), off.nearest());
    assertEquals(OptionalLong.empty(), off.margin());
    assertEquals(OptionalLong.empty(), off.reachShortfall());
    assertEquals(Optional.empty(), off.usable());
    assertTrue(off.move().isPresent());
  }

  @Test
  void solve_aMountThatHoldsNowhere_offTheSlots() {
    StandingOutcome off = solve(standing(X, Y, 0, "clamps"));
    assertEquals(Says.OFF_SLOTS, off.says());
    assertEquals(Optional.empty(), off.nearest());
  }

  /** The door's face at y = −110: the jaw, 30 thick, may open up to −104, so 94 wide. */
  @Test
  void solve_jawsThatOpenIntoTheDoor_limitedToTheWidestOpening() {
    mill.frontGap = Dimension.of(-40 * MM);

    StandingOutcome limited = at(0, Y, 0);

    assertEquals(Says.LIMITED, limited.says());
    assertEquals(OptionalLong.of(-6 * MM), limited.margin());
    assertEquals(Optional.of(Interval.of(0, 94 * MM)), limited.usable());
    assertEquals("door", limited.limit().orElseThrow().guard().name());
    assertEquals(Interval.of(0, 94 * MM), limited.there().orElseThrow().place().openings());
    assertEquals(OptionalLong.of(0), limited.there().orElseThrow().place().margin());

    assertEquals(Optional.of(Interval.of(0, 93 * MM)), at(0, Y, MM).usable());
  }

  @Test
  void solve_openingNarrowerThanTheLeastThatCounts_hits() {
    mill.frontGap = Dimension.of(-40 * MM);
    Standing standing = standing(0, Y, 0, "base bolts");
    Settings wide = Settings.DEFAULTS.toBuilder().leastOpening(94 * MM).build();
    Settings wider = Settings.DEFAULTS.toBuilder().leastOpening(94 * MM + 1).build();

    assertEquals(Says.LIMITED, StandingPairing.solve(wide, standing).says());
    assertEquals(Says.HITS, StandingPairing.solve(wider, standing).says());
  }

  /** The jaws open 100 wide to y = −80; the spindle reaches down to −50. */
  @Test
  void solve_workAreaOutOfReach_theLargestShortfallWithinTheTolerance() {
    assertEquals(OptionalLong.of(30 * MM), at(-30 * MM, Y, 0).reachShortfall());
    assertEquals(OptionalLong.of(31 * MM), at(-30 * MM, Y, MM).reachShortfall());
  }

  @Test
  void move_fromWhereItStands_leadsToTheRecommendedPlace() {
    StandingOutcome there = at(X, Y, 0);
    Recommendation to = there.pairing().outcome().recommended().orElseThrow();

    assertEquals(
        Optional.of(new StandingOutcome.Move(to.x() - X, to.y() - Y, to.handleTo())), there.move());
  }

  @Test
  void move_withinTheToleranceOfTheRecommendedPlace_isEmpty() {
    Recommendation to = at(X, Y, 0).pairing().outcome().recommended().orElseThrow();
    vise.turns.removeIf(turn -> turn != to.handleTo());

    assertEquals(Optional.empty(), moveFrom(to, 0, 0));
    assertEquals(Optional.empty(), moveFrom(to, 2, 2));
    assertEquals(Optional.of(new StandingOutcome.Move(-3, 0, to.handleTo())), moveFrom(to, 3, 2));
  }

  @Test
  void solve_blankGap_hitsAtWorstAndNamesIt() {
    mill.rearGap = Dimension.BLANK;

    StandingOutcome unknown = at(0, Y, 0);

    assertEquals(Says.HITS, unknown.says());
    assertEquals(OptionalLong.empty(), unknown.margin());
    assertEquals(List.of(Column.REAR_GAP), unknown.open());
    assertEquals(Optional.empty(), unknown.move());

    mill.rightGap = Dimension.of(0);
    assertEquals(List.of(), at(X, Y, 0).open());
  }

  @Test
  void caveats_nothingListed_areThoseOfAPlacement() {
    mill.rightGap = Dimension.NONE;
    StandingOutcome free = at(0, Y, 0);
    assertEquals(Says.FITS, free.says());
    assertEquals(Optional.empty(), free.limit());
    assertTrue(free.placed().orElseThrow().caveats().contains(Caveat.NOTHING_LISTED));
  }

  /** A handle 40 to the side of the screw; a hand wants 25 mm round it, the clearance is 6 mm. */
  @Test
  void placed_handleWithLessRoomThanAHandWants_isAwkward() {
    vise.handleRadius = Dimension.of(40 * MM);
    vise.handleDepth = Dimension.of(20 * MM);
    vise.screwHeight = Dimension.of(50 * MM);
    vise.screwDiameter = Dimension.of(20 * MM);
    vise.baseWidth = Dimension.of(80 * MM);
    vise.jawWidth = 80 * MM;
    mill.rightGap = Dimension.of(0);
    // The table loads at its right end, where that guard is near.
    mill.loadX = OptionalLong.of(-200 * MM);

    assertEquals(Verdict.AWKWARD, there(300 * MM - 40 * MM - 25 * MM + 1).verdict());
    assertEquals(Verdict.FITS, there(300 * MM - 40 * MM - 25 * MM).verdict());
    assertEquals(Verdict.NO_PLACE, there(300 * MM - 40 * MM - 6 * MM + 1).verdict());
  }

  private Outcome there(long x) {
    TapedPlace place = TapedPlace.of(mill.build(), vise.build(), Orientation.FRONT, x, Y);
    Standing standing = new Standing(mill.build(), vise.build(), place, "base bolts", within(0));
    return solve(standing).placed().orElseThrow();
  }

  private Optional<StandingOutcome.Move> moveFrom(Recommendation to, long off, long tolerance) {
    TapedPlace place =
        TapedPlace.of(mill.build(), vise.build(), to.handleTo(), to.x() + off, to.y());
    return solve(new Standing(mill.build(), vise.build(), place, to.mount(), within(tolerance)))
        .move();
  }

  private StandingOutcome at(long x, long y, long tolerance) {
    return solve(standing(x, y, tolerance, "base bolts"));
  }

  private static StandingOutcome solve(Standing standing) {
    return StandingPairing.solve(Settings.DEFAULTS, standing);
  }

  /** From the edges of table and base, worked by hand. */
  private Standing standing(long x, long y, long tolerance, String mount) {
    TapedPlace place = new TapedPlace(Orientation.FRONT, x + 200 * MM, y + 150 * MM);
    return new Standing(mill.build(), vise.build(), place, mount, within(tolerance));
  }

  private static Provenance within(long tolerance) {
    return new Provenance(tolerance, false, "", "");
  }

  private static MachineDraft mill() {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 600 * MM;
    draft.tableWidth = 300 * MM;
    draft.travelX = 400 * MM;
    draft.travelY = 100 * MM;
    draft.slotWidth = Dimension.of(14 * MM);
    draft.slotPitch = Dimension.of(100 * MM);
    draft.rightGap = Dimension.of(50 * MM);
    return draft;
  }

  private static ViseDraft vise() {
    ViseDraft draft = new ViseDraft();
    draft.jawWidth = 150 * MM;
    draft.jawHeight = 40 * MM;
    draft.bedHeight = 60 * MM;
    draft.openingMax = 100 * MM;
    draft.baseWidth = Dimension.of(200 * MM);
    draft.rearReach = Dimension.of(60 * MM);
    draft.frontReach = Dimension.of(110 * MM);
    draft.fixedJaw = Dimension.of(30 * MM);
    draft.movingJaw = Dimension.of(30 * MM);
    draft.boltSpacing = Dimension.of(60 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(14 * MM);
    draft.holeV = Dimension.of(14 * MM);
    return draft;
  }
}
