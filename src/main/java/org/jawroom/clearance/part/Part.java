package org.jawroom.clearance.part;

import java.util.Optional;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.shop.vise.VisePart;

/**
 * A part of a vise in one situation: a box in the vise frame whose u limits depend on the opening.
 *
 * @param row the row of {@code vise_parts} it comes from, if any; its role is then {@link
 *     PartRole#ROW} or {@link PartRole#HANDLE}
 * @param rank its position in the order of parts, which decides among equal margins
 * @param outline of what it helps to cover, if it is one of the strips of a turned part
 */
public record Part(
    PartRole role,
    Optional<VisePart> row,
    int rank,
    Situation situation,
    OpeningInterval u,
    Interval v,
    Interval w,
    long tolerance,
    Optional<TurnedRectangle> outline) {

  /** A part that does not come from a row of {@code vise_parts}. */
  public static Part of(
      PartRole role,
      Situation situation,
      OpeningInterval u,
      Interval v,
      Interval w,
      long tolerance) {
    return new Part(
        role, Optional.empty(), rank(role, 0), situation, u, v, w, tolerance, Optional.empty());
  }

  /**
   * A part from a row of {@code vise_parts}.
   *
   * @param index of the row among those of its vise
   */
  static Part of(VisePart row, int index, Situation situation, OpeningInterval u, long tolerance) {
    PartRole role = row.name().equals(VisePart.HANDLE) ? PartRole.HANDLE : PartRole.ROW;
    return new Part(
        role,
        Optional.of(row),
        rank(role, index),
        situation,
        u,
        row.v(),
        row.w(),
        tolerance,
        Optional.empty());
  }

  /** Roles rank in their order; rows keep their own order, even if one of them is the handle. */
  private static int rank(PartRole role, int index) {
    return switch (role) {
      case ROW -> PartRole.ROW.ordinal() + index;
      case WORK -> Integer.MAX_VALUE - 1;
      case BOLT, CLAMP -> Integer.MAX_VALUE;
      case BODY -> PartRole.BASE.ordinal();
      default -> role.ordinal();
    };
  }

  /** The name printed in reports. */
  public String name() {
    return row.map(VisePart::name).orElse(role.word());
  }

  /** Whether it counts as the handle. */
  public boolean handle() {
    return role == PartRole.HANDLE;
  }

  /** Whether both are the same part of one vise in the same situation. */
  public boolean isSameAs(Part other) {
    return role == other.role
        && row.equals(other.row)
        && situation == other.situation
        && outline.isPresent() == other.outline.isPresent();
  }

  /** The same as another thing. */
  Part as(PartRole other) {
    return new Part(other, row, rank(other, 0), situation, u, v, w, tolerance, outline);
  }

  /** One of the strips that cover it turned, at every opening. */
  Part strip(Rectangle strip, Optional<TurnedRectangle> of) {
    return new Part(
        role,
        row,
        rank,
        situation,
        OpeningInterval.constant(strip.x(), u.range()),
        strip.y(),
        w,
        tolerance,
        of);
  }

  /** A copy raised by {@code riser}. */
  public Part raised(long riser) {
    return new Part(role, row, rank, situation, u, v, w.plus(riser), tolerance, outline);
  }

  /** A copy that covers this part wherever it stands, up to {@code off} along u and along v. */
  public Part grown(long off) {
    return new Part(
        role, row, rank, situation, u.grown(off), v.grown(off, off), w, tolerance, outline);
  }

  /**
   * The box swept over {@code openings} with the vise frame's origin at that of the table frame.
   */
  public Box over(Interval openings, Orientation turn) {
    Interval swept = u.over(openings);
    return new Box(turn.x(swept, v), turn.y(swept, v), w);
  }
}
