package org.jawroom.plausibility;

import static org.jawroom.plausibility.Sound.box;
import static org.jawroom.plausibility.Sound.downFrom;
import static org.jawroom.plausibility.Sound.half;
import static org.jawroom.plausibility.Sound.mm;
import static org.jawroom.plausibility.Sound.span;
import static org.jawroom.plausibility.Sound.taped;
import static org.jawroom.plausibility.Sound.upFrom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.GuardDraft;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;

class WarningsTest {
  private static final Axes HEAD = new Axes(false, false, true);
  private static final Axes KNEE = new Axes(true, true, true);

  private final MachineDraft machine = Sound.mill();
  private final ViseDraft vise = Sound.vise();
  private Settings settings = Settings.DEFAULTS;

  private List<String> lines() {
    Shop shop = new Shop(settings, List.of(machine.build()), List.of(vise.build()), List.of());
    return Warnings.of(shop).stream().map(Warning::line).toList();
  }

  private void guards(Guard... rows) {
    machine.guards.clear();
    machine.guards.addAll(List.of(rows));
  }

  private void handle(Dimension radius, Dimension depth, boolean on, boolean fullSwing) {
    vise.handleRadius = radius;
    vise.handleDepth = depth;
    vise.handleOn = on;
    vise.fullSwing = fullSwing;
  }

  private void assertLine(String line) {
    assertEquals(List.of(line), lines());
  }

  @Test
  void shop_withNothingOdd_hasNoWarning() {
    assertEquals(List.of(), lines());
  }

  @Test
  void slotWidth_offTheSeries_isNamed() {
    machine.slotWidth = mm(17);
    assertLine(
        "machines, mill, slot_width: 17 mm (0.669 in) is in no published series (ISO 299, ASME"
            + " B5.1M). Measure the slot's throat at the table top, not the bolt; if that is what"
            + " it is, leave it");
  }

  /** T-nuts for these throats are sold, though no series has them; common practice, no source. */
  @Test
  void slotWidth_forWhichNutsAreCommon_isAccepted() {
    for (double width : new double[] {15.875, 16, 16.2, 20, 27}) {
      machine.slotWidth = mm(width);
      assertEquals(List.of(), lines(), () -> "throat " + width);
    }
  }

  @Test
  void slotPitch_inNoSeries_isNamed() {
    for (Dimension width : List.of(mm(14), mm(17.4625))) {
      machine.slotWidth = width;
      machine.slotPitch = mm(90);
      assertLine(
          "machines, mill, slot_pitch: 90 mm (3.543 in) is not in the published series (BS 2485),"
              + " nor a whole number of quarter inches. Measure from one edge of a slot to the same"
              + " edge of the next; if that is what it is, leave it");
    }
  }

  /** Pitches of BS 2485, as reprinted; whole quarters of an inch are common practice, no source. */
  @Test
  void slotPitch_ofASeries_isAcceptedForEveryWidth() {
    for (double pitch : new double[] {40, 63, 125, 63.5, 82.55, 57.15, 76.2, 82.6}) {
      machine.slotPitch = mm(pitch);
      assertEquals(List.of(), lines(), () -> "pitch " + pitch);
    }
  }

  @Test
  void slotWidth_blank_leavesThePitchJudged() {
    machine.slotWidth = Dimension.BLANK;
    machine.slotPitch = mm(90);
    assertEquals(2, lines().size(), () -> lines().toString());
  }

  @Test
  void rearGap_noneWhereNobodyLookedForAColumn_isDoubted() {
    machine.rearGap = Dimension.NONE;
    assertEquals(List.of(), lines());
    machine.lookedFor = List.of("head", "tool changer", "nozzle", "sill", "cover");
    assertEquals(
        "machines, mill, rear_gap: none, though the table moves in y: is there really no column or"
            + " cover behind it? Tape the gap with the table all the way back",
        lines().get(0));
  }

  @Test
  void rearGap_noneWhereTheTableStandsStill_isAccepted() {
    machine.tableMoves = Axes.NONE;
    machine.rearGap = Dimension.NONE;
    assertEquals(List.of(), lines());
  }

  @Test
  void lookedFor_withKindsLeftOut_namesThem() {
    machine.lookedFor = List.of("head", "sill", "cover", "column");
    assertLine(
        "machines, mill, looked_for: does not name tool changer, nozzle. Look for each, give what"
            + " could be hit a row in guards, then name it here");
  }

