package org.jawroom.clearance.guard;

import static org.jawroom.geometry.Length.ENDLESS;
import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.junit.jupiter.api.Test;

class GuardSweepTest {
  private static final Axes FRAME = Axes.NONE;
  private static final Axes SADDLE = new Axes(false, true, false);
  private static final Axes HEAD = new Axes(false, false, true);

  @Test
  void sweep_asymmetricTravel_comesNearestAtTheSpindlesGreatestY() {
    // Axis letters and directions after ISO 841: the tool moves over the table, so commanding Y =
    // +200 moves a table 200 toward the operator. Worked example: handle tip at table y = −150, Y
    // from −100 to +300, door face at machine y = −520: the closest approach is 70, at Y = +300;
    // with the sign wrong, 270.
    MachineDraft draft = draft();
    draft.travelY = 400 * MM;
    draft.spindleY = 100 * MM;
    // At mid-travel (Y = 100) the door stands at table y = −520 + 100.
    Guard door =
        box(FRAME, When.ALWAYS, Interval.ALL, Interval.of(-ENDLESS, -420 * MM), Interval.ALL);
    long handleTip = -150 * MM;

    assertEquals(70 * MM, handleTip - sweptY(draft.build(), door, Situation.CUTTING).hi());

    draft.loadY = OptionalLong.of(300 * MM);
    assertEquals(70 * MM, handleTip - sweptY(draft.build(), door, Situation.LOADING).hi());
    draft.loadY = OptionalLong.of(-100 * MM);
    assertEquals(470 * MM, handleTip - sweptY(draft.build(), door, Situation.LOADING).hi());
  }

  @Test
  void sweep_tapedGaps_standAtTheirGapFromTheTablesEdge() {
    MachineDraft draft = draft();
    draft.frontGap = Dimension.of(70 * MM);
    draft.rearGap = Dimension.of(-12 * MM);
    draft.leftGap = Dimension.of(5 * MM);
    draft.rightGap = Dimension.of(6 * MM);
    for (Axes moves : List.of(new Axes(true, true, false), Axes.NONE)) {
      draft.tableMoves = moves;
      List<SweptGuard> swept = guards(draft.build());

      assertEquals(-(150 + 70) * MM, find(swept, "door", Situation.CUTTING).box().y().hi());
      assertEquals((150 - 12) * MM, find(swept, "rear cover", Situation.CUTTING).box().y().lo());
      assertEquals(-(400 + 5) * MM, find(swept, "left guard", Situation.CUTTING).box().x().hi());
      assertEquals((400 + 6) * MM, find(swept, "right guard", Situation.CUTTING).box().x().lo());
    }
  }

  @Test
  void sweep_loadingAtTheFrontEnd_leavesTheRearCoverATravelFartherOff() {
    MachineDraft draft = draft();
    draft.rearGap = Dimension.of(10 * MM);
    draft.frontGap = Dimension.of(10 * MM);
    List<SweptGuard> swept = guards(draft.build());

    assertEquals(
        (150 + 10 + 200) * MM, find(swept, "rear cover", Situation.LOADING).box().y().lo());
    // The door is open.
    assertEquals(
        0,
        swept.stream()
            .filter(g -> g.name().equals("door") && g.situation() == Situation.LOADING)
            .count());
  }

  @Test
  void sweep_carriedByWhatCarriesTheTableToo_standsStillOnThatAxis() {
    Machine machine = draft().build();
    Interval x = Interval.of(0, 10 * MM);
    Interval y = Interval.of(0, 20 * MM);

    Box saddle = box(machine, box(SADDLE, When.ALWAYS, x, y, Interval.ALL), Situation.CUTTING);
    assertEquals(Interval.of(-150 * MM, 160 * MM), saddle.x());
    assertEquals(y, saddle.y());

    Box table =
        box(machine, box(machine.tableMoves(), When.ALWAYS, x, y, Interval.ALL), Situation.CUTTING);
    assertEquals(x, table.x());
    assertEquals(y, table.y());
  }

  @Test
  void sweep_sideGuardCarriedByTheSaddle_keepsItsGapAndItsEndsAlongTheEdge() {
    Guard guard =
        Guards.beside(
            "cover",
            "",
            SADDLE,
            When.ALWAYS,
            Side.REAR,
            Dimension.of(30 * MM),
            new Box(Interval.of(-50 * MM, 50 * MM), Interval.ALL, Interval.of(0, ENDLESS)));

    Box swept = box(draft().build(), guard, Situation.CUTTING);

    assertEquals((150 + 30) * MM, swept.y().lo());
    assertEquals(Interval.of(-200 * MM, 200 * MM), swept.x());
  }

