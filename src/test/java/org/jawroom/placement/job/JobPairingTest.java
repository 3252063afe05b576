package org.jawroom.placement.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.JobDraft;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.Standard;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Jobs worked by hand on one mill and one vise, everything at, above and below its limit.
 *
 * <p>Table 600 × 300, reach ± 200 × ± 150, door 80 before the table's edge at its nearest, so at y
 * = −230; slots at y = −100, 0, 100. The vise, its handle to the front, reaches 220 to the front;
 * its bolts hold with its fixed jaw's face at −50 … −10, 50 … 90 and 150 … 190. Its bed is 60, its
 * jaws' top 100 above the table. With the face at y, door to screw front leaves y − 220 + 230, less
 * 6 of clearance: y + 4.
 */
class JobPairingTest {
  private final MachineDraft mill = Standard.mill();
  private final ViseDraft vise = Standard.vise();
  private final JobDraft job = new JobDraft();
  private OptionalLong shortestTool = OptionalLong.empty();
  private long loadRoom = mm(2);
  private boolean straps;

  @BeforeEach
  void millAndVise() {
    mill.frontGap = Dimension.of(mm(80));
    mill.noseMin = Dimension.of(mm(100));
    mill.noseMax = Dimension.of(mm(500));
    mill.maxLoad = Optional.of(BigDecimal.valueOf(300));
    vise.turns = EnumSet.of(Orientation.FRONT);
    vise.frontClosed = Dimension.of(mm(20));
    vise.frontOpen = Dimension.of(mm(20));
    vise.screwHeight = Dimension.of(mm(40));
    vise.screwDiameter = Dimension.of(mm(24));
    vise.boltGrip = OptionalLong.of(mm(20));
    vise.mass = Optional.of(BigDecimal.valueOf(32));
    job.length = mm(100);
    job.width = mm(50);
    job.height = mm(40);
    job.mass = Optional.of(BigDecimal.valueOf(5));
    job.tool = Dimension.of(mm(120));
  }

  /**
   * The part, 50 before the face, is within the reach with the face up to 150. The rearmost face
   * from which the vise can be tapped 2 either way with its bolts in the same slots is 88.
   */
  @Test
  void solve_roomForAll_heldWhereTheMarginIsLargestWithinReach() {
    JobOutcome outcome = solve();

    assertEquals(JobVerdict.HELD, outcome.verdict());
    Recommendation place = outcome.place().orElseThrow();
    assertEquals(Orientation.FRONT, place.handleTo());
    assertEquals(new Place(0, mm(88)), new Place(place.x(), place.y()));
    assertEquals(OptionalLong.of(mm(92)), outcome.margin());
    assertEquals(Interval.of(mm(50), mm(60)), place.openings());
    assertEquals(Interval.of(mm(60), mm(100)), outcome.partHeights());
    assertEquals(OptionalLong.of(mm(500 - 60 - 40 - 120)), outcome.toolRoom());
    assertEquals(Optional.of(BigDecimal.valueOf(300 - 32 - 5)), outcome.loadRoom());
    assertEquals(List.of(), outcome.shortfalls());
  }

  @Test
  void solve_openingsNearTheMost_endAtTheMost() {
    job.width = mm(145);
    assertEquals(Interval.of(mm(145), mm(150)), solve().place().orElseThrow().openings());
    job.width = mm(148);
    assertEquals(Interval.of(mm(148), mm(150)), solve().place().orElseThrow().openings());
  }

  /** The jaws open beyond the part by jaw_play 10 or, if that is more, by load_room. */
  @Test
  void solve_openings_endBeyondThePartByTheLargerOfPlayAndLoadRoom() {
    loadRoom = mm(10);
    assertEquals(Interval.of(mm(50), mm(60)), solve().place().orElseThrow().openings());
    loadRoom = mm(15);
    assertEquals(Interval.of(mm(50), mm(65)), solve().place().orElseThrow().openings());
  }

  @Test
  void solve_jawsOpenByJustTheLoadRoomBeyondThePart_heldAndNoLess() {
    job.width = mm(148);
    assertEquals("", failing());
    job.width = mm(148) + Length.NANOMETRE;
    assertEquals("too wide by 0.000001", failing());
    job.width = mm(150);
    assertEquals("too wide by 2.0", failing());
    loadRoom = 0;
    assertEquals("", failing());
    job.width = mm(10);
    assertEquals("", failing());
    job.width = mm(9);
    assertEquals("too narrow by 1.0", failing());
  }

