package org.jawroom.report.readings;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.known;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which columns a margin comes from, by the formulas of the model. */
class ReadingsTest {
  private static final Slots CENTRED = machine("A").slots();
  private static final Slots FROM_FRONT =
      new Slots(
          Axis.X,
          3,
          known("14"),
          known("100"),
          OptionalLong.of(mm("75")),
          List.of(),
          OptionalLong.empty());
  private static final Slots BY_POSITIONS =
      new Slots(
          Axis.X,
          3,
          known("14"),
          Dimension.BLANK,
          OptionalLong.empty(),
          List.of(mm("75"), mm("170"), mm("280")),
          OptionalLong.empty());

  private Machine machine =
      machine(
          "A",
          "",
          "900",
          "600",
          List.of(),
          CALIPER,
          List.of(
              Guards.box(
                  "hose arm", new Box(Interval.of(0, 2), Interval.of(0, 2), Interval.of(0, 2))),
              Guards.box(
                  "head",
                  "",
                  new Axes(true, true, true),
                  When.ALWAYS,
                  new Box(Interval.of(0, 2), Interval.of(0, 2), Interval.of(0, 2)))));
  private Vise vise = vise("v", "150", "0", "150.07", known("120"), CALIPER);

  /** The guard's face lies beyond the part along the axis (front guards: before it). */
  private String behind(
      String guard,
      boolean beyond,
      String part,
      Axis axis,
      Situation situation,
      JawEnd jaws,
      Orientation turn,
      Made made) {
    Interval face = beyond ? Interval.of(10, 10) : Interval.of(-10, -10);
    Interval end = Interval.of(0, 0);
    Limit limit =
        NamedPieces.limit(
            machine,
            10,
            0,
            0,
            guard,
            part,
            axis,
            situation,
            jaws,
            new Box(end, end, end),
            new Box(face, face, face));
    return Readings.behind(made.at(turn, "0", "0").limit(limit).done())
        .orElseThrow()
        .words()
        .replace("\n", " / ");
  }

  private Made made() {
    return new Made(machine, vise, Verdict.MEASURE);
  }

  private String door(Made made) {
    return behind(
        "door",
        false,
        "screw front",
        Axis.Y,
        Situation.CUTTING,
        JawEnd.OPEN,
        Orientation.FRONT,
        made);
  }

  private String rear(Made made) {
    return behind(
        "rear cover", true, "base", Axis.Y, Situation.CUTTING, JawEnd.ANY, Orientation.FRONT, made);
  }

  @Test
  void behind_door_isGapTableSlotBoltReachAndProjection() {
    assertEquals(
        "machine: front_gap, half of table_width, slot_pitch / "
            + "vise: bolt_u, bolt_hole_u, front_reach, front_projection_open",
        door(made()));
  }

  @Test
  void behind_middleSlot_needsNoPitch() {
    assertEquals(
        "machine: rear_gap, half of table_width / vise: bolt_u, bolt_hole_u, rear_reach",
        rear(made().slots(2, 2)));
  }

  /** From the front edge the table's width drops out before it and counts whole behind it. */
  @Test
  void behind_slotsMeasuredFromTheEdge_countTheTableOnlyBeyondIt() {
    machine = with(FROM_FRONT, machine.ledges());
    assertEquals(
        "machine: front_gap, slot_first / vise: bolt_u, bolt_hole_u, front_reach, front_projection_open",
        door(made().slots(1, 1)));
    assertEquals(
        "machine: rear_gap, table_width, slot_first, slot_pitch / vise: bolt_u, bolt_hole_u, rear_reach",
        rear(made().slots(1, 2)));
    machine = with(BY_POSITIONS, machine.ledges());
    assertEquals(
        "machine: rear_gap, table_width, slot_positions / vise: bolt_u, bolt_hole_u, rear_reach",
        rear(made()));
  }

  @Test
  void behind_alongTheSlots_isWhereItStandsAndNoBolt() {
    assertEquals(
        "machine: left_gap, half of table_length, where it stands along the slots / vise: half of base_width",
        behind(
            "left guard",
            false,
            "base",
            Axis.X,
            Situation.CUTTING,
            JawEnd.ANY,
            Orientation.FRONT,
            made()));
  }

  @Test
  void behind_loading_countsTravelAndLoadPlace() {
    assertEquals(
        "machine: rear_gap, half of table_width, half of travel_y, load_y, spindle_y, slot_pitch / "
            + "vise: half of bolt_spacing, bolt_hole_v, handle_radius",
        behind(
            "rear cover",
            true,
            "handle",
            Axis.Y,
            Situation.LOADING,
            JawEnd.ANY,
            Orientation.LEFT,
            made()));
  }

  @Test
  void behind_boxGuard_isItsFaceAndHalfTheTravel() {
    assertEquals(
        "machine: y_min of hose arm, half of travel_y, slot_pitch / vise: bolt_u, bolt_hole_u, rear_reach",
        behind(
            "hose arm",
            true,
            "base",
            Axis.Y,
            Situation.CUTTING,
            JawEnd.ANY,
            Orientation.FRONT,
            made()));
    machine = with(FROM_FRONT, machine.ledges());
    assertEquals(
        "machine: y_max of hose arm, half of table_width, load_y, spindle_y, slot_first, slot_pitch / "
            + "vise: bolt_u, bolt_hole_u, front_reach",
        behind(
            "hose arm",
            false,
            "base",
            Axis.Y,
            Situation.LOADING,
            JawEnd.ANY,
            Orientation.FRONT,
            made()));
  }

