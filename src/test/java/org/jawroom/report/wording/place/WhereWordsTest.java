package org.jawroom.report.wording.place;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.When;
import org.junit.jupiter.api.Test;

/**
 * Directions after ISO 841: the axis letters say where the tool is over the table, so a table that
 * moves goes the other way; what stands before the vise is nearest with the table forward, at the
 * spindle's greatest y.
 */
class WhereWordsTest {
  private static final Interval NEAR = Interval.of(0, 10 * MM);
  private static final Interval BELOW = Interval.of(-20 * MM, -10 * MM);
  private static final Interval ABOVE = Interval.of(20 * MM, 30 * MM);
  private final MachineDraft draft = new MachineDraft();

  @Test
  void of_tableThatMoves_saysWhereTheTableStands() {
    assertEquals("at any opening, table all the way forward", where("door", Axis.Y, BELOW));
    assertEquals("at any opening, table all the way back", where("rear cover", Axis.Y, ABOVE));
    assertEquals("at any opening, table all the way left", where("left guard", Axis.X, BELOW));
    assertEquals("at any opening, table all the way right", where("right guard", Axis.X, ABOVE));
    assertEquals("at any opening, wherever the axes stand", where("table", Axis.Y, ABOVE));
  }

  @Test
  void of_tableThatStands_saysWhereTheGuardHasRun() {
    draft.tableMoves = Axes.NONE;
    draft.guards.add(guard(new Axes(true, true, false)));
    assertEquals("at any opening, arm run all the way back", where("arm", Axis.Y, BELOW));
    assertEquals("at any opening, arm run all the way left", where("arm", Axis.X, ABOVE));
    assertEquals("at any opening, wherever the axes stand", where("door", Axis.Y, BELOW));
  }

  @Test
  void of_heights_saysNoseOrTable() {
    draft.guards.add(guard(new Axes(false, false, true)));
    assertEquals(
        "at any opening, nose as low as the shortest tool lets it, nose 20 above the table",
        where("arm", Axis.Z, ABOVE));
    assertEquals("at any opening, nose at its highest", where("arm", Axis.Z, BELOW));
    draft.tableMoves = new Axes(true, true, true);
    draft.guards.set(0, guard(Axes.NONE));
    assertEquals(
        "at any opening, table as high as the shortest tool lets it, nose 20 above the table",
        where("arm", Axis.Z, ABOVE));
    assertEquals("at any opening, table at its lowest", where("arm", Axis.Z, BELOW));
  }

  @Test
  void of_loading_saysTheLoadPositionWhereItMatters() {
    draft.guards.add(guard(new Axes(false, false, true)));
    assertEquals(
        "at any opening, loading, table at the load position", loading("rear cover", Axis.Y));
    assertEquals("at any opening, loading, wherever the axes stand", loading("table", Axis.Y));
    assertEquals("at any opening, loading, nose at its highest", loading("arm", Axis.Z));
    draft.tableMoves = new Axes(true, true, true);
    draft.guards.set(0, guard(Axes.NONE));
    assertEquals("at any opening, loading, table at its lowest", loading("arm", Axis.Z));
    draft.tableMoves = Axes.NONE;
    draft.guards.set(0, guard(new Axes(true, true, false)));
    assertEquals("at any opening, loading, arm at the load position", loading("arm", Axis.X));
    assertEquals("at any opening, loading, wherever the axes stand", loading("rear cover", Axis.Y));
  }

  @Test
  void of_partOfTheOpening_saysItsEnds() {
    Interval openings = Interval.of(20 * MM, 80 * MM);
    assertEquals("jaws at 20, wherever the axes stand", jaws(JawEnd.CLOSED, openings));
    assertEquals("jaws at 80, wherever the axes stand", jaws(JawEnd.OPEN, openings));
    assertEquals(
        "jaws closed, wherever the axes stand", jaws(JawEnd.CLOSED, Interval.of(0, 80 * MM)));
    assertEquals(
        "jaws fully open, wherever the axes stand", jaws(JawEnd.OPEN, Interval.of(0, 100 * MM)));
  }

  private String where(String guard, Axis axis, Interval place) {
    return words(
        limit(guard, axis, place, Situation.CUTTING, JawEnd.ANY), Interval.of(0, 100 * MM));
  }

  private String loading(String guard, Axis axis) {
    return words(
        limit(guard, axis, ABOVE, Situation.LOADING, JawEnd.ANY), Interval.of(0, 100 * MM));
  }

  private String jaws(JawEnd end, Interval openings) {
    return words(limit("table", Axis.Y, ABOVE, Situation.CUTTING, end), openings);
  }

  private String words(Limit limit, Interval openings) {
    ViseDraft vise = new ViseDraft();
    vise.openingMax = 100 * MM;
    return new WhereWords(PeopleUnit.MM, draft.build(), vise.build()).of(limit, openings);
  }

  private Limit limit(
      String guard, Axis axis, Interval place, Situation situation, JawEnd opening) {
    Box part = new Box(NEAR, NEAR, NEAR);
    Box box =
        switch (axis) {
          case X -> new Box(place, NEAR, NEAR);
          case Y -> new Box(NEAR, place, NEAR);
          case Z -> new Box(NEAR, NEAR, place);
        };
    return NamedPieces.limit(
        draft.build(), 10, 0, 0, guard, "base", axis, situation, opening, part, box);
  }

  private static Guard guard(Axes carriedBy) {
    return Guards.box(
        "arm",
        "",
        carriedBy,
        When.ALWAYS,
        new Box(Interval.ALL, Interval.ALL, Interval.of(0, 10 * MM)));
  }
}