  @Test
  void solve_gripAsDeepAsTheJaws_heldAndNoDeeper() {
    job.grip = OptionalLong.of(mm(40));
    assertEquals(Interval.of(mm(60), mm(100)), solve().partHeights());
    assertEquals("", failing());
    job.grip = OptionalLong.of(mm(41));
    assertEquals("grip by 1.0", failing());
  }

  @Test
  void solve_grip_liftsThePart() {
    job.grip = OptionalLong.of(mm(8));

    JobOutcome outcome = solve();

    assertEquals(Interval.of(mm(92), mm(132)), outcome.partHeights());
    assertEquals(OptionalLong.of(mm(500 - 132 - 120)), outcome.toolRoom());
  }

  /** The stack: nose 500, bed 60, part 40 and tool 394 leave 6, the required clearance. */
  @Test
  void solve_toolClearsByJustTheClearance_heldAndNoLonger() {
    job.tool = Dimension.of(mm(394));
    assertEquals("", failing());
    assertEquals(OptionalLong.of(mm(6)), solve().toolRoom());
    job.tool = Dimension.of(mm(394) + Length.NANOMETRE);
    assertEquals("long tool by 0.000001", failing());
    job.tool = Dimension.of(mm(450));
    assertEquals("long tool by 56.0", failing());
    assertEquals(OptionalLong.of(mm(-50)), solve().toolRoom());
  }

  /** Lowest nose at 100, part's top at 70: a tool of 30 just touches it. */
  @Test
  void solve_shortestToolJustTouchesTheTop_heldAndNoShorter() {
    job.height = mm(10);
    shortestTool = OptionalLong.of(mm(30));
    assertEquals("", failing());
    shortestTool = OptionalLong.of(mm(29));
    assertEquals("short tool by 1.0", failing());
  }

  @Test
  void solve_justTheLoad_heldAndNoMore() {
    job.mass = Optional.of(new BigDecimal("268"));
    assertEquals("", failing());
    job.mass = Optional.of(new BigDecimal("268.0001"));
    assertEquals("load by 0.0001 kg", failing());
  }

  @Test
  void solve_machineNotNamed_notHeld() {
    job.machines = List.of("another", "mill");
    assertEquals("", failing());
    job.machines = List.of("another");
    assertEquals("machine", failing());
    assertTrue(solve().place().isEmpty());
  }

  /** With the handle to the front the jaws run along x. */
  @Test
  void solve_jawsAlongX_handleToFrontOrRear() {
    job.jawsAlong = Optional.of(Axis.X);
    assertEquals("", failing());
    job.jawsAlong = Optional.of(Axis.Y);
    assertEquals("turn", failing());
  }

  @Test
  void solve_jawsAlongY_handleToTheRight() {
    vise.turns = EnumSet.of(Orientation.FRONT, Orientation.RIGHT);
    vise.boltU = Dimension.of(mm(0));
    vise.boltSpacing = Dimension.of(mm(0));
    job.jawsAlong = Optional.of(Axis.Y);

    assertEquals(Orientation.RIGHT, solve().place().orElseThrow().handleTo());
  }

  @Test
  void solve_holesPassNoThreadOfTwoStepsDown_mount() {
    // A slot of 14 goes with M12; M10 and M8 are the next ones down.
    vise.holeU = Dimension.of(mm(8));
    assertEquals("", failing());
    vise.holeU = Dimension.of(mm(8) - Length.NANOMETRE);
    assertEquals("mount", failing());
  }

  /**
   * The reach cut to ± 60 about y = 110 leaves the part 50 to 170; the faces at 100 … 170 that this
   * asks for are there. About y = −110 it leaves −170 to −50: the faces at −120 … −50 touch the
   * bolts' at −50, where the margin is −46; the least that the part sticks out with margin ≥ 0 is
   * at 50.
   */
  @Test
  void solve_clearPlacesOutOfReach_reach() {
    mill.travelY = mm(120);
    // The door is taped at the end of travel that brings it nearest, whatever that end is.
    mill.spindleY = mm(110);
    assertEquals("", failing());
    mill.spindleY = mm(-110);
    assertEquals("reach by 100.0", failing());
    assertEquals(mm(50), solve().place().orElseThrow().y());
  }