  @Test
  void tolerance_takenAs0_isNamedForMachineAndVise() {
    machine.tolerance = 0;
    machine.assumedExact = true;
    vise.tolerance = 0;
    vise.assumedExact = true;
    String rest =
        "tolerance: and source are blank, so every number counts as exact. Give what it was"
            + " measured with, or how far it may be off";
    assertEquals(List.of("machines, mill, " + rest, "vises, vise, " + rest), lines());
  }

  @Test
  void guard_reachingIntoTheTable_isNamed() {
    guards(
        box("arm", "other", new Axes(false, true, false), span(-50, 50), upFrom(199), upFrom(-1)),
        box("clear above", "other", Axes.NONE, span(-50, 50), upFrom(199), Interval.ALL));
    assertEquals(
        List.of(
            "guards, mill / arm, z_min: it stands in the table with the axes at mid-travel. Check"
                + " the sign and from where it was measured",
            "guards, mill / clear above, z_min: it stands in the table with the axes at mid-travel."
                + " Check the sign and from where it was measured"),
        lines());
  }

  @Test
  void guard_touchingTheTableTopOrEdge_isAccepted() {
    guards(
        box("on top", "other", new Axes(true, true, false), span(-50, 50), upFrom(0), upFrom(0)),
        box("behind", "other", Axes.NONE, span(-50, 50), upFrom(200), Interval.ALL));
    assertEquals(List.of(), lines());
  }

  @Test
  void head_thatGoesBelowTheTableTopAtTheLowestNose_isNamed() {
    guards(box("head", "head", HEAD, span(-90, 90), upFrom(-100), upFrom(-100)));
    assertEquals(List.of(), lines());
    guards(box("head", "head", HEAD, span(-90, 90), upFrom(-100), upFrom(-101)));
    assertLine(
        "guards, mill / head, z_min: it stands in the table with the axes at mid-travel. Check the"
            + " sign and from where it was measured");
  }

  @Test
  void gap_soNegativeThatItStandsInTheTable_isNamed() {
    machine.rearGap = mm(-200);
    assertEquals(List.of(), lines());
    machine.rearGap = mm(-201);
    assertLine(
        "machines, mill, rear_gap: is so far below 0 that it stands in the table with the axes at"
            + " mid-travel. Check the sign and from where it was measured");
  }

  @Test
  void tapedGuard_soNegativeThatItStandsInTheTable_isNamed() {
    guards(taped("cover", "cover", Side.LEFT, mm(-301), Interval.ALL));
    assertLine(
        "guards, mill / cover, gap: it stands in the table with the axes at mid-travel. Check the"
            + " sign and from where it was measured");
  }

  /** Travel is 600 × 400, so that a guard that moves stands half of that farther off mid-way. */
  @Test
  void tapedGuard_onEachSide_belowAndAtTheEdgeOfTheTable() {
    Axes withTable = new Axes(true, true, false);
    for (Side side : Side.values()) {
      double half = side == Side.LEFT || side == Side.RIGHT ? 300 : 200;
      assertEquals(0, standingIn(side, Axes.NONE, -half), side.word());
      assertEquals(1, standingIn(side, Axes.NONE, -half - 0.001), side.word());
      assertEquals(0, standingIn(side, withTable, 0), side.word());
      assertEquals(1, standingIn(side, withTable, -0.001), side.word());
    }
  }

  private int standingIn(Side side, Axes carriedBy, double gap) {
    GuardDraft rail = GuardDraft.of(taped("rail", "other", side, mm(gap), Interval.ALL));
    rail.carriedBy = carriedBy;
    guards(rail.build());
    return lines().size();
  }

  @Test
  void tapedGuard_besideTheTable_doesNotStandInIt() {
    Box beside = new Box(upFrom(450), Interval.ALL, Interval.ALL);
    Guard rail = taped("rail", "other", Side.REAR, mm(-300), Interval.ALL);
    guards(rail.withLimits(beside));
    assertEquals(List.of(), lines());
    guards(rail.withLimits(new Box(upFrom(449.999), Interval.ALL, Interval.ALL)));
    assertEquals(1, lines().size());
  }

