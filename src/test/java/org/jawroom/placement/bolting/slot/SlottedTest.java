package org.jawroom.placement.bolting.slot;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.Standard;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.junit.jupiter.api.Test;

class SlottedTest {
  private static final long M12 = 12 * MM;

  @Test
  void places_boltsAlongOneSlot_holdAtEverySlotUpToItsEnds() {
    // Bolts 180 apart along x, holes 52 × 18: ± 20 across the slots, ± 3 along them.
    List<Rectangle> places = places(table(), pair(180, 70, 52, 18), Orientation.FRONT);

    // The front turn puts bolts at y − 70; slots at −100, 0, 100. Half a nut, 12, stays in the
    // slot.
    Interval x = Interval.of((-288 - 3 + 90) * MM, (288 + 3 - 90) * MM);
    assertEquals(
        List.of(
            new Rectangle(x, Interval.of((-30 - 20) * MM, (-30 + 20) * MM)),
            new Rectangle(x, Interval.of((70 - 20) * MM, (70 + 20) * MM)),
            new Rectangle(x, Interval.of((170 - 20) * MM, (170 + 20) * MM))),
        places);
  }

  @Test
  void places_boltsAcrossTheSlots_belowAtAndAboveTheirReach() {
    // Turned right the bolts stand spacing apart across slots 100 apart; holes of 18 leave ± 3
    // each.
    assertEquals(0, places(Orientation.RIGHT, 207).size());
    assertEquals(1, places(Orientation.RIGHT, 206).size());
    // At the limit both bolts stand at the ends of their holes: a single line.
    assertEquals(0, places(Orientation.RIGHT, 206).get(0).y().length());
    assertEquals(MM, places(Orientation.RIGHT, 205).get(0).y().length());
    assertEquals(0, places(Orientation.RIGHT, 194).get(0).y().length());
    assertEquals(0, places(Orientation.RIGHT, 193).size());
  }

  @Test
  void places_slotsAlongY_areTheSameTurnedAQuarter() {
    List<Rectangle> places = places(slotsAlongY(), pair(180, 70, 52, 18), Orientation.RIGHT);

    assertEquals(Interval.of((-288 - 3 + 90) * MM, (288 + 3 - 90) * MM), places.get(0).y());
    assertEquals(Interval.of((-170 - 20) * MM, (-170 + 20) * MM), places.get(0).x());
    assertEquals(3, places.size());
  }

  @Test
  void places_wideHoles_runTogetherFromSlotToSlot() {
    // ± 50 reaches half of the pitch: the three bands touch and are one.
    List<Rectangle> places = places(table(), pair(180, 0, 112, 18), Orientation.FRONT);

    assertEquals(
        List.of(Interval.of(-150 * MM, 150 * MM)), places.stream().map(Rectangle::y).toList());
  }

  @Test
  void places_shortSlots_endWhereTheyEnd() {
    MachineDraft draft = draft();
    draft.slotLength = OptionalLong.of(198 * MM);
    assertEquals(
        0, places(draft.build(), pair(180, 0, 52, 18), Orientation.FRONT).get(0).x().length());

    draft.slotLength = OptionalLong.of(198 * MM - 2);
    assertEquals(List.of(), places(draft.build(), pair(180, 0, 52, 18), Orientation.FRONT));
  }

  @Test
  void places_positionsOrFirst_countFromTheFrontEdge() {
    MachineDraft draft = draft();
    draft.slotPositions = List.of(45 * MM, 125 * MM, 205 * MM);
    assertEquals(List.of(-105L, -25L, 55L), middles(draft.build()));

    draft.slotPositions = List.of();
    draft.slotFirst = OptionalLong.of(40 * MM);
    assertEquals(List.of(-110L, -10L, 90L), middles(draft.build()));
  }

  @Test
  void slots_betweenTwo_takeTheNearerThenTheLower() {
    Slotted slotted = Slotted.of(table());
    Mount wide = pair(180, 0, 212, 18);

    assertEquals(List.of(2, 2), slotted.slots(m12(wide), Orientation.FRONT, new Place(0, 49 * MM)));
    assertEquals(List.of(2, 2), slotted.slots(m12(wide), Orientation.FRONT, new Place(0, 50 * MM)));
    assertEquals(List.of(3, 3), slotted.slots(m12(wide), Orientation.FRONT, new Place(0, 51 * MM)));
  }

  /** Slot 1 lies from −100 to 0, −50 on the average; slot 2 at 0 whatever the pitch. */
  @Test
  void slots_openPitch_takeThoseThatServeForEveryValue() {
    MachineDraft draft = draft();
    draft.slotPitch = Dimension.within(0, 100 * MM);
    Slotted slotted = Slotted.of(draft.build());
    Mount mount = pair(180, 70, 92, 18);
    // The holes stand at y = −35 ± 40.
    Place place = new Place(0, 35 * MM);

    List<Integer> slots = slotted.slots(m12(mount), Orientation.FRONT, place);

    assertEquals(List.of(2, 2), slots);
    assertEquals(
        Optional.of(Interval.of(30 * MM, 110 * MM)),
        slotted.placesIn(slots, m12(mount), Orientation.FRONT).map(Rectangle::y));
    assertEquals(Optional.empty(), slotted.placesIn(List.of(1, 1), m12(mount), Orientation.FRONT));
  }

