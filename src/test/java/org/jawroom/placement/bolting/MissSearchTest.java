package org.jawroom.placement.bolting;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.Standard;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Miss.Cause;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.junit.jupiter.api.Test;

/** Slots 14 wide, which take M12 (DIN 508), at y = −100, 0 and 100, each 600 long. */
class MissSearchTest {
  private final MachineDraft machine = Standard.mill();
  private final ViseDraft vise = new ViseDraft();
  private Settings settings = Settings.builder().smallerThreads(false).build();

  MissSearchTest() {
    machine.turns = EnumSet.of(Orientation.RIGHT);
    vise.boltSpacing = Dimension.NONE;
    vise.baseWidth = mm(100);
    vise.rearReach = mm(50);
    vise.frontReach = mm(50);
    vise.openingMax = 50 * MM;
  }

  @Test
  void across_belowAtAndAbove_lacksWhatIsOverAtTheLastBolt() {
    // Turned right, v runs along y: bolts at 10 and beyond, holes of 18, so ± 3 each. Either bolt
    // could count as the miss; it is reported for the second, with the first in its slot.
    assertEquals(List.of(), found(bolt(0, 10, 18, 18), bolt(0, 215, 18, 18)));
    assertEquals(List.of(), found(bolt(0, 10, 18, 18), bolt(0, 216, 18, 18)));
    assertEquals(
        List.of(new Miss(Orientation.RIGHT, "own", Cause.ACROSS_SLOTS, "rear", MM)),
        found(bolt(0, 10, 18, 18), bolt(0, 217, 18, 18)));
  }

  @Test
  void across_slotsUnevenlySpaced_holdOneWayRoundOnly() {
    machine.slotPositions = List.of(50 * MM, 130 * MM, 250 * MM);
    assertEquals(List.of(), found(bolt(0, 10, 12, 12), bolt(0, 90, 12, 12), bolt(0, 210, 12, 12)));
    // The other way round, the middle one stands 40 from either neighbouring slot.
    assertEquals(
        List.of(new Miss(Orientation.RIGHT, "own", Cause.ACROSS_SLOTS, "rear", 40 * MM)),
        found(bolt(0, 10, 12, 12), bolt(0, 130, 12, 12), bolt(0, 210, 12, 12)));
  }

  @Test
  void along_belowAtAndAbove_lacksWhatIsOver() {
    // Slots of 600; half a nut, 12, stays within at either end, and each hole leaves 3.
    assertEquals(List.of(), found(bolt(10, 0, 18, 18), bolt(592, 0, 18, 18)));
    assertEquals(
        List.of(new Miss(Orientation.RIGHT, "own", Cause.ALONG_SLOTS, "left", MM)),
        found(bolt(10, 0, 18, 18), bolt(593, 0, 18, 18)));
  }

  @Test
  void hole_belowAtAndAboveTheBolt_namesWhichIsTooSmall() {
    assertEquals(List.of(), found(bolt(0, 10, 12, 12), bolt(0, 210, 12, 12)));
    assertHole("front", 1, bolt(0, 10, 11, 12), bolt(0, 210, 12, 12));
    assertHole("rear", 2, bolt(0, 10, 12, 12), bolt(0, 210, 12, 10));
    assertHole("left", 1, bolt(30, 10, 12, 11), bolt(240, 210, 12, 12));
    assertHole("right", 1, bolt(30, 10, 12, 12), bolt(240, 210, 12, 11));
    assertHole("right", 1, bolt(-240, 10, 12, 12), bolt(-30, 210, 12, 11));
    assertHole("rear", 1, bolt(0, -210, 12, 12), bolt(0, -10, 12, 11));
    assertHole("only", 3, bolt(0, 0, 9, 12));
  }

  @Test
  void hole_asFarApartEitherWay_isGivenAlongX() {
    assertHole("left", 1, bolt(0, 10, 12, 11), bolt(200, 210, 12, 12));
  }

  @Test
  void hole_inTheMiddle_countsAsRightOrRear() {
    assertHole("right", 1, bolt(10, 0, 12, 12), bolt(20, 0, 12, 11), bolt(30, 0, 12, 12));
    assertHole("rear", 1, bolt(0, 10, 12, 12), bolt(0, 20, 12, 11), bolt(0, 30, 12, 12));
  }

  @Test
  void hole_withSmallerThreads_isTooSmallBelowTheSecondSmaller() {
    settings = Settings.DEFAULTS;
    // The slot of 14 takes M12; after DIN 508 the next smaller are M10 and M8.
    assertEquals(List.of(), found(bolt(0, 0, 12, 12)));
    assertEquals(List.of(), found(bolt(0, 0, 8, 12)));
    assertHole("only", 1, bolt(0, 0, 7, 12));
  }

  @Test
  void clamps_ofATableBelowAtAndAboveTheirWidth_miss() {
    // Base 100 × 100, straps of 60 beside it: 220 across; turned right, that lies along y.
    List<Miss> none = List.of();
    Miss miss = new Miss(Orientation.RIGHT, "clamps", Cause.NO_ROOM_FOR_CLAMPS, "", 0);
    machine.slotCount = 2;
    machine.slotPositions = List.of(30 * MM, 190 * MM);
    machine.tableWidth = 220 * MM;
    assertEquals(none, strapped());
    machine.tableWidth = 219 * MM;
    assertEquals(List.of(miss), strapped());
    machine.tableWidth = 221 * MM;
    assertEquals(none, strapped());
    // A strap wants its slot 12 inside its edges, so from 12 to 48 off the table's.
    machine.tableWidth = 220 * MM;
    machine.slotPositions = List.of(12 * MM, 208 * MM);
    assertEquals(none, strapped());
    machine.slotPositions = List.of(11 * MM, 208 * MM);
    assertEquals(List.of(miss), strapped());
    machine.slotPositions = List.of(12 * MM, 209 * MM);
    assertEquals(List.of(miss), strapped());
  }