  @Test
  void heights_whereNothingMovesAlongZ_askForTheKnee() {
    Guard sill = taped("sill", "sill", Side.FRONT, mm(40), downFrom(-25));
    guards(sill);
    assertLine(
        "machines, mill, table_moves: without z, so the heights of sill count from a table top that"
            + " stays at one height, and no guard moves with the head. Does the table or the knee"
            + " go up and down here? Then table_moves needs z, and they must be measured from the"
            + " spindle nose. If it is the head, give it a row with carried_by head");
    Guard head = box("head", "head", HEAD, span(-90, 90), upFrom(210), upFrom(0));
    guards(sill, head);
    assertEquals(List.of(), lines());
  }

  /** The nose stands at least 100 above the table. */
  @Test
  void height_onAKneeAsFarAboveTheNoseAsTheNoseAboveTheTable_isDoubted() {
    machine.tableMoves = KNEE;
    guards(
        taped("sill", "sill", Side.FRONT, mm(40), downFrom(-625)),
        box("head", "head", Axes.NONE, span(-90, 90), upFrom(210), upFrom(99.999)));
    assertEquals(List.of(), lines());
    guards(box("head", "head", Axes.NONE, span(-90, 90), upFrom(210), upFrom(100)));
    assertLine(
        "guards, mill / head, z_min: 100 mm (3.937 in) above the spindle nose, from which heights"
            + " count where the table goes up and down. Was it measured from the table top?");
  }

  @Test
  void head_thatNeverMovesUpOrDown_asksForTheKnee() {
    guards(box("ram", "Head", Axes.NONE, span(-90, 90), upFrom(210), Interval.ALL));
    assertLine(
        "guards, mill / ram, carried_by: a head that never moves up or down against the table. Does"
            + " the table or the knee go up and down here? If it is the head, write carried_by"
            + " head; if the knee, table_moves needs z");
  }

  @Test
  void handle_hangingDown_asksForLedges() {
    handle(mm(46), mm(40), false, true);
    machine.ledges = new Sides<>(0L, half(10), 0L, half(10));
    assertLine(
        "machines, mill, front_ledge: front_ledge is 0, though the handle or a part of vise hangs"
            + " below the table top there. Measure what sticks out of the table's side: rails,"
            + " scales, feed boxes; if nothing does, leave it");
  }

  @Test
  void handle_hangingDownWithASillAndLedges_isAccepted() {
    handle(mm(46), mm(40), true, false);
    guards(taped("apron", "sill", Side.FRONT, mm(40), Interval.ALL));
    assertEquals(List.of(), lines());
  }

  @Test
  void handle_thatJustReachesTheTableTop_doesNotHang() {
    handle(mm(45), mm(40), true, true);
    machine.ledges = new Sides<>(0L, 0L, 0L, 0L);
    assertEquals(List.of(), lines());
  }

  @Test
  void part_hangingDown_asksForLedgesOnTheSidesItCanTurnTo() {
    vise.parts.add(
        new VisePart(
            "chute",
            When.ALWAYS,
            span(0, 10),
            span(0, 10),
            span(0, 10),
            span(-1, 10),
            OptionalLong.empty()));
    vise.turns = EnumSet.of(Orientation.LEFT, Orientation.RIGHT);
    machine.ledges = new Sides<>(0L, 0L, 0L, 0L);
    assertLine(
        "machines, mill, right_ledge: right_ledge, left_ledge are 0, though the handle or a part of"
            + " vise hangs below the table top there. Measure what sticks out of the table's side:"
            + " rails, scales, feed boxes; if nothing does, leave it");
  }

  @Test
  void bolts_outsideTheBase_areNamed() {
    vise.boltSpacing = mm(200);
    assertEquals(List.of(), lines());
    vise.boltSpacing = mm(200.002);
    assertLine(
        "vises, vise, base_width: the bolts of base bolts stand outside base_width. Measure it over"
            + " flange, ears or swivel plate, whichever reaches farthest");
  }

  @Test
  void bolts_beyondAnEndOfTheBase_areNamed() {
    vise.boltU = mm(-60.001);
    assertLine(
        "vises, vise, front_reach: the bolts of base bolts stand outside front_reach or rear_reach."
            + " Measure it over flange, ears or swivel plate, whichever reaches farthest");
  }

  @Test
  void jawThickness_equalToJawWidth_isDoubted() {
    vise.fixedJaw = mm(150);
    assertLine(
        "vises, vise, fixed_jaw_thickness: 150 mm (5.906 in), the same as jaw_width: is it a"
            + " brochure's jaw length? Measure from the jaw's face to its back");
  }

