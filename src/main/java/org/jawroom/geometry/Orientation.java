package org.jawroom.geometry;

import java.util.List;

/**
 * How a vise stands on the table, named by where its handle points.
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
 * <p>The order of the constants is the order of preference among equals.
 */
public enum Orientation {
  FRONT(Axis.Y, -1, 1),
  RIGHT(Axis.X, 1, 1),
  REAR(Axis.Y, 1, -1),
  LEFT(Axis.X, -1, -1);

  /** All of them, in the order of preference; not a new array each time. */
  public static final List<Orientation> ALL = List.of(values());

  private final Axis uAxis;
  private final int uSign;
  private final int vSign;

  Orientation(Axis uAxis, int uSign, int vSign) {
    this.uAxis = uAxis;
    this.uSign = uSign;
    this.vSign = vSign;
  }

  /** The table axis along which the jaws open. */
  public Axis uAxis() {
    return uAxis;
  }

  /** +1 if u points the way of {@link #uAxis}, −1 if against it. */
  public int uSign() {
    return uSign;
  }

  /** +1 if v points up its axis, −1 if against it. */
  public int vSign() {
    return vSign;
  }

  /** The x of the vise-frame point (u, v), the vise standing at the origin. */
  public long x(long u, long v) {
    return uAxis == Axis.X ? uSign * u : vSign * v;
  }

  /** The y of the vise-frame point (u, v), the vise standing at the origin. */
  public long y(long u, long v) {
    return uAxis == Axis.Y ? uSign * u : vSign * v;
  }

  /** The interval along x of a box of the vise frame. */
  public Interval x(Interval u, Interval v) {
    return uAxis == Axis.X ? signed(uSign, u) : signed(vSign, v);
  }

  /** The interval along y of a box of the vise frame. */
  public Interval y(Interval u, Interval v) {
    return uAxis == Axis.Y ? signed(uSign, u) : signed(vSign, v);
  }

  /** The interval along u of what stands so in the table's plane, seen from the origin. */
  public Interval u(Interval x, Interval y) {
    return signed(uSign, uAxis == Axis.X ? x : y);
  }

  /** The interval along v of what stands so in the table's plane, seen from the origin. */
  public Interval v(Interval x, Interval y) {
    return signed(vSign, uAxis == Axis.X ? y : x);
  }

  /** The word that tables and reports use. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  private static Interval signed(int sign, Interval interval) {
    return sign > 0 ? interval : interval.negated();
  }
}
