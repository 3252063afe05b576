package org.jawroom.report.wording.place;

import static org.jawroom.geometry.Length.INCH;
import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.fixture.outcome.MadePlaces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.value.Dimension;
import org.junit.jupiter.api.Test;

/** On a table 600 by 300, so that its left edge lies at x = -300 and its front edge at y = -150. */
class TapeWordsTest {
  private final MachineDraft machine = new MachineDraft();
  private final ViseDraft vise = new ViseDraft();

  TapeWordsTest() {
    machine.tableLength = 600 * MM;
    machine.tableWidth = 300 * MM;
    vise.baseWidth = Dimension.of(170 * MM);
  }

  @Test
  void edges_jawsOpeningFrontToRear_takeBaseFromTheLeftAndFaceFromTheFront() {
    List<String> expected =
        List.of(
            "base's left side 90.0 from the table's left edge",
            "fixed-jaw face 225.0 from the table's front edge");
    assertEquals(expected, tape().edges(Orientation.FRONT, -125 * MM, 75 * MM, MM));
    assertEquals(expected, tape().edges(Orientation.REAR, -125 * MM, 75 * MM, MM));
  }

  @Test
  void edges_jawsOpeningLeftToRight_takeFaceFromTheLeftAndBaseFromTheFront() {
    List<String> expected =
        List.of(
            "fixed-jaw face 175.0 from the table's left edge",
            "base's front side 140.0 from the table's front edge");
    assertEquals(expected, tape().edges(Orientation.RIGHT, -125 * MM, 75 * MM, MM));
    assertEquals(expected, tape().edges(Orientation.LEFT, -125 * MM, 75 * MM, MM));
  }

  @Test
  void edges_overTheTablesEdge_sayByHowMuchItOverhangs() {
    assertEquals(
        List.of(
            "base's left side overhangs the table's left edge by 10.0",
            "fixed-jaw face overhangs the table's front edge by 25.0"),
        tape().edges(Orientation.FRONT, -225 * MM, -175 * MM, MM));
  }

  @Test
  void edges_bothJawsMoving_takeTheMiddle() {
    vise.both = true;
    assertEquals(
        "middle between the jaws 150.0 from the table's front edge",
        tape().edges(Orientation.FRONT, 0, 0, MM).get(1));
  }

  @Test
  void edges_viseMadeOfParts_takeTheMiddleOfItsJaws() {
    vise.simple = false;
    assertEquals(
        "middle of the jaws 300.0 from the table's left edge",
        tape().edges(Orientation.FRONT, 0, 0, MM).get(0));
    assertEquals(
        "middle of the jaws 150.0 from the table's front edge",
        tape().edges(Orientation.LEFT, 0, 0, MM).get(1));
  }

  /** 11.25 in from the edge, and 1/64 in beyond: the tape's step takes 1/64 in at most. */
  @Test
  void edges_inInches_areToThirtySecondsWhereTheMarginBearsIt() {
    machine.tableLength = 30 * INCH;
    vise.baseWidth = Dimension.of(7 * INCH + INCH / 2);
    long step = INCH / 64;
    assertEquals("11 1/4", left(0, 0));
    assertEquals("11 9/32", left(step, step));
    assertEquals("11.266", left(step, step - 1));
    assertEquals("11 1/4", left(step - 1, step - 1));
    assertEquals("11.266", left(step - 1, step - 2));
    assertEquals("11.266", left(step, -MM));
    assertEquals("11 1/4", left(0, -MM));
  }

  private String left(long x, long spare) {
    TapeWords inches = new TapeWords(PeopleUnit.INCH, machine.build(), vise.build());
    String words = inches.edges(Orientation.FRONT, x, 0, spare).get(0);
    return words.replace("base's left side ", "").replace(" from the table's left edge", "");
  }

  @Test
  void of_bolts_countsSlotsFromTheFrontOrTheLeft() {
    assertEquals("both bolts in slot 2 (of 3, counted from the front)", bolts(2, 2));
    assertEquals(
        "front bolt in slot 1, rear bolt in slot 3 (of 3, counted from the front)", bolts(3, 1));
    assertEquals("bolt in slot 1 (of 3, counted from the front)", bolts(1));
    assertEquals("all 4 bolts in slot 2 (of 3, counted from the front)", bolts(2, 2, 2, 2));
    assertEquals(
        "2 bolts in slot 1, 1 bolt in slot 3 (of 3, counted from the front)", bolts(1, 3, 1));
    machine.slotDirection = Axis.Y;
    assertEquals(
        "left bolt in slot 1, right bolt in slot 3 (of 3, counted from the left)", bolts(1, 3));
  }

  private String bolts(Integer... slots) {
    Recommendation place =
        MadePlaces.place(0, 0, List.of(slots), Optional.empty(), OptionalLong.empty());
    List<String> lines = tape().of(place);
    assertEquals("handle to the front, base bolts, M12", lines.get(0));
    return lines.get(1);
  }

  private TapeWords tape() {
    return new TapeWords(PeopleUnit.MM, machine.build(), vise.build());
  }
}