  /** With the door moved inward, first nothing clear is within the reach, then nothing is clear. */
  @Test
  void solve_hitEverywhere_hitByTheBestMargin() {
    mill.frontGap = Dimension.of(mm(-90));
    // Door at y = −60: the screw keeps 6 from it with the face at 166, and so much of the part 16
    // past 150.
    assertEquals("reach by 16.0", failing());
    mill.frontGap = Dimension.of(mm(-130));
    // Door at −20: with the face at 190 the screw ends at −30, 10 into it, 16 with the clearance.
    assertEquals("hit by 16.0", failing());
  }

  /** Closed, the screw protrudes 200 behind the casting; at a part 50 wide or more, much less. */
  @Test
  void solve_closedScrewWouldHit_heldWithinTheOpeningsOfTheJob() {
    vise.frontClosed = Dimension.of(mm(420));
    vise.frontOpen = Dimension.of(mm(0));
    // 420 − 3·(s − 10) with the jaws s apart: 300 at 50. The face at 150 leaves 150 − 500 + 230 −
    // 6.
    assertEquals("hit by 86.0", failing());
    vise.frontClosed = Dimension.of(mm(210));
    // 210 − 1.5·40 = 150 at 50; the casting itself 200: 150 − 350 + 230 − 6 = 24. Closed: −36.
    assertEquals(OptionalLong.of(mm(24)), solve().margin());
  }

  /**
   * A post over the table between heights 130 and 140: the bare vise passes under it, the part does
   * not.
   */
  @Test
  void solve_partTallerThanTheVise_isHit() {
    mill.guards.add(
        box("beam", When.ALWAYS, Axes.NONE, Interval.ALL, Interval.of(mm(130), mm(140))));
    job.height = mm(64);
    assertEquals("", failing());
    assertEquals(OptionalLong.of(0), solve().margin());
    assertEquals(PartRole.WORK, solve().limit().orElseThrow().part().role());
    job.height = mm(65);
    assertEquals("hit by 1.0", failing());
    vise.tolerance = mm(1);
    job.height = mm(64);
    assertEquals("hit by 1.0", failing());
  }

  /** A head 20 above the nose: over a part that ends at 100 it must keep to 100 + 6 − 20. */
  @Test
  void solve_headWithoutShortestTool_reportedAsNoseAndStickOut() {
    mill.noseMin = Dimension.of(mm(30));
    Axes head = new Axes(false, false, true);
    mill.guards.add(box("head", When.CUTTING, head, Interval.ALL, Interval.of(mm(-20), mm(200))));
    job.height = mm(60);

    JobOutcome outcome = solve();

    assertEquals(OptionalLong.of(mm(120 + 6 + 20)), outcome.place().orElseThrow().noseNotBelow());
    assertEquals(OptionalLong.of(mm(26)), outcome.shortestStickOut());
  }

  @Test
  void solve_severalThingsFail_allAreListedInOrder() {
    job.width = mm(160);
    job.tool = Dimension.of(mm(500));
    job.mass = Optional.of(BigDecimal.valueOf(1000));
    job.machines = List.of("another");
    job.grip = OptionalLong.of(mm(50));
    vise.holeV = Dimension.of(mm(5));

    assertEquals(
        "machine, too wide by 12.0, grip by 10.0, mount, long tool by 106.0, load by 732 kg",
        failing());
  }

  @Test
  void solve_blanks_unknownForWhatDecidesThePlaceAlone() {
    job.mass = Optional.empty();
    job.tool = Dimension.BLANK;
    vise.mass = Optional.empty();
    mill.maxLoad = Optional.empty();
    mill.frontGap = Dimension.BLANK;
    mill.noseMin = Dimension.BLANK;

    JobOutcome outcome = solve();

    assertEquals(JobVerdict.UNKNOWN, outcome.verdict());
    assertEquals(List.of(Column.FRONT_GAP), outcome.missing());
    assertEquals(List.of(), outcome.unchecked());
    assertTrue(outcome.place().isEmpty() && outcome.toolRoom().isEmpty());
  }

  @Test
  void solve_noseMinBlank_countsOnlyWithAShortestTool() {
    mill.noseMin = Dimension.BLANK;
    assertEquals(JobVerdict.HELD, solve().verdict());
    shortestTool = OptionalLong.of(mm(60));
    assertHeldUnchecked(Unchecked.TOOL);
  }

