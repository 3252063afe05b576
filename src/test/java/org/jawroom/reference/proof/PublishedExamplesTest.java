package org.jawroom.reference.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefGuard;
import org.jawroom.reference.model.RefGuard.Block;
import org.jawroom.reference.model.RefMachine;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefSlots;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks the reference's components against published examples. */
class PublishedExamplesTest {

  private static final Settings NOTHING_REQUIRED =
      Settings.builder().clearance(0).handRoom(0).clampRoom(0).jawPlay(0).build();

  private static long mm(double millimetres) {
    return Math.round(millimetres * 1e6) * Length.NANOMETRE;
  }

  /** A machine and a vise with a single part and nothing else in the way. */
  private static MachineDraft bareMill() {
    MachineDraft mill = new MachineDraft();
    mill.tableLength = mm(1000);
    mill.tableWidth = mm(400);
    mill.slotCount = 1;
    mill.slotWidth = Dimension.of(mm(14));
    return mill;
  }

  private static Vise onePart(Interval u, Interval v, Interval w) {
    ViseDraft vise = new ViseDraft();
    vise.simple = false;
    vise.openingMax = mm(100);
    vise.boltSpacing = Dimension.NONE;
    vise.parts.add(new VisePart("block", When.ALWAYS, u, u, v, w, OptionalLong.empty()));
    return vise.build();
  }

  private static Interval mmSpan(long lo, long hi) {
    return new Interval(mm(lo), mm(hi));
  }

  private static Guard box(Axes carriedBy, Interval x, Interval y, Interval z) {
    return new Guard(
        "post",
        "other",
        carriedBy,
        When.CUTTING,
        Optional.empty(),
        Dimension.NONE,
        new Box(x, y, z),
        OptionalLong.empty(),
        OptionalLong.empty());
  }

  /**
   * ISO 841:2001, transcribed: coordinates are those of a tool moving over a still workpiece, so +Y
   * brings the table toward the operator. Worked with an asymmetric travel, −100 … +300: handle tip
   * at table y = −150, door face at machine y = −520, closest 70 (the wrong sign would say 270).
   */
  @Test
  void guard_travelNotSymmetric_nearestWithTableTowardOperator() {
    MachineDraft mill = bareMill();
    mill.travelY = mm(400);
    mill.spindleY = mm(100);
    // Mid-travel is Y = 100, where the table stands 100 nearer the operator: the face is at −420.
    mill.guards.add(
        box(Axes.NONE, Interval.ALL, new Interval(-Length.ENDLESS, mm(-420)), Interval.ALL));
    List<RefGuard> guards =
        RefMachine.guards(
            NOTHING_REQUIRED, mill.build(), new ViseDraft().build(), EnumSet.noneOf(Column.class));

    Span face = guards.get(0).cutting().y();

    assertEquals(mm(70), new Span(mm(-150), 0).gap(face));
  }

  /**
   * The same with a taped gap: at Y = +300 the table's front edge stands at machine −500, 20 from
   * the door.
   */
  @Test
  void gap_tapedWithTableTowardOperator_isTheDoorAtItsNearest() {
    MachineDraft mill = bareMill();
    mill.travelY = mm(400);
    mill.spindleY = mm(100);
    mill.frontGap = Dimension.of(mm(20));
    List<RefGuard> guards =
        RefMachine.guards(
            NOTHING_REQUIRED, mill.build(), new ViseDraft().build(), EnumSet.noneOf(Column.class));

    assertEquals(mm(70), new Span(mm(-150), 0).gap(guards.get(0).cutting().y()));
    assertNull(guards.get(0).loading());
  }

  /** ISO 841:2001, transcribed: X = +250 brings the table 250 to the operator's left. */
  @Test
  void guard_loadPositionToTheRight_leftGuardIsNearer() {
    MachineDraft mill = bareMill();
    mill.travelX = mm(600);
    mill.leftGap = Dimension.of(mm(10));
    mill.rightGap = Dimension.of(mm(10));
    mill.loadX = OptionalLong.of(mm(250));
    List<RefGuard> guards =
        RefMachine.guards(
            NOTHING_REQUIRED, mill.build(), new ViseDraft().build(), EnumSet.noneOf(Column.class));

    // Nearest at +300 on the left, at −300 on the right.
    assertEquals(mm(-500 - 10 - 50), guards.get(0).loading().x().hi());
    assertEquals(mm(500 + 10 + 550), guards.get(1).loading().x().lo());
  }

  /**
   * T. Lozano-Pérez, "Spatial Planning: A Configuration Space Approach", IEEE Trans. Computers
   * C-32(2), 1983: the forbidden positions of a reference point are the Minkowski sum of the
   * obstacle and the reflected body. Numbers worked by hand: obstacle [100, 140] × [50, 70], body
   * [−10, 50] × [−20, 30].
   */
  @Test
  void forbidden_bodyAndObstacle_isObstacleGrownByTheBodyTurnedAbout() {
    Rect forbidden = forbidden(Axes.NONE, Axes.NONE, 0);

    assertEquals(new Rect(mm(50), mm(150), mm(20), mm(90)), forbidden);
  }

  /** The same with the travel added likewise: ± 200 along x. */
  @Test
  void forbidden_obstacleMovesAlongX_isGrownByTheTravel() {
    Rect forbidden = forbidden(new Axes(true, false, false), Axes.NONE, 400);

    assertEquals(new Rect(mm(-150), mm(350), mm(20), mm(90)), forbidden);
  }

