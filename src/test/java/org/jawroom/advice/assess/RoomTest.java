package org.jawroom.advice.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.advice.blank.Relation;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.Standard;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Room worked by hand. Table 600 × 300, travel 400 × 300, clearance 6, hand room 25, tolerance 1;
 * door 80 and rear cover 50 beyond the table's edges, left guard 70, right guard 90. The tallest
 * vise has its jaws' top at 100 and no handle.
 */
class RoomTest {
  private final MachineDraft mill = Standard.mill();
  private final ViseDraft vise = Standard.vise();

  @BeforeEach
  void millAndVise() {
    mill.frontGap = Dimension.of(mm(80));
    mill.rearGap = Dimension.of(mm(50));
    mill.leftGap = Dimension.of(mm(70));
    mill.rightGap = Dimension.of(mm(90));
    mill.turns = EnumSet.of(Orientation.FRONT, Orientation.REAR, Orientation.RIGHT);
    mill.tolerance = mm(1);
  }

  @Test
  void rooms_gapsAllRound_areTableAndGapsLessClearanceAndTolerance() {
    List<Room> rooms = search().rooms(List.of(mm(200)), List.of(mm(300)));

    assertEquals(
        List.of(List.of(Orientation.FRONT, Orientation.REAR), List.of(Orientation.RIGHT)),
        rooms.stream().map(Room::turns).toList());
    // Along y 300 + 80 + 50 − 2 × 6 − 2 × 1 = 416; along x 600 + 70 + 90 − 2 × 6 − 2 × 1 = 746.
    assertEquals(List.of(atMost(200, 416)), rooms.get(0).longest());
    assertEquals(List.of(atMost(300, 746)), rooms.get(0).widest());
    assertEquals(List.of(atMost(200, 746)), rooms.get(1).longest());
    assertEquals(List.of(atMost(300, 416)), rooms.get(1).widest());
    assertEquals(List.of(), search().blanks());
  }

  @Test
  void rooms_otherSideTooLong_areNever() {
    List<Room> rooms = search().rooms(List.of(mm(747)), List.of(mm(417)));

    assertEquals(List.of(never(747)), rooms.get(0).longest());
    assertEquals(List.of(never(417)), rooms.get(0).widest());
    assertEquals(List.of(atMost(746, 416)), rooms(search(), 746));
  }

  @Test
  void rooms_rearGapBlank_areAtBestAndWithItAsZero() {
    mill.rearGap = Dimension.BLANK;
    // At best only the centre must lie over the table: from the rear edge at 150 to the door at
    // −230 is 380, less 6 and 1, twice. With the gap as 0: 300 + 80 + 0 − 12 − 2.
    assertEquals(List.of(atMost(200, 746)), rooms(search(), 200));
    assertEquals(List.of(atMost(200, 366)), rooms(search().atLeast(), 200));
    assertEquals(List.of(Column.REAR_GAP), search().blanks());
  }

  @Test
  void rooms_rearGapWithinBounds_areAtBestAndAtItsLeast() {
    mill.rearGap = Dimension.within(mm(20), mm(60));
    // 300 + 80 + 60 − 2 × 6 − 2 × 1 at best, 20 in place of 60 at least.
    assertEquals(List.of(atMost(200, 426)), rooms(search(), 200));
    assertEquals(List.of(atMost(200, 386)), rooms(search().atLeast(), 200));
    mill.rearGap = Dimension.within(-Length.ENDLESS, -mm(5));
    assertEquals(List.of(atMost(200, 361)), rooms(search().atLeast(), 200));
  }

  @Test
  void rooms_nothingAround_areAlways() {
    mill.frontGap = Dimension.NONE;
    mill.rearGap = Dimension.NONE;
    assertEquals(
        List.of(new RoomLimit(mm(200), Relation.ALWAYS, OptionalLong.empty())),
        rooms(search(), 200));
  }

  @Test
  void rooms_tableStandsStill_leaveHandRoomToTheRear() {
    mill.tableMoves = Axes.NONE;
    mill.loadY = OptionalLong.of(0);
    // While loading the door is open, but the rear cover stands where it does while cutting; 25 is
    // required there, not 6.
    assertEquals(List.of(atMost(200, 300 + 80 + 50 - 6 - 25 - 2)), rooms(search(), 200));
  }

  @Test
  void rooms_guardAboveTheTallestVise_isNotInTheWay() {
    // From 126 up, 100 of height, 25 for a hand and 1 of tolerance pass under it; lower, they do
    // not.
    mill.guards.add(arm(mm(126)));
    assertEquals(List.of(atMost(200, 416)), rooms(search(), 200));
    mill.guards.set(0, arm(mm(126) - mm(1) / 10));
    assertEquals(List.of(never(200)), rooms(search(), 200));
  }

  @Test
  void rooms_noSlotTakesABolt_areNone() {
    mill.slotWidth = Dimension.of(mm(4));
    assertEquals(List.of(), search().rooms(List.of(mm(200)), List.of(mm(200))));
  }

  /** Over the whole table, from a height upward. */
  private static Guard arm(long from) {
    return Guards.box(
        "arm",
        "other",
        Axes.NONE,
        When.ALWAYS,
        new Box(Interval.ALL, Interval.ALL, new Interval(from, Length.ENDLESS)));
  }

  private static List<RoomLimit> rooms(RoomSearch search, long width) {
    return search.rooms(List.of(mm(width)), List.of()).get(0).longest();
  }

  private RoomSearch search() {
    return new RoomSearch(Settings.DEFAULTS, mill.build(), ViseSize.of(vise.build()).orElseThrow());
  }

  private static RoomLimit never(long given) {
    return new RoomLimit(mm(given), Relation.NEVER, OptionalLong.empty());
  }

  private static RoomLimit atMost(long given, long most) {
    return new RoomLimit(mm(given), Relation.AT_MOST, OptionalLong.of(mm(most)));
  }

  private static long mm(long millimetres) {
    return millimetres * Length.MM;
  }
}