  @Test
  void solve_toolLengthOrNoseMaxBlank_heldWithTheToolUnchecked() {
    job.tool = Dimension.BLANK;
    assertHeldUnchecked(Unchecked.TOOL);
    assertEquals(OptionalLong.empty(), solve().toolRoom());
    job.tool = Dimension.of(mm(120));
    mill.noseMax = Dimension.BLANK;
    assertHeldUnchecked(Unchecked.TOOL);
  }

  /** The long tool is unchecked, but the short one fails for certain. */
  @Test
  void solve_toolLengthBlankAndShortestToolTooShort_notHeld() {
    job.tool = Dimension.BLANK;
    job.height = mm(10);
    shortestTool = OptionalLong.of(mm(29));
    assertEquals("short tool by 1.0", failing());
    assertEquals(List.of(Unchecked.TOOL), solve().unchecked());
  }

  /** 100 × 50 × 40 are 0.2 dm³, 1.6 kg as a solid block of steel, beside a vise of 32 kg. */
  @Test
  void solve_massOfThePartBlank_checkedAsABlockOfSteel() {
    job.mass = Optional.empty();
    mill.maxLoad = Optional.of(new BigDecimal("33.6"));
    assertEquals(0, solve().loadRoom().orElseThrow().signum());
    assertHeldUnchecked();
    mill.maxLoad = Optional.of(new BigDecimal("33.5999"));
    assertHeldUnchecked(Unchecked.LOAD);
    assertEquals(Optional.empty(), solve().loadRoom());
    mill.maxLoad = Optional.of(new BigDecimal("32"));
    assertHeldUnchecked(Unchecked.LOAD);
    mill.maxLoad = Optional.of(new BigDecimal("31.9"));
    assertEquals("load by 0.1 kg", failing());
  }

  @Test
  void solve_massOfTheViseOrMaxLoadBlank_heldWithTheLoadUnchecked() {
    vise.mass = Optional.empty();
    assertHeldUnchecked(Unchecked.LOAD);
    job.mass = Optional.empty();
    assertHeldUnchecked(Unchecked.LOAD);
    vise.mass = Optional.of(BigDecimal.valueOf(32));
    mill.maxLoad = Optional.empty();
    assertHeldUnchecked(Unchecked.LOAD);
  }

  @Test
  void solve_partAloneHeavierThanTheTableCarries_notHeldWhateverTheViseWeighs() {
    vise.mass = Optional.empty();
    job.mass = Optional.of(BigDecimal.valueOf(300));
    assertHeldUnchecked(Unchecked.LOAD);
    job.mass = Optional.of(BigDecimal.valueOf(301));
    assertEquals("load by 1 kg", failing());
  }

  @Test
  void solve_everythingForToolAndLoadBlank_heldWithBothUnchecked() {
    job.tool = Dimension.BLANK;
    mill.maxLoad = Optional.empty();
    assertHeldUnchecked(Unchecked.TOOL, Unchecked.LOAD);
  }

  /**
   * A beam 10 above jaws, part and handle while loading: 6 are asked for, for the hand 25. The
   * pairing is awkward, and its job held.
   */
  @Test
  void solve_littleRoomForTheHand_heldAllTheSame() {
    vise.handleRadius = Dimension.of(mm(60));
    vise.handleDepth = Dimension.of(mm(20));
    mill.guards.add(
        box("beam", When.LOADING, Axes.NONE, Interval.ALL, Interval.of(mm(110), mm(140))));

    assertEquals(Verdict.AWKWARD, Pairing.solve(settings(), mill.build(), vise.build()).verdict());
    assertEquals("", failing());
    assertEquals(OptionalLong.of(mm(4)), solve().margin());
    assertEquals("beam", solve().limit().orElseThrow().guard().name());
  }