  private static Rect forbidden(Axes tableMoves, Axes carriedBy, long travelX) {
    MachineDraft mill = bareMill();
    mill.tableMoves = tableMoves;
    mill.travelX = mm(travelX);
    mill.guards.add(box(carriedBy, mmSpan(100, 140), mmSpan(50, 70), Interval.ALL));
    Vise vise = onePart(mmSpan(-10, 50), mmSpan(-20, 30), mmSpan(0, 50));
    RefModel model = new RefModel(NOTHING_REQUIRED, mill.build(), vise, false);
    RefPair pair = new RefPair(model.guards.get(0), model.body.get(0), true, 0, 0);
    // Turned so that u points along +X and v along +Y.
    return pair.field(new Facing(1, 0, 0, 1), new Span(mm(-10), mm(50))).below(0);
  }

  /**
   * Axis gaps never exceed the distance: [0, 10]² and [13, 20] × [14, 20] are 5 apart, but 3 along
   * one axis and 4 along the other (the separating-axis test: S. Gottschalk et al., OBBTree,
   * SIGGRAPH 96; numbers worked by hand).
   */
  @Test
  void margin_boxesDiagonallyApart_isTheLargerAxisGap() {
    Block post = new Block(span(13, 20), span(14, 20), Span.ALL);
    RefGuard guard = new RefGuard("post", post, null, 0, 0, null);
    Span all = new Span(0, mm(10));
    RefPart part = new RefPart("block", 0, mm(10), 0, mm(10), all, new Span(0, mm(5)), null, 0);
    RefPair pair = new RefPair(guard, part, true, 0, 0);

    assertEquals(mm(4), pair.field(new Facing(1, 0, 0, 1), all).margin(0, 0));
  }

  private static Span span(long lo, long hi) {
    return new Span(mm(lo), mm(hi));
  }

  /** DIN 508 (transcribed from an open table of fastener data): slot width and thread. */
  @ParameterizedTest
  @CsvSource({
    "5,4", "6,5", "8,6", "10,8", "12,10", "14,12", "18,16", "22,20", "28,24", "36,30", "42,36",
    "48,42", "54,48"
  })
  void thread_slotOfTheSeries_isItsOwn(long slot, long thread) {
    assertEquals(mm(thread), RefSlots.thread(mm(slot)));
  }

  /**
   * Widths outside the series occur in practice (common practice, no source): they take the smaller
   * thread.
   */
  @ParameterizedTest
  @CsvSource({"4.999999,0", "5.999999,4", "15.875,12", "16,12", "17.999999,12", "20,16", "100,48"})
  void thread_widthBetweenTwo_isTheSmaller(double slot, long thread) {
    assertEquals(mm(thread), RefSlots.thread(mm(slot)));
  }

  /** ISO 841:2001, transcribed: X, Y, Z right-handed; so are u, v, w: v = w × u in every turn. */
  @Test
  void facing_everyTurn_isRightHanded() {
    for (Orientation turn : Orientation.values()) {
      Facing facing = Facing.of(turn);
      // w × u with w = (0, 0, 1) is (−u.y, u.x, 0).
      assertEquals(-facing.uy(), facing.vx());
      assertEquals(facing.ux(), facing.vy());
    }
    assertEquals(-1, Facing.of(Orientation.FRONT).uy());
    assertEquals(1, Facing.of(Orientation.RIGHT).ux());
    assertEquals(1, Facing.of(Orientation.REAR).uy());
    assertEquals(-1, Facing.of(Orientation.LEFT).ux());
  }

  /** Touching is clear, half a nanometre less is not: on each axis, on both sides. */
  @ParameterizedTest
  @CsvSource({"X,1", "X,-1", "Y,1", "Y,-1"})
  void below_touchingOrNot(Axis axis, int side) {
    RefPair.Field field = new RefPair.Field(-10, 10, -10, 10, -100);
    long touching = 10L * side;
    long hair = touching - side;
    Rect forbidden = field.below(0);

    assertFalse(
        axis == Axis.X ? forbidden.holdsInside(touching, 0) : forbidden.holdsInside(0, touching));
    assertTrue(axis == Axis.X ? forbidden.holdsInside(hair, 0) : forbidden.holdsInside(0, hair));
    assertEquals(0, axis == Axis.X ? field.margin(touching, 0) : field.margin(0, touching));
    assertEquals(-1, axis == Axis.X ? field.margin(hair, 0) : field.margin(0, hair));
  }

  /**
   * A taped row carried by the same axes as the table does not move: its face stays where it is
   * taped.
   */
  @Test
  void tapedRow_carriedWithTheTable_standsStill() {
    MachineDraft mill = bareMill();
    mill.travelY = mm(300);
    mill.guards.add(
        new Guard(
            "rail",
            "other",
            mill.tableMoves,
            When.ALWAYS,
            Optional.of(Side.REAR),
            Dimension.of(mm(15)),
            new Box(Interval.ALL, Interval.ALL, Interval.ALL),
            OptionalLong.empty(),
            OptionalLong.empty()));
    RefGuard rail =
        RefMachine.guards(
                NOTHING_REQUIRED,
                mill.build(),
                new ViseDraft().build(),
                EnumSet.noneOf(Column.class))
            .get(0);

    assertEquals(mm(215), rail.cutting().y().lo());
    assertEquals(mm(215), rail.loading().y().lo());
  }
}
