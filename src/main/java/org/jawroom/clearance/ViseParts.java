package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Handle;
import org.jawroom.shop.Jaws;
import org.jawroom.shop.Projection;
import org.jawroom.shop.Screw;
import org.jawroom.shop.Vise;
import org.jawroom.shop.VisePart;

/**
 * The parts of a vise except its bolts. A part that needs a blank column is left out of both
 * situations and the column recorded.
 */
public final class ViseParts {
  private final Vise vise;
  private final Blanks blanks;
  private final List<Part> parts = new ArrayList<>();

  private ViseParts(Vise vise, Blanks blanks) {
    this.vise = vise;
    this.blanks = blanks;
  }

  /** The parts in order of rank. */
  public static List<Part> of(Vise vise, Blanks blanks) {
    ViseParts builder = new ViseParts(vise, blanks);
    if (vise.simple()) {
      builder.base();
      builder.jaws();
      builder.screw();
      builder.handle();
    }
    builder.rows();
    builder.parts.sort(Comparator.comparingInt(Part::rank));
    return List.copyOf(builder.parts);
  }

  private void base() {
    if (needs(vise.base().width(), Column.BASE_WIDTH)
        & needs(vise.base().rearReach(), Column.REAR_REACH)
        & needs(vise.base().frontReach(), Column.FRONT_REACH)) {
      Interval u = Interval.of(-rearReach(), frontReach());
      always(
          PartRole.BASE,
          constant(u),
          across(vise.base().width().length()),
          upTo(vise.base().bedHeight()));
    }
  }

  private void jaws() {
    Jaws jaws = vise.jaws();
    Interval v = across(jaws.widestWidth());
    Interval w = Interval.of(vise.base().bedHeight(), vise.top());
    long closed = vise.opening().lo();
    long open = vise.opening().hi();
    if (!jaws.both() && needs(jaws.fixedThickness(), Column.FIXED_JAW_THICKNESS)) {
      always(PartRole.FIXED_JAW, constant(Interval.of(-jaws.fixedThickness().length(), 0)), v, w);
    }
    if (needs(jaws.movingThickness(), Column.MOVING_JAW_THICKNESS)) {
      long thick = jaws.movingThickness().length();
      if (jaws.both()) {
        // Exact: openings as read are whole nanometres, so half of one is whole half-nanometres.
        Interval front = Interval.of(closed / 2, closed / 2 + thick);
        Interval frontOpen = Interval.of(open / 2, open / 2 + thick);
        always(PartRole.REAR_JAW, stretch(front.negated(), frontOpen.negated()), v, w);
        always(PartRole.FRONT_JAW, stretch(front, frontOpen), v, w);
      } else {
        Interval faceToBack = Interval.of(0, thick);
        always(PartRole.MOVING_JAW, stretch(faceToBack.plus(closed), faceToBack.plus(open)), v, w);
      }
    }
  }

  private void screw() {
    Screw screw = vise.screw();
    if (!screw.rear().isNone()
        && needs(vise.base().rearReach(), Column.REAR_REACH)
            & needs(screw.rear(), Column.REAR_PROJECTION_CLOSED, Column.REAR_PROJECTION_OPEN)
            & needsRound()) {
      Interval closed = Interval.of(-rearReach() - orZero(screw.rear().closed()), -rearReach());
      Interval open = Interval.of(-rearReach() - orZero(screw.rear().open()), -rearReach());
      always(PartRole.SCREW_REAR, stretch(closed, open), across(diameter()), round());
    }
    if (!screw.front().isNone()
        && needs(vise.base().frontReach(), Column.FRONT_REACH)
            & needs(screw.front(), Column.FRONT_PROJECTION_CLOSED, Column.FRONT_PROJECTION_OPEN)
            & needsRound()) {
      Interval closed = Interval.of(frontReach(), frontReach() + orZero(screw.front().closed()));
      Interval open = Interval.of(frontReach(), frontReach() + orZero(screw.front().open()));
      always(PartRole.SCREW_FRONT, stretch(closed, open), across(diameter()), round());
    }
  }