  /**
   * The bolts, 50 farther forward, hold with the face at 0 … 40, 100 … 140 and 200 … 240; straps,
   * with all of the base on the table, at 50 … 90. The part is within reach with the face 50 behind
   * its front end, up to its rear end. Bolts go before straps, even where the vise cannot be tapped
   * square; but a place out of reach holds no job.
   */
  @Test
  void solve_boltsOutOfReach_clamped() {
    straps = true;
    vise.boltU = Dimension.of(mm(120));
    mill.spindleY = mm(50);
    mill.travelY = mm(100);
    Recommendation bolted = solve().place().orElseThrow();
    assertEquals("base bolts", bolted.mount());
    assertEquals(new Place(0, mm(100)), new Place(bolted.x(), bolted.y()));
    assertFalse(bolted.settable());

    mill.travelY = mm(98);
    Recommendation clamped = solve().place().orElseThrow();
    assertEquals("", failing());
    assertEquals("clamps", clamped.mount());
    assertEquals(new Place(0, mm(88)), new Place(clamped.x(), clamped.y()));
    assertTrue(clamped.settable());
  }

  private void assertHeldUnchecked(Unchecked... unchecked) {
    JobOutcome outcome = solve();
    assertEquals(JobVerdict.HELD, outcome.verdict(), outcome.shortfalls().toString());
    assertEquals(List.of(unchecked), outcome.unchecked());
    assertEquals(List.of(), outcome.missing());
  }

  @Test
  void solve_blankButSomethingFailsAnyway_notHeldAndNothingMissing() {
    job.mass = Optional.empty();
    mill.frontGap = Dimension.BLANK;
    job.width = mm(160);
    assertEquals("too wide by 12.0", failing());
    assertEquals(List.of(), solve().missing());
  }

  /** Whatever the front gap is, the beam hits the part everywhere; by how much is unknown. */
  @Test
  void solve_blankButHitAnyway_notHeldWithoutAnAmount() {
    mill.frontGap = Dimension.BLANK;
    mill.guards.add(
        box("beam", When.ALWAYS, Axes.NONE, Interval.ALL, Interval.of(mm(90), mm(140))));
    assertEquals("hit", failing());
    assertTrue(solve().place().isEmpty() && solve().margin().isEmpty());
  }

  @Test
  void solve_blankButNothingInReachAnyway_reachWithoutAnAmount() {
    mill.rearGap = Dimension.BLANK;
    job.length = mm(401);
    assertEquals("reach", failing());
  }

  @Test
  void solve_bothJawsMove_partStandsAboutTheMiddle() {
    vise.both = true;
    vise.rearReach = Dimension.of(mm(110));
    mill.travelY = mm(50);
    mill.spindleY = mm(70);

    JobOutcome outcome = solve();

    // Only 70 puts 45 … 95 within the reach of 45 … 95.
    assertEquals("", failing());
    assertEquals(mm(70), outcome.place().orElseThrow().y());
  }

  @Test
  void explain_held_everyPairTightestFirst() {
    JobExplanation explanation =
        JobPairing.explain(settings(), mill.build(), vise.build(), job.build());

    assertEquals(solve(), explanation.outcome());
    assertEquals(explanation.outcome().limit().orElseThrow(), explanation.pairs().get(0));
    assertTrue(
        explanation.pairs().stream().anyMatch(limit -> limit.part().role() == PartRole.WORK));
  }

  private static Guard box(String name, When when, Axes carriedBy, Interval plan, Interval z) {
    return Guards.box(name, "other", carriedBy, when, new Box(plan, plan, z));
  }

  private JobOutcome solve() {
    Job made = job.build();
    Vise held = vise.build().toBuilder().strapFlange(straps).build();
    return JobPairing.solve(settings(), mill.build(), held, made);
  }

  private Settings settings() {
    SettingsDraft draft = SettingsDraft.of(Settings.DEFAULTS);
    draft.shortestTool = shortestTool;
    return draft.build().toBuilder().loadRoom(loadRoom).build();
  }

  private String failing() {
    return String.join(", ", solve().shortfalls().stream().map(JobPairingTest::words).toList());
  }

  private static String words(Shortfall shortfall) {
    String by =
        shortfall.by().isPresent()
            ? " by "
                + BigDecimal.valueOf(shortfall.by().getAsLong())
                    .divide(BigDecimal.valueOf(Length.MM))
                    .stripTrailingZeros()
                    .toPlainString()
            : "";
    by = by.contains(".") || by.isEmpty() ? by : by + ".0";
    return shortfall.reason().code()
        + by
        + shortfall.kilograms().map(kg -> " by " + kg.toPlainString() + " kg").orElse("");
  }

  private static long mm(long millimetres) {
    return millimetres * Length.MM;
  }
}
