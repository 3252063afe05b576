package org.jawroom.placement.set;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Sets worked by hand. A table without travel along x, whose left and right guards stand at its
 * edges: of its length L a vise 100 wide and one 60 wide take 6 of clearance at either end, 6 of
 * spacing between them, and their widths: 178 in all.
 */
class SetPairingTest {
  private static final long NEEDED = (6 + 100 + 6 + 60 + 6) * MM;

  static MachineDraft table(long length) {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = length;
    draft.tableWidth = 300 * MM;
    draft.travelX = 0;
    draft.travelY = 20 * MM;
    draft.slotCount = 1;
    draft.slotWidth = Dimension.of(14 * MM);
    draft.leftGap = Dimension.of(0);
    draft.rightGap = Dimension.of(0);
    return draft;
  }

  static ViseDraft vise(String name, long width) {
    ViseDraft draft = new ViseDraft();
    draft.name = name;
    draft.turns = EnumSet.of(Orientation.FRONT);
    draft.jawWidth = 40 * MM;
    draft.jawHeight = 20 * MM;
    draft.bedHeight = 30 * MM;
    draft.openingMax = 40 * MM;
    draft.baseWidth = Dimension.of(width);
    draft.rearReach = Dimension.of(30 * MM);
    draft.frontReach = Dimension.of(70 * MM);
    draft.fixedJaw = Dimension.of(10 * MM);
    draft.movingJaw = Dimension.of(10 * MM);
    draft.boltSpacing = Dimension.of(20 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(14 * MM);
    draft.holeV = Dimension.of(14 * MM);
    return draft;
  }

  private static SetOutcome solve(MachineDraft machine, Vise... vises) {
    List<ViseSet.Member> members =
        List.of(vises).stream().map(vise -> new ViseSet.Member(vise, 1)).toList();
    return SetPairing.solve(
        Settings.DEFAULTS, machine.build(), new ViseSet("set", members, List.of()));
  }

  private static SetOutcome both(long length) {
    return solve(table(length), vise("wide", 100 * MM).build(), vise("narrow", 60 * MM).build());
  }

  @Test
  void table_belowAtAndAboveWhatBothNeed_isTooShortThenLongEnough() {
    SetOutcome below = both(NEEDED - 2);
    assertEquals(SetOutcome.Fits.NO, below.fits());
    assertEquals(SetOutcome.Hindrance.Kind.SIDE_BY_SIDE, below.hindrances().get(0).kind());
    SetOutcome at = both(NEEDED);
    assertEquals(SetOutcome.Fits.YES, at.fits());
    assertEquals(OptionalLong.of(0), at.least());
    assertEquals(-NEEDED / 2 + 56 * MM, at.stands().get(0).place().x());
    assertEquals(NEEDED / 2 - 36 * MM, at.stands().get(1).place().x());
    assertEquals(OptionalLong.of(6 * MM), at.stands().get(0).nextGap());
    SetOutcome above = both(NEEDED + 2);
    assertEquals(OptionalLong.of(0), above.least());
    // Three equal shares: two margins and a gap.
    assertEquals(OptionalLong.of(10 * MM), both(NEEDED + 30 * MM).least());
  }

  @Test
  void order_ofEquallyGoodRows_isThatOfTheTable() {
    assertEquals(List.of("wide", "narrow"), names(both(NEEDED + 30 * MM)));
    assertEquals(
        List.of("narrow", "wide"),
        names(
            solve(
                table(NEEDED + 30 * MM),
                vise("narrow", 60 * MM).build(),
                vise("wide", 100 * MM).build())));
  }

  /** A handle swings 70 either way of its axis, over 140: 20 more than the base at each side. */
  @Test
  void handles_ofTwoNeighbours_mayOverlap_butNotABody() {
    ViseDraft with = vise("with", 100 * MM);
    with.screwHeight = Dimension.of(20 * MM);
    with.screwDiameter = Dimension.of(10 * MM);
    with.handleRadius = Dimension.of(70 * MM);
    with.handleDepth = Dimension.of(20 * MM);
    ViseDraft other = vise("other", 100 * MM);
    other.screwHeight = with.screwHeight;
    other.screwDiameter = with.screwDiameter;
    other.handleRadius = with.handleRadius;
    other.handleDepth = with.handleDepth;
    // Ends: 6 + 70 from the axis each; between the axes a handle and a body: 70 + 6 + 50.
    long needed = (6 + 70 + 70 + 6 + 50 + 70 + 6) * MM;
    assertEquals(SetOutcome.Fits.NO, solve(table(needed - 2), with.build(), other.build()).fits());
    assertEquals(OptionalLong.of(0), solve(table(needed), with.build(), other.build()).least());
  }

  /** In the middle of the table, the handle has what is left of the half beside its 70. */
  @Test
  void handle_belowAtAndAboveHandRoom_isAwkwardThenFits() {
    ViseDraft with = vise("with", 100 * MM);
    with.screwHeight = Dimension.of(40 * MM);
    with.screwDiameter = Dimension.of(10 * MM);
    with.handleRadius = Dimension.of(70 * MM);
    with.handleDepth = Dimension.of(20 * MM);
    long needed = 2 * (70 * MM + Settings.DEFAULTS.handRoom());
    assertEquals(Verdict.AWKWARD, placed(solve(table(needed - 2), with.build())));
    assertEquals(Verdict.FITS, placed(solve(table(needed), with.build())));
    assertEquals(Verdict.FITS, placed(solve(table(needed + 2), with.build())));
  }

  private static Verdict placed(SetOutcome outcome) {
    assertEquals(SetOutcome.Fits.YES, outcome.fits());
    return outcome.stands().get(0).placed().verdict();
  }

  @Test
  void slotsAlongY_rowGoesFromFrontToBack() {
    MachineDraft machine = table(300 * MM);
    machine.slotDirection = Axis.Y;
    machine.tableWidth = 400 * MM;
    machine.travelY = 0;
    machine.frontGap = Dimension.of(0);
    machine.rearGap = Dimension.of(0);
    SetOutcome found = solve(machine, toTheRight("wide", 100 * MM), toTheRight("narrow", 60 * MM));
    assertEquals(SetOutcome.Fits.YES, found.fits());
    assertEquals(
        -1, Long.signum(found.stands().get(0).place().y() - found.stands().get(1).place().y()));
  }

  @Test
  void blankReading_leavesItUnknown_unlessNothingHelps() {
    ViseDraft open = vise("open", 100 * MM);
    open.baseWidth = Dimension.BLANK;
    assertEquals(
        SetOutcome.Fits.UNKNOWN,
        solve(table(NEEDED), open.build(), vise("narrow", 60 * MM).build()).fits());
    // At its best the base is left out. The nuts of its bolts, 20 apart and each held to be 26
    // across (13 either way of its axis), take 46, the jaws 40: 6 + 46 + 6 + 60 + 6.
    assertEquals(
        SetOutcome.Fits.NO,
        solve(table(124 * MM - 2), open.build(), vise("narrow", 60 * MM).build()).fits());
    assertEquals(
        SetOutcome.Fits.UNKNOWN,
        solve(table(124 * MM), open.build(), vise("narrow", 60 * MM).build()).fits());
  }

  private static Vise toTheRight(String name, long width) {
    ViseDraft draft = vise(name, width);
    draft.turns = EnumSet.of(Orientation.RIGHT);
    return draft.build();
  }

  private static List<String> names(SetOutcome outcome) {
    return outcome.stands().stream().map(stand -> stand.vise().name()).toList();
  }
}
