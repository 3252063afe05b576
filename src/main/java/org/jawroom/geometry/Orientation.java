package org.jawroom.geometry;

import java.util.List;
import java.util.Locale;

/**
 * The turn of a vise on the table, named by the direction of its handle.
 *
 * <p>The vise frame has u from the fixed jaw toward the handle, w up and v = w × u.
 *
 * <table>
 *   <caption>Vise axes in the table frame</caption>
 *   <tr><th>turn</th><th>u</th><th>v</th></tr>
 *   <tr><td>front</td><td>−Y</td><td>+X</td></tr>
 *   <tr><td>right</td><td>+X</td><td>+Y</td></tr>
 *   <tr><td>rear</td><td>+Y</td><td>−X</td></tr>
 *   <tr><td>left</td><td>−X</td><td>−Y</td></tr>
 * </table>
 *
 * The order of the constants is the order of preference among equal candidates.
 */
public enum Orientation {
  FRONT(Axis.Y, -1, 1),
  RIGHT(Axis.X, 1, 1),
  REAR(Axis.Y, 1, -1),
  LEFT(Axis.X, -1, -1);

  /** All turns in order of preference, without allocating an array. */
  public static final List<Orientation> ALL = List.of(values());

  private final String word = name().toLowerCase(Locale.ROOT);
  private final Axis uAxis;
  private final int uSign;
  private final int vSign;

  Orientation(Axis uAxis, int uSign, int vSign) {
    this.uAxis = uAxis;
    this.uSign = uSign;
    this.vSign = vSign;
  }

  /** The table axis parallel to u, along which the jaws open. */
  public Axis uAxis() {
    return uAxis;
  }

  /** +1 if u points in the positive direction of {@link #uAxis}, else −1. */
  public int uSign() {
    return uSign;
  }

  /** +1 if v points in the positive direction of its table axis, else −1. */
  public int vSign() {
    return vSign;
  }

  /** The table x of the vise-frame point (u, v) for a vise at the origin. */
  public long x(long u, long v) {
    return uAxis == Axis.X ? uSign * u : vSign * v;
  }

  /** The table y of the vise-frame point (u, v) for a vise at the origin. */
  public long y(long u, long v) {
    return uAxis == Axis.Y ? uSign * u : vSign * v;
  }

  /** The table x interval of a vise-frame rectangle for a vise at the origin. */
  public Interval x(Interval u, Interval v) {
    return uAxis == Axis.X ? signed(uSign, u) : signed(vSign, v);
  }

  /** The table y interval of a vise-frame rectangle for a vise at the origin. */
  public Interval y(Interval u, Interval v) {
    return uAxis == Axis.Y ? signed(uSign, u) : signed(vSign, v);
  }

  /** The u interval of a table-plane rectangle for a vise at the origin. */
  public Interval u(Interval x, Interval y) {
    return signed(uSign, uAxis == Axis.X ? x : y);
  }

  /** The v interval of a table-plane rectangle for a vise at the origin. */
  public Interval v(Interval x, Interval y) {
    return signed(vSign, uAxis == Axis.X ? y : x);
  }

  /** The word that tables and reports use. */
  public String word() {
    return word;
  }

  private static Interval signed(int sign, Interval interval) {
    return sign > 0 ? interval : interval.negated();
  }
}