  @Test
  void behind_head_isItsLowEndAndTheNose() {
    assertEquals(
        "machine: z_min of head, nose_min or the shortest tool / vise: bed_height, jaw_height",
        behind(
            "head",
            true,
            "moving jaw",
            Axis.Z,
            Situation.CUTTING,
            JawEnd.ANY,
            Orientation.FRONT,
            made()));
    assertEquals(
        "machine: z_min of head, nose_max / vise: screw_height, handle_radius",
        behind(
            "head",
            true,
            "handle",
            Axis.Z,
            Situation.LOADING,
            JawEnd.ANY,
            Orientation.FRONT,
            made()));
  }

  @Test
  void behind_table_isItsTopOrItsEdgeWithTheLedge() {
    assertEquals(
        "machine: none / vise: screw_height, half of screw_diameter",
        behind(
            "table",
            false,
            "handle",
            Axis.Z,
            Situation.LOADING,
            JawEnd.ANY,
            Orientation.FRONT,
            made()));
    machine = with(CENTRED, new Sides<>(mm("20"), 0L, 0L, 0L));
    assertEquals(
        "machine: half of table_width, front_ledge, slot_pitch / "
            + "vise: bolt_u, bolt_hole_u, front_reach, front_projection_closed",
        behind(
            "table",
            true,
            "handle",
            Axis.Y,
            Situation.LOADING,
            JawEnd.CLOSED,
            Orientation.FRONT,
            made()));
  }

  /**
   * The part's ends in the vise frame, through each turn: u points −y, +x, +y, −x; v +x, +y, −x,
   * −y.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "FRONT | Y | true | base | rear_reach",
        "FRONT | Y | false | base | front_reach",
        "REAR | Y | true | base | front_reach",
        "RIGHT | X | true | base | front_reach",
        "LEFT | X | true | base | rear_reach",
        "RIGHT | X | false | screw rear | rear_reach, rear_projection_open",
        "RIGHT | X | true | screw rear | rear_reach",
        "RIGHT | X | true | moving jaw | opening_max, moving_jaw_thickness",
        "RIGHT | X | false | moving jaw | opening_max",
        "RIGHT | X | false | fixed jaw | fixed_jaw_thickness",
        "RIGHT | X | true | handle | front_reach, front_projection_open, handle_depth",
        "FRONT | X | true | stop | v_max of stop",
        "REAR | X | true | stop | v_min of stop",
        "LEFT | X | true | stop | u_min_open of stop",
        "RIGHT | X | true | stop | u_max_open of stop",
        "FRONT | X | true | screw front | half of screw_diameter",
        "FRONT | X | true | fixed jaw | half of jaw_width",
        "FRONT | Z | false | stop | w_min of stop"
      })
  void behind_eachEnd_isGivenInTheViseFrame(
      Orientation turn, Axis axis, boolean beyond, String part, String ends) {
    vise =
        with(
            List.of(
                new VisePart(
                    "stop",
                    When.ALWAYS,
                    Interval.of(0, 2),
                    Interval.of(0, 2),
                    Interval.of(0, 2),
                    Interval.of(0, 2),
                    OptionalLong.empty())),
            vise.mounts());
    String words =
        behind("hose arm", beyond, part, axis, Situation.CUTTING, JawEnd.OPEN, turn, made());
    assertEquals(
        ends, words.substring(words.indexOf("vise: ") + 6).replace("bolt_u, bolt_hole_u, ", ""));
  }

  @Test
  void behind_anotherMount_namesItsColumns() {
    Bolt bolt = new Bolt(known("70"), known("90"), known("52"), known("18"));
    vise = with(List.of(), List.of(new Mount("plate", false, List.of(bolt))));
    assertEquals(
        "machine: rear_gap, half of table_width, slot_pitch / vise: u of plate, hole_u of plate, rear_reach",
        rear(made().mount("plate")));
    assertEquals(
        "machine: rear_gap, half of table_width, slot_pitch / vise: v of plate, hole_v of plate",
        behind(
            "rear cover",
            true,
            "bolts",
            Axis.Y,
            Situation.CUTTING,
            JawEnd.ANY,
            Orientation.RIGHT,
            made().mount("plate")));
  }

  @Test
  void behind_nothingThatLimits_isEmpty() {
    assertEquals(Optional.empty(), Readings.behind(made().done()));
  }

  private Machine with(Slots slots, Sides<Long> ledges) {
    return machine.toBuilder()
        .spindle(0, 0)
        .slots(slots)
        .ledges(ledges)
        .load(OptionalLong.of(0), OptionalLong.of(0))
        .provenance(CALIPER)
        .build();
  }

  private Vise with(List<VisePart> parts, List<Mount> mounts) {
    return vise.toBuilder().mounts(mounts).provenance(CALIPER).parts(parts).build();
  }
}