  @Test
  void turns_toTheRearOnBothSides_isNamedForTheVise() {
    vise.turns = EnumSet.allOf(Orientation.class);
    assertLine(
        "vises, vise, turns: allows the handle to the rear, and so does a machine. If nobody can"
            + " work it from there, name in turns the sides from which somebody can");
    machine.turns = EnumSet.of(Orientation.FRONT, Orientation.LEFT);
    assertEquals(List.of(), lines());
  }

  @Test
  void size_inAnotherUnit_isDoubted() {
    vise.jawWidth = half(6);
    machine.tableLength = half(22_860);
    assertEquals(
        List.of(
            "machines, mill, table_length: 22860 mm (900 in) looks like the wrong unit, being over"
                + " 20000 mm. Check the row's unit",
            "vises, vise, jaw_width: 6 mm (0.236 in) looks like the wrong unit, being under 20 mm."
                + " Check the row's unit"),
        lines());
  }

  @Test
  void size_atTheEndsOfTheBelievable_isAccepted() {
    vise.jawWidth = half(20);
    machine.tableLength = half(20_000);
    assertEquals(List.of(), lines());
    vise.jawWidth = half(1_000);
    machine.tableLength = half(900);
    assertEquals(List.of(), lines());
  }

  @Test
  void blanks_ofAMachine_sayWhatStaysUnknown() {
    machine.rearGap = Dimension.BLANK;
    machine.leftGap = Dimension.BLANK;
    assertLine(
        "machines, mill, rear_gap: rear_gap, left_gap open (blank or a range): every pairing on"
            + " this machine stays unknown until it is measured, unless all its values give the"
            + " same verdict");
  }

  @Test
  void noseMax_blankUnderAHead_decides() {
    guards(box("head", "head", HEAD, span(-90, 90), upFrom(-100), upFrom(0)));
    machine.noseMax = Dimension.BLANK;
    assertLine(
        "machines, mill, nose_max: nose_max open (blank or a range): every pairing on this machine"
            + " stays unknown until it is measured, unless all its values give the same verdict");
  }

  @Test
  void noseMin_blankUnderAHead_decidesOnlyWithAShortestTool() {
    guards(box("head", "head", HEAD, span(-90, 90), upFrom(-100), upFrom(0)));
    machine.noseMin = Dimension.BLANK;
    assertLine(
        "machines, mill, nose_min: nose_min blank: no verdict needs it, but how low the nose may"
            + " come is not computed");
    SettingsDraft draft = SettingsDraft.of(Settings.DEFAULTS);
    draft.shortestTool = OptionalLong.of(half(100));
    settings = draft.build();
    assertLine(
        "machines, mill, nose_min: nose_min open (blank or a range): every pairing on this machine"
            + " stays unknown until it is measured, unless all its values give the same verdict");
  }

  @Test
  void gap_blankOfAGuard_saysWhatStaysUnknown() {
    guards(taped("cover", "cover", Side.REAR, Dimension.BLANK, Interval.ALL));
    assertLine(
        "guards, mill / cover, gap: gap open (blank or a range): every pairing on this machine"
            + " stays unknown until it is measured, unless all its values give the same verdict");
  }

  @Test
  void blanks_ofAVise_sayWhatStaysUnknown() {
    vise.rearClosed = Dimension.BLANK;
    vise.rearOpen = Dimension.BLANK;
    vise.holeU = Dimension.BLANK;
    vise.holeV = Dimension.BLANK;
    assertLine(
        "vises, vise, rear_projection_closed: rear_projection_closed, rear_projection_open,"
            + " bolt_hole_u, bolt_hole_v open (blank or a range): every pairing of this vise stays"
            + " unknown until it is measured, unless all its values give the same verdict");
  }

  @Test
  void screwColumns_blankWhereNoScrewAndNoHandleNeedThem_makeNothingUnknown() {
    vise.screwDiameter = Dimension.BLANK;
    vise.screwHeight = Dimension.BLANK;
    vise.rearClosed = Dimension.NONE;
    vise.rearOpen = Dimension.NONE;
    vise.frontClosed = Dimension.NONE;
    vise.frontOpen = Dimension.NONE;
    handle(Dimension.NONE, Dimension.BLANK, false, false);
    assertEquals(List.of(), lines());
    handle(mm(40), mm(40), false, true);
    assertLine(
        "vises, vise, screw_height: screw_height open (blank or a range): every pairing of this"
            + " vise stays unknown until it is measured, unless all its values give the same"
            + " verdict");
  }