  private List<Miss> strapped() {
    return new MissSearch(
            PreparedMachine.of(settings, machine.build(), Setup.PLAIN),
            vise.build().toBuilder().strapFlange(true).mounts(List.of()).build())
        .misses().stream().filter(miss -> miss.turn() == Orientation.RIGHT).toList();
  }

  private void assertHole(String where, long shortBy, Bolt... bolts) {
    assertEquals(
        List.of(new Miss(Orientation.RIGHT, "own", Cause.HOLE_TOO_SMALL, where, shortBy * MM)),
        found(bolts));
  }

  @Test
  void overhang_belowAtAndAbove_isFound() {
    // The base is 650 along y (its u is along x turned right): 175 over each edge of 300.
    vise.baseWidth = mm(650);
    settings = withOverhang(176);
    assertEquals(List.of(), found(bolt(0, 0, 18, 18)));
    settings = withOverhang(175);
    assertEquals(List.of(), found(bolt(0, 0, 18, 18)));
    settings = withOverhang(174);
    assertEquals(
        List.of(new Miss(Orientation.RIGHT, "own", Cause.OVERHANG, "", 0)),
        found(bolt(0, 0, 18, 18)));
  }

  @Test
  void slots_noneOrTooNarrow_areFound() {
    List<Miss> none = List.of(new Miss(Orientation.RIGHT, "own", Cause.NO_SLOT, "", 0));
    machine.slotWidth = mm(4);
    assertEquals(none, found(bolt(0, 0, 18, 18)));
    machine.slotWidth = Dimension.BLANK;
    machine.slotCount = 0;
    assertEquals(none, found(bolt(0, 0, 18, 18)));
  }

  @Test
  void blank_thatTheMountNeeds_leavesItOut() {
    Bolt bolt = bolt(0, 0, 9, 9);
    assertEquals(1, found(bolt).size());
    assertEquals(List.of(), found(new Bolt(Dimension.BLANK, bolt.v(), bolt.holeU(), bolt.holeV())));
    assertEquals(List.of(), found(new Bolt(bolt.u(), Dimension.BLANK, bolt.holeU(), bolt.holeV())));
    assertEquals(List.of(), found(new Bolt(bolt.u(), bolt.v(), Dimension.BLANK, bolt.holeV())));
    assertEquals(List.of(), found(new Bolt(bolt.u(), bolt.v(), bolt.holeU(), Dimension.BLANK)));
    machine.slotPitch = Dimension.BLANK;
    assertEquals(List.of(), found(bolt));
    machine.slotPitch = mm(100);
    machine.slotWidth = Dimension.BLANK;
    assertEquals(List.of(), found(bolt));
  }

  @Test
  void turns_notAllowed_comeLast() {
    vise.turns = EnumSet.of(Orientation.RIGHT, Orientation.REAR);

    List<Miss> misses = found(bolt(0, 0, 9, 9));

    assertEquals(
        List.of(
            new Miss(Orientation.RIGHT, "own", Cause.HOLE_TOO_SMALL, "only", 3 * MM),
            new Miss(Orientation.FRONT, "own", Cause.TURN_NOT_ALLOWED, "", 0),
            new Miss(Orientation.REAR, "own", Cause.TURN_NOT_ALLOWED, "", 0),
            new Miss(Orientation.LEFT, "own", Cause.TURN_NOT_ALLOWED, "", 0)),
        misses);
  }

  @Test
  void mounts_none_isGivenForEveryTurn() {
    assertEquals(
        List.of(Orientation.values()),
        new MissSearch(PreparedMachine.of(settings, machine.build(), Setup.PLAIN), vise.build())
            .misses().stream()
                .filter(miss -> miss.cause() == Cause.NO_BOLTS)
                .map(Miss::turn)
                .toList());
  }

  /** The misses of the allowed turns, and of the others if the vise allows two. */
  private List<Miss> found(Bolt... bolts) {
    vise.mounts.clear();
    vise.mounts.add(new Mount("own", true, List.of(bolts)));
    boolean all = vise.turns.size() < Orientation.values().length;
    return new MissSearch(PreparedMachine.of(settings, machine.build(), Setup.PLAIN), vise.build())
        .misses().stream().filter(miss -> all || miss.cause() != Cause.TURN_NOT_ALLOWED).toList();
  }

  private static Settings withOverhang(long most) {
    SettingsDraft draft = SettingsDraft.of(Settings.DEFAULTS);
    draft.maxOverhang = OptionalLong.of(most * MM);
    return draft.build();
  }

  private static Bolt bolt(long u, long v, long holeU, long holeV) {
    return new Bolt(mm(u), mm(v), mm(holeU), mm(holeV));
  }

  private static Dimension mm(long length) {
    return Dimension.of(length * MM);
  }
}