  @Test
  void sweep_kneeMill_measuresTheFramesGuardsFromTheNose() {
    MachineDraft draft = draft();
    draft.tableMoves = new Axes(true, true, true);
    draft.noseMin = Dimension.of(100 * MM);
    draft.noseMax = Dimension.of(500 * MM);
    Guard guard =
        box(
            FRAME,
            When.ALWAYS,
            Interval.of(0, MM),
            Interval.of(0, MM),
            Interval.of(-5 * MM, ENDLESS));

    assertEquals(495 * MM, box(draft.build(), guard, Situation.LOADING).z().lo());
  }

  @Test
  void sweep_headWhileCutting_goesDownUntilTheShortestToolTouchesTheBed() {
    MachineDraft draft = draft();
    draft.noseMin = Dimension.of(100 * MM);
    draft.noseMax = Dimension.of(500 * MM);
    draft.guards.add(box(HEAD, When.ALWAYS, Interval.ALL, Interval.ALL, Interval.of(0, ENDLESS)));
    Machine machine = draft.build();

    assertEquals(Optional.empty(), lowestHead(machine, OptionalLong.empty(), 80));
    assertEquals(Optional.of(100 * MM), lowestHead(machine, OptionalLong.of(20 * MM), 79));
    assertEquals(Optional.of(100 * MM), lowestHead(machine, OptionalLong.of(20 * MM), 80));
    assertEquals(Optional.of(101 * MM), lowestHead(machine, OptionalLong.of(20 * MM), 81));
    // Too short to clear the vise at all: the nose is taken to stand at its highest.
    assertEquals(Optional.of(500 * MM), lowestHead(machine, OptionalLong.of(430 * MM), 71));
  }

  @Test
  void of_blanks_leaveOutWhatNeedsThemAndNameThem() {
    MachineDraft draft = draft();
    draft.rearGap = Dimension.BLANK;
    draft.noseMax = Dimension.of(500 * MM);
    draft.guards.add(box(HEAD, When.ALWAYS, Interval.ALL, Interval.ALL, Interval.of(0, ENDLESS)));
    Blanks blanks = new Blanks();

    List<SweptGuard> swept =
        MachineGuards.of(settings(OptionalLong.of(MM)), draft.build(), Setup.PLAIN, 80 * MM, blanks)
            .swept();

    assertEquals("[REAR_GAP, NOSE_MIN]", blanks.columns().toString());
    // A blank nose_min removes the head from the cutting situation only.
    assertEquals(
        List.of(Situation.LOADING),
        swept.stream().filter(g -> g.name().equals("guard")).map(SweptGuard::situation).toList());
    assertEquals(0, swept.stream().filter(g -> g.name().equals("rear cover")).count());
  }

  @Test
  void table_withLedges_isWidenedBelowItsTop() {
    MachineDraft draft = draft();
    draft.ledges = new Sides<>(1 * MM, 2 * MM, 3 * MM, 4 * MM);

    Box table = find(guards(draft.build()), "table", Situation.LOADING).box();

    assertEquals(Interval.of(-403 * MM, 404 * MM), table.x());
    assertEquals(Interval.of(-151 * MM, 152 * MM), table.y());
    assertEquals(Interval.of(-Length.ENDLESS, 0), table.z());
  }

  /**
   * Stops shorten the travel where the table stands toward that side, the spindle at the opposite
   * end.
   */
  @Test
  void sweep_travelCut_leavesOutThatEndWhileCuttingOnly() {
    Guard post = box(FRAME, When.ALWAYS, Interval.of(0, 0), Interval.of(0, 0), Interval.ALL);
    for (Side side : Side.values()) {
      GuardSweep sweep =
          new GuardSweep(draft().build(), post, Setup.stopped(side, 30 * MM).stops());
      assertEquals(
          new Rectangle(
              Interval.of(
                  (side == Side.RIGHT ? -120 : -150) * MM, (side == Side.LEFT ? 120 : 150) * MM),
              Interval.of(
                  (side == Side.REAR ? -70 : -100) * MM, (side == Side.FRONT ? 70 : 100) * MM)),
          sweep.plan(Situation.CUTTING));
      assertEquals(Interval.of(100 * MM, 100 * MM), sweep.plan(Situation.LOADING).y());
    }
  }