  @Test
  void overhang_ofMoreThanAQuarterWherever_isNamed() {
    vise.rearReach = mm(0);
    vise.frontReach = mm(300);
    vise.boltU = mm(0);
    machine.tableWidth = half(130);
    machine.slotCount = 1;
    // The bolts may stand 10 off the slot at y = 0, so that the base ends at −290, 225 past the
    // edge.
    assertLine(
        "vises, vise, bolt_u: more than a quarter of its base hangs over the table's edge wherever"
            + " it is bolted on any machine, at least 225 mm (8.858 in), on mill. Check bolt_u, the"
            + " reaches and the slots");
  }

  @Test
  void overhang_ofAQuarter_isAccepted() {
    // Bolts at the base's middle, 10 of play; 300 long over 130: 85 on either side, 75 is a
    // quarter.
    vise.rearReach = mm(150);
    vise.frontReach = mm(150);
    vise.boltU = mm(0);
    machine.slotCount = 1;
    machine.tableWidth = half(150);
    assertEquals(List.of(), lines());
    machine.tableWidth = half(149.999);
    assertEquals(1, lines().size());
  }

  @Test
  void standing_belowAtAndAboveTheQuantity_isNamedAbove() {
    Vise two = vise.build().toBuilder().quantity(2).build();
    for (int count : new int[] {1, 2, 3}) {
      Standing standing =
          new Standing(
              machine.build(),
              two,
              new TapedPlace(Orientation.FRONT, 0, 0),
              "base bolts",
              new Provenance(0, true, "", ""));
      Shop shop =
          new Shop(
              settings,
              List.of(machine.build()),
              List.of(two),
              List.of(),
              List.of(),
              Collections.nCopies(count, standing),
              List.of());
      assertEquals(
          count < 3
              ? List.of()
              : List.of(
                  "standing, vise, vise: 3 stand on the machines, but its quantity is 2; set one of"
                      + " them right"),
          Warnings.of(shop).stream().map(Warning::line).toList());
    }
  }

  @Test
  void set_belowAtAndAboveTheQuantity_isNamedAbove() {
    Vise two = vise.build().toBuilder().quantity(2).build();
    for (int count : new int[] {1, 2, 3}) {
      ViseSet set = new ViseSet("pair", List.of(new ViseSet.Member(two, count)), List.of());
      Shop shop =
          new Shop(
              settings,
              List.of(machine.build()),
              List.of(two),
              List.of(),
              List.of(),
              List.of(),
              List.of(set));
      assertEquals(
          count < 3
              ? List.of()
              : List.of(
                  "sets, pair, count: 3 of vise, but its quantity is 2; set that right, or buy the"
                      + " rest"),
          Warnings.of(shop).stream().map(Warning::line).toList());
    }
  }

  /** Square and turned it is the same iron. */
  @Test
  void quantity_ofAViseSquareAndTurned_countsBoth() {
    Vise square = vise.build().toBuilder().quantity(1).build();
    Vise turned =
        square.turned(new Swivel(square.name(), BigDecimal.valueOf(30), 40, OptionalLong.empty()));
    List<Vise> both = List.of(square, turned);
    Shop shop =
        new Shop(
            settings,
            List.of(machine.build()),
            both,
            List.of(),
            List.of(),
            both.stream()
                .map(
                    one ->
                        new Standing(
                            machine.build(),
                            one,
                            new TapedPlace(Orientation.FRONT, 0, 0),
                            "base bolts",
                            new Provenance(0, true, "", "")))
                .toList(),
            List.of(
                new ViseSet(
                    "pair",
                    both.stream().map(one -> new ViseSet.Member(one, 1)).toList(),
                    List.of())));
    assertEquals(
        List.of(
            "sets, pair, count: 2 of vise, but its quantity is 1; set that right, or buy the rest",
            "standing, vise, vise: 2 stand on the machines, but its quantity is 1; set one of them"
                + " right"),
        Warnings.of(shop).stream().map(Warning::line).sorted().toList());
  }
}
