package org.jawroom.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of the vise frame turned about a pivot, and the strips that cover it.
 *
 * <p>A strip is a rectangle [u from, u to] × [v from, v to] at most {@link #STRIP} wide along v.
 * Together the strips hold every point of the turned rectangle, and no point of a strip is farther
 * than {@link #STRIP} from the turned rectangle, neither along u nor along v. Strips end at whole
 * multiples of {@link #STRIP}, wherever the rectangle lies, so that a rectangle inside another one
 * is covered by no more than the other is.
 *
 * <p><b>Exactness.</b> Sine and cosine are irrational, so ends are computed in {@code double} and
 * moved outward by one half-nanometre beyond the next whole one. That is enough. With {@code
 * StrictMath} (within 1 ulp) and the rounding of the angle to radians, sine and cosine are off by
 * less than e = 2^-50. Local coordinates are at most 2^40. Then a sum of two products is off by
 * less than 2·2^40·e plus three roundings of at most 2^-12, together below 2^-8. The quotient of a
 * numerator that is off by 2^-8 and a sine or cosine of at least sin 1° &gt; 2^-6 is off by less
 * than 2^-2, and, where it is at most 2^41, by another 2^41·e·2^6 = 2^-3 for the divisor; a larger
 * one lies beyond every end of the rectangle and bounds nothing. Each error is below 1.
 *
 * @param square the rectangle before turning, u as x and v as y, half-nanometres
 * @param pivot the u of the pivot, at v = 0
 * @param degrees from u toward v (counterclockwise seen from above), at least 1 and less than 90
 *     either way
 */
public record TurnedRectangle(Rectangle square, long pivot, double degrees) {

  /** The greatest width of a strip, and how far it may reach beyond the turned rectangle: 5 mm. */
  public static final long STRIP = 5 * Length.MM;

  /** The least and the greatest angle, the latter excluded. */
  public static final int LEAST_DEGREES = 1;

  public static final int RIGHT_ANGLE = 90;

  private static final long FARTHEST = 1L << 40;

  public TurnedRectangle {
    if (!(Math.abs(degrees) >= LEAST_DEGREES && Math.abs(degrees) < RIGHT_ANGLE)) {
      throw new IllegalArgumentException("turned by " + degrees + " degrees");
    }
    Interval u = square.x().plus(-pivot);
    if (Math.max(-u.lo(), u.hi()) > FARTHEST
        || Math.max(-square.y().lo(), square.y().hi()) > FARTHEST) {
      throw new IllegalArgumentException("too far from the pivot: " + square);
    }
  }

  /** The strips, by rising v where it is turned from u toward v, else by falling v. */
  public List<Rectangle> strips() {
    // A turn the other way is the mirror image of one from u toward v.
    boolean mirrored = degrees < 0;
    double s = sine();
    double c = cosine();
    long x0 = square.x().lo() - pivot;
    long x1 = square.x().hi() - pivot;
    long y0 = mirrored ? -square.y().hi() : square.y().lo();
    long y1 = mirrored ? -square.y().lo() : square.y().hi();
    long lowest = down(x0 * s + y0 * c);
    long highest = up(x1 * s + y1 * c);
    long least = down(x0 * c - y1 * s);
    long most = up(x1 * c - y0 * s);
    List<Rectangle> strips = new ArrayList<>();
    for (long from = Length.floorTo(lowest, STRIP); from < highest; from += STRIP) {
      long lo = Math.max(from, lowest);
      long hi = Math.min(from + STRIP, highest);
      // Its sides are v·c − u·s = y0 or y1 and u·c + v·s = x0 or x1. Within the strip each bounds
      // u by its value at one end of the strip.
      long left = Math.max(least, Math.max(down((x0 - hi * s) / c), down((lo * c - y1) / s)));
      long right = Math.min(most, Math.min(up((hi * c - y0) / s), up((x1 - lo * s) / c)));
      if (left <= right) { // else only the rounding of an end reached into this strip
        Interval v = Interval.of(lo, hi);
        strips.add(new Rectangle(Interval.of(left, right).plus(pivot), mirrored ? v.negated() : v));
      }
    }
    return List.copyOf(strips);
  }

  /** The smallest rectangle that holds all strips. */
  public Rectangle hull() {
    List<Rectangle> strips = strips();
    Rectangle hull = strips.get(0);
    for (Rectangle strip : strips) {
      hull = new Rectangle(hull.x().hull(strip.x()), hull.y().hull(strip.y()));
    }
    return hull;
  }

  /**
   * The corners in order around it, for display alone: u as x and v as y, to the nearest
   * half-nanometre.
   */
  public List<Corner> corners() {
    long lo = square.x().lo() - pivot;
    long hi = square.x().hi() - pivot;
    Interval v = square.y();
    return List.of(corner(lo, v.lo()), corner(hi, v.lo()), corner(hi, v.hi()), corner(lo, v.hi()));
  }

  /** A corner in the vise frame. */
  public record Corner(long u, long v) {}

  private Corner corner(long u, long v) {
    double signed = degrees < 0 ? -sine() : sine();
    return new Corner(
        pivot + Math.round(u * cosine() - v * signed), Math.round(u * signed + v * cosine()));
  }

  /** Of the angle without its sign. */
  private double sine() {
    return StrictMath.sin(Math.toRadians(Math.abs(degrees)));
  }

  private double cosine() {
    return StrictMath.cos(Math.toRadians(degrees));
  }

  private static long down(double end) {
    return (long) Math.floor(end) - 1;
  }

  private static long up(double end) {
    return (long) Math.ceil(end) + 1;
  }
}