  @Test
  void of_blankGapOfAGuardThatGoesWithTheNose_namesTheNoseTooWhereItCounts() {
    assertEquals("[NOSE_MIN, NOSE_MAX, GUARD_GAP]", missingFor(HEAD, When.ALWAYS, 5 * MM));
    assertEquals("[NOSE_MIN, NOSE_MAX, GUARD_GAP]", missingFor(HEAD, When.CUTTING, 5 * MM));
    assertEquals("[NOSE_MAX, GUARD_GAP]", missingFor(HEAD, When.LOADING, 5 * MM));
    // A guard that fills every height, or does not follow the nose, needs no nose.
    assertEquals("[GUARD_GAP]", missingFor(HEAD, When.ALWAYS, -ENDLESS));
    assertEquals("[GUARD_GAP]", missingFor(FRAME, When.ALWAYS, 5 * MM));
  }

  private static String missingFor(Axes carriedBy, When when, long zMin) {
    MachineDraft draft = draft();
    draft.guards.add(
        Guards.beside(
            "cover",
            "",
            carriedBy,
            when,
            Side.REAR,
            Dimension.BLANK,
            new Box(Interval.ALL, Interval.ALL, Interval.of(zMin, ENDLESS))));
    Blanks blanks = new Blanks();
    MachineGuards.of(settings(OptionalLong.of(MM)), draft.build(), Setup.PLAIN, 80 * MM, blanks);
    return blanks.columns().toString();
  }

  @Test
  void stances_ofGuards_standAtMidTravelAndSayWhatGoesWithTheNose() {
    MachineDraft draft = draft();
    draft.noseMax = Dimension.of(500 * MM);
    draft.rearGap = Dimension.of(10 * MM);
    Interval side = Interval.of(0, MM);
    Interval z = Interval.of(-5 * MM, ENDLESS);
    draft.guards.add(box(HEAD, When.LOADING, side, side, z));

    List<GuardStance> stances = GuardStance.all(Settings.DEFAULTS, draft.build(), 80 * MM);

    GuardStance cover = stances.get(0);
    assertEquals("rear cover", cover.swept().name());
    assertEquals((150 + 10 + 100) * MM, cover.middle().y().lo());
    assertEquals(new Axes(true, true, false), cover.swept().moves());
    assertEquals(Optional.empty(), cover.fromNose());
    GuardStance head = stances.get(2);
    assertEquals(new Rectangle(side, side), head.middle());
    assertEquals(Optional.of(z), head.fromNose());
    GuardStance table = stances.get(3);
    assertEquals(true, table.swept().table());
    assertEquals(Axes.NONE, table.swept().moves());
    assertEquals(Optional.empty(), table.fromNose());
  }

  private static Optional<Long> lowestHead(Machine machine, OptionalLong shortestTool, long bedMm) {
    return MachineGuards.of(settings(shortestTool), machine, Setup.PLAIN, bedMm * MM, new Blanks())
        .swept()
        .stream()
        .filter(guard -> guard.name().equals("guard") && guard.situation() == Situation.CUTTING)
        .map(guard -> guard.box().z().lo())
        .findFirst();
  }

  private static Settings settings(OptionalLong shortestTool) {
    SettingsDraft draft = SettingsDraft.of(Settings.DEFAULTS);
    draft.shortestTool = shortestTool;
    return draft.build();
  }

  private static List<SweptGuard> guards(Machine machine) {
    return MachineGuards.of(Settings.DEFAULTS, machine, Setup.PLAIN, 80 * MM, new Blanks()).swept();
  }

  private static SweptGuard find(List<SweptGuard> guards, String name, Situation situation) {
    return guards.stream()
        .filter(guard -> guard.name().equals(name) && guard.situation() == situation)
        .findFirst()
        .orElseThrow();
  }

  private static Interval sweptY(Machine machine, Guard guard, Situation situation) {
    return box(machine, guard, situation).y();
  }

  private static Box box(Machine machine, Guard guard, Situation situation) {
    NoseHeights heights = new NoseHeights(Settings.DEFAULTS, machine, 0, new Blanks());
    return new GuardSweep(machine, guard, Setup.PLAIN.stops())
        .box(situation, heights)
        .orElseThrow();
  }

  private static Guard box(Axes carriedBy, When when, Interval x, Interval y, Interval z) {
    return Guards.box("guard", "", carriedBy, when, new Box(x, y, z));
  }

  /** Table 800 × 300, travel 300 × 200, table carried by x and y. */
  private static MachineDraft draft() {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 800 * MM;
    draft.tableWidth = 300 * MM;
    draft.travelX = 300 * MM;
    draft.travelY = 200 * MM;
    return draft;
  }
}