  private void handle() {
    Handle handle = vise.handle();
    Screw screw = vise.screw();
    if (handle.radius().isNone()) {
      return;
    }
    if (needs(handle.radius(), Column.HANDLE_RADIUS)
        & needs(handle.depth(), Column.HANDLE_DEPTH)
        & needs(vise.base().frontReach(), Column.FRONT_REACH)
        & needs(screw.front(), Column.FRONT_PROJECTION_CLOSED, Column.FRONT_PROJECTION_OPEN)
        & needs(screw.height(), Column.SCREW_HEIGHT)
        & (handle.fullSwing() || needs(screw.diameter(), Column.SCREW_DIAMETER))) {
      long radius = handle.radius().length();
      long axis = screw.height().length();
      Interval length = Interval.of(0, handle.depth().length());
      OpeningInterval u =
          stretch(
              length.plus(frontReach() + orZero(screw.front().closed())),
              length.plus(frontReach() + orZero(screw.front().open())));
      Interval v = Interval.around(0, radius);
      Interval hanging = Interval.around(axis, radius);
      // Worked over the top, it stays above the screw's underside; left on while cutting, it may
      // hang in any position.
      long lowest = handle.fullSwing() ? axis - radius : axis - screw.diameter().length() / 2;
      Interval worked = Interval.of(lowest, axis + radius);
      parts.add(Part.of(PartRole.HANDLE, Situation.LOADING, u, v, worked, tolerance()));
      if (handle.onWhileCutting()) {
        parts.add(Part.of(PartRole.HANDLE, Situation.CUTTING, u, v, hanging, tolerance()));
      }
    }
  }

  private void rows() {
    for (int i = 0; i < vise.parts().size(); i++) {
      VisePart row = vise.parts().get(i);
      OpeningInterval u = stretch(row.uClosed(), row.uOpen());
      for (Situation situation : Situation.values()) {
        if (situation.counts(row.when())) {
          parts.add(Part.of(row, i, situation, u, row.tolerance().orElse(tolerance())));
        }
      }
    }
  }

  private void always(PartRole role, OpeningInterval u, Interval v, Interval w) {
    for (Situation situation : Situation.values()) {
      parts.add(Part.of(role, situation, u, v, w, tolerance()));
    }
  }

  private boolean needs(Dimension dimension, Column column) {
    return blanks.given(dimension, column);
  }

  private boolean needs(Projection projection, Column closed, Column open) {
    return needs(projection.closed(), closed) & needs(projection.open(), open);
  }

  private boolean needsRound() {
    return needs(vise.screw().height(), Column.SCREW_HEIGHT)
        & needs(vise.screw().diameter(), Column.SCREW_DIAMETER);
  }

  /**
   * A single {@code none} of a pair of projections counts as 0: the screw is flush at that opening.
   */
  private static long orZero(Dimension projection) {
    return projection.isNone() ? 0 : projection.length();
  }

  private long rearReach() {
    return vise.base().rearReach().length();
  }

  private long frontReach() {
    return vise.base().frontReach().length();
  }

  private long diameter() {
    return vise.screw().diameter().length();
  }

  private Interval round() {
    return Interval.around(vise.screw().height().length(), diameter() / 2);
  }

  private long tolerance() {
    return vise.provenance().tolerance();
  }

  private OpeningInterval constant(Interval u) {
    return OpeningInterval.constant(u, vise.opening());
  }

  private OpeningInterval stretch(Interval closed, Interval open) {
    return new OpeningInterval(closed, open, vise.opening());
  }

  private static Interval across(long width) {
    return Interval.around(0, width / 2);
  }

  private static Interval upTo(long height) {
    return Interval.of(0, height);
  }
}
