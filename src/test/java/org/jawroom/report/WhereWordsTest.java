package org.jawroom.report;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Limit;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.reference.MachineDraft;
import org.jawroom.reference.ViseDraft;
import org.jawroom.shop.Axes;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.When;
import org.junit.jupiter.api.Test;

/**
 * Directions after ISO 841: the axis letters tell where the tool is over the table, so a table that moves goes
 * the other way; what stands before the vise is nearest with the table forward, at the spindle's greatest y.
 */
class WhereWordsTest {
  private static final Interval NEAR = Interval.of(0, 10);
  private static final Interval BELOW = Interval.of(-20, -10);
  private static final Interval ABOVE = Interval.of(20, 30);
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
    assertEquals("at any opening, nose at its lowest", where("arm", Axis.Z, ABOVE));
    draft.tableMoves = new Axes(true, true, true);
    draft.guards.set(0, guard(Axes.NONE));
    assertEquals("at any opening, table at its highest", where("arm", Axis.Z, ABOVE));
  }

  private String where(String guard, Axis axis, Interval place) {
    Box part = new Box(NEAR, NEAR, NEAR);
    Box box =
        switch (axis) {
          case X -> new Box(place, NEAR, NEAR);
          case Y -> new Box(NEAR, place, NEAR);
          case Z -> new Box(NEAR, NEAR, place);
        };
    Limit limit =
        new Limit(10, 0, 0, guard, "base", axis, Situation.CUTTING, JawEnd.ANY, part, box);
    return new WhereWords(PeopleUnit.MM, draft.build(), new ViseDraft().build())
        .of(limit, Interval.of(0, MM));
  }

  private static Guard guard(Axes carriedBy) {
    return new Guard(
        "arm", "", carriedBy, When.ALWAYS, Optional.empty(), Dimension.NONE,
        new Box(Interval.ALL, Interval.ALL, Interval.of(0, 10)), OptionalLong.empty(), OptionalLong.empty());
  }
}
