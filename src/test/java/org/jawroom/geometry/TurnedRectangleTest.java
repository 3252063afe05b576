package org.jawroom.geometry;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The strips of a turned rectangle against JTS, a general-purpose library of computational
 * geometry.
 */
class TurnedRectangleTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** More than the rounding of JTS, much less than a half-nanometre. */
  private static final double ROUNDING = 0.01;

  @Test
  void strips_randomRectangles_coverThePolygonAndReachNoFartherThanTheyMay() {
    Random dice = new Random(5);
    int several = 0;
    for (int i = 0; i < 400; i++) {
      TurnedRectangle turned = random(dice);
      Geometry polygon = polygon(turned);
      List<Rectangle> strips = turned.strips();
      assertTrue(
          UnaryUnionOp.union(strips.stream().map(TurnedRectangleTest::geometry).toList())
              .covers(polygon),
          turned::toString);
      for (Rectangle strip : strips) {
        assertTrue(strip.y().length() <= TurnedRectangle.STRIP, turned::toString);
        for (long u : List.of(strip.x().lo(), strip.x().hi())) {
          for (long v : List.of(strip.y().lo(), strip.y().hi())) {
            Envelope near = new Envelope(u, u, v, v);
            near.expandBy(TurnedRectangle.STRIP + ROUNDING);
            assertTrue(polygon.intersects(JTS.toGeometry(near)), turned::toString);
          }
        }
      }
      several += strips.size() > 1 ? 1 : 0;
    }
    assertTrue(several > 200, several + " of several strips");
  }

  @Test
  void corners_randomRectangles_areThoseOfThePolygon() {
    Random dice = new Random(7);
    for (int i = 0; i < 200; i++) {
      TurnedRectangle turned = random(dice);
      Geometry polygon = polygon(turned);
      for (TurnedRectangle.Corner corner : turned.corners()) {
        Coordinate at = new Coordinate(corner.u(), corner.v());
        assertTrue(
            Arrays.stream(polygon.getCoordinates()).anyMatch(one -> one.distance(at) < 1),
            () -> corner + " of " + turned);
      }
    }
  }

  /** Whatever is true of a smaller part must be true of a larger one. */
  @Test
  void strips_ofARectangleWithinAnother_lieWithinItsStrips() {
    Random dice = new Random(6);
    for (int i = 0; i < 200; i++) {
      TurnedRectangle outer = random(dice);
      Interval x = outer.square().x();
      Interval y = outer.square().y();
      TurnedRectangle inner =
          new TurnedRectangle(
              new Rectangle(within(dice, x), within(dice, y)), outer.pivot(), outer.degrees());
      Geometry cover =
          UnaryUnionOp.union(outer.strips().stream().map(TurnedRectangleTest::geometry).toList());
      for (Rectangle strip : inner.strips()) {
        assertTrue(cover.covers(geometry(strip)), () -> inner + " in " + outer);
      }
    }
  }

  /** sin 30° = 1/2 and cos 30° = √3/2 = 0.866025403784438646 (common mathematics). */
  @Test
  void hull_thirtyDegrees_isThatOfTheExactCornersButForTheLastHalfNanometres() {
    Rectangle square = new Rectangle(Interval.of(0, 100 * MM), Interval.of(-20 * MM, 20 * MM));

    Rectangle hull = new TurnedRectangle(square, 0, 30).hull();

    // In half-nanometres: 100·√3/2 + 20/2 mm, and 100/2 + 20·√3/2 mm.
    outward(193_205_080.7569, hull.x().hi());
    outward(20_000_000, -hull.x().lo());
    outward(134_641_016.1514, hull.y().hi());
    outward(34_641_016.1514, -hull.y().lo());
  }

  @Test
  void strips_turnedTheOtherWay_areTheMirrorImage() {
    Rectangle square =
        new Rectangle(Interval.of(-60 * MM, 210 * MM), Interval.of(-9 * MM, 75 * MM));
    Rectangle mirrored = new Rectangle(square.x(), square.y().negated());

    List<Rectangle> strips = new TurnedRectangle(square, 40 * MM, -22.5).strips();

    assertEquals(
        new TurnedRectangle(mirrored, 40 * MM, 22.5)
            .strips().stream().map(strip -> new Rectangle(strip.x(), strip.y().negated())).toList(),
        strips);
  }

  @Test
  void strips_ofAPoint_holdIt() {
    Rectangle point = new Rectangle(Interval.of(7 * MM, 7 * MM), Interval.of(0, 0));

    assertEquals(
        List.of(new Rectangle(Interval.around(7 * MM, 1), Interval.around(0, 1))),
        new TurnedRectangle(point, 7 * MM, 45)
            .strips().stream()
                .reduce(
                    (one, other) -> new Rectangle(one.x().hull(other.x()), one.y().hull(other.y())))
                .stream()
                .toList());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.9, -0.9, 90, -90, 180, Double.NaN})
  void of_otherAngles_isRefused(double degrees) {
    Rectangle square = new Rectangle(Interval.of(0, 1), Interval.of(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new TurnedRectangle(square, 0, degrees));
  }

  @Test
  void of_fartherThanItsArithmeticHolds_isRefused() {
    long far = (1L << 40) + 1;
    Rectangle wide = new Rectangle(Interval.of(0, far), Interval.of(0, 1));
    Rectangle long_ = new Rectangle(Interval.of(0, 1), Interval.of(-far, 1));
    assertThrows(IllegalArgumentException.class, () -> new TurnedRectangle(wide, 0, 30));
    assertThrows(IllegalArgumentException.class, () -> new TurnedRectangle(long_, 0, 30));
    assertEquals(30, new TurnedRectangle(wide, MM, 30).degrees());
  }

  private static void outward(double exact, long end) {
    assertTrue(exact <= end && end <= exact + 2, () -> end + " for " + exact);
  }

  /** From the size of a pin to that of a body, at any angle, now and then far from the pivot. */
  private static TurnedRectangle random(Random dice) {
    long size = dice.nextBoolean() ? 400 * MM : 8 * MM;
    long away = dice.nextInt(10) == 0 ? 50_000 * MM : 0;
    long u = away + (long) (dice.nextDouble() * size) - size / 2;
    long v = (long) (dice.nextDouble() * size) - size / 2;
    Rectangle square =
        new Rectangle(
            Interval.of(u, u + (long) (dice.nextDouble() * size)),
            Interval.of(v, v + (dice.nextInt(20) == 0 ? 0 : (long) (dice.nextDouble() * size))));
    double tenths = 10 + dice.nextInt(890);
    return new TurnedRectangle(
        square,
        (long) ((dice.nextDouble() - 0.5) * size),
        (dice.nextBoolean() ? tenths : -tenths) / 10);
  }

  private static Interval within(Random dice, Interval whole) {
    long lo = whole.lo() + (long) (dice.nextDouble() * whole.length());
    return Interval.of(lo, lo + (long) (dice.nextDouble() * (whole.hi() - lo)));
  }

  private static Geometry geometry(Rectangle one) {
    return JTS.toGeometry(new Envelope(one.x().lo(), one.x().hi(), one.y().lo(), one.y().hi()));
  }

  private static Geometry polygon(TurnedRectangle turned) {
    return AffineTransformation.rotationInstance(
            Math.toRadians(turned.degrees()), turned.pivot(), 0)
        .transform(geometry(turned.square()));
  }
}