  @Test
  void slots_baseBolts_listTheOneAtMinusVFirst() {
    // Turned right, v points along +Y: the bolt at −v is nearer the operator.
    assertEquals(
        List.of(1, 3),
        Slotted.of(table()).slots(m12(pair(200, 0, 18, 18)), Orientation.RIGHT, new Place(0, 0)));
    assertEquals(
        List.of(3, 1),
        Slotted.of(table()).slots(m12(pair(200, 0, 18, 18)), Orientation.LEFT, new Place(0, 0)));
  }

  @Test
  void bolts_holesOverTheSlotsEnd_standWhereTheNutsReachEnds() {
    Slotted slotted = Slotted.of(table());
    Mount mount = pair(180, 70, 52, 18);

    // The middle slot; holes at x = 201 ± 90, of which the second lies 3 past the nut's reach.
    assertEquals(
        List.of(new Place(111 * MM, 0), new Place(288 * MM, 0)),
        slotted.bolts(m12(mount), Orientation.FRONT, new Place(201 * MM, 75 * MM)));
    assertEquals(
        List.of(new Place(-288 * MM, 100 * MM), new Place(-111 * MM, 100 * MM)),
        slotted.bolts(m12(mount), Orientation.FRONT, new Place(-201 * MM, 165 * MM)));
  }

  @Test
  void bolts_slotsAlongY_standWhereTheNutsReachEndsToo() {
    // Turned right u is x and v is y: a quarter of the table above.
    assertEquals(
        List.of(new Place(0, 111 * MM), new Place(0, 288 * MM)),
        Slotted.of(slotsAlongY())
            .bolts(m12(pair(180, 70, 52, 18)), Orientation.RIGHT, new Place(-75 * MM, 201 * MM)));
  }

  @Test
  void lines_ofEitherDirection_areCentresFromTheMiddleAndHalfTheLengthEitherWay() {
    List<Long> centres = List.of(-100 * MM, 0L, 100 * MM);
    Interval reach = Interval.of(-300 * MM, 300 * MM);

    assertEquals(new SlotLines(Axis.X, centres, reach), SlotLines.of(table()));
    assertEquals(new SlotLines(Axis.Y, centres, reach), SlotLines.of(slotsAlongY()));
  }

  @Test
  void slotSets_boltsAcrossTheSlots_belowAtAndAboveTheirReach() {
    assertEquals(List.of(), slotSets(207));
    assertEquals(List.of(List.of(1, 3)), slotSets(206));
    assertEquals(List.of(List.of(1, 3)), slotSets(194));
    assertEquals(List.of(), slotSets(193));
    assertEquals(List.of(List.of(1, 2), List.of(2, 3)), slotSets(100));
  }

  @Test
  void placesIn_slotsListed_areThosePlacesOnly() {
    Slotted slotted = Slotted.of(table());
    Mount mount = pair(205, 40, 18, 28);

    // Along: holes at x = 40 ± 3 over ± 288. Across: ± 8 about ± 102.5, slots 1 and 3 at ± 100.
    Interval x = Interval.of(-331 * MM, 251 * MM);
    Interval y = Interval.of(-11 * MM / 2, 11 * MM / 2);
    assertEquals(
        Optional.of(new Rectangle(x, y)),
        slotted.placesIn(List.of(1, 3), m12(mount), Orientation.RIGHT));
    assertEquals(Optional.empty(), slotted.placesIn(List.of(1, 2), m12(mount), Orientation.RIGHT));
  }

  private static Anchors m12(Mount mount) {
    return Anchors.ofBolts(mount, M12);
  }

  private static List<List<Integer>> slotSets(long spacing) {
    return Slotted.of(table()).slotSets(m12(pair(spacing, 0, 18, 18)), Orientation.RIGHT);
  }

  private static List<Rectangle> places(Orientation turn, long spacing) {
    return places(table(), pair(spacing, 0, 18, 18), turn);
  }

  private static List<Rectangle> places(Machine machine, Mount mount, Orientation turn) {
    return Slotted.of(machine).places(m12(mount), turn).map(Strips::rectangles).orElse(List.of());
  }

  private static List<Long> middles(Machine machine) {
    return places(machine, pair(0, 0, 12, 12), Orientation.FRONT).stream()
        .map(place -> place.y().lo() / MM)
        .toList();
  }

  private static Mount pair(long spacing, long u, long holeU, long holeV) {
    Dimension half = Dimension.of(spacing * MM / 2);
    return new Mount(
        Mount.BASE_BOLTS,
        true,
        List.of(
            new Bolt(mm(u), Dimension.of(-half.length()), mm(holeU), mm(holeV)),
            new Bolt(mm(u), half, mm(holeU), mm(holeV))));
  }

  private static Dimension mm(long millimetres) {
    return Dimension.of(millimetres * MM);
  }

  private static Machine table() {
    return draft().build();
  }

  private static Machine slotsAlongY() {
    MachineDraft draft = draft();
    draft.slotDirection = Axis.Y;
    draft.tableLength = 300 * MM;
    draft.tableWidth = 600 * MM;
    return draft.build();
  }

  /** Table 600 × 300 with three slots along x, 100 apart about the middle. */
  private static MachineDraft draft() {
    return Standard.mill();
  }
}
