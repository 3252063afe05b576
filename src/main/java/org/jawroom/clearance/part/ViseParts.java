package org.jawroom.clearance.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/**
 * The parts of a vise except its bolts. Where a reading is open, every face of a part lies
 * somewhere in an interval, since it is a sum of readings with fixed signs. At best a part that
 * needs a blank column is left out of both situations, and so is one whose values have no point in
 * common.
 */
public final class ViseParts {
  private static final Interval ZERO = Interval.of(0, 0);

  private final Vise vise;
  private final Certainty certainty;
  private final Blanks blanks;
  private final List<Part> parts = new ArrayList<>();

  private ViseParts(Vise vise, Certainty certainty, Blanks blanks) {
    this.vise = vise;
    this.certainty = certainty;
    this.blanks = blanks;
  }

  /** The parts at best, in order of rank. */
  public static List<Part> of(Vise vise, Blanks blanks) {
    return of(vise, Certainty.AT_BEST, blanks);
  }

  /**
   * The parts in order of rank.
   *
   * @param blanks receives the columns of open readings that they need
   */
  public static List<Part> of(Vise vise, Certainty certainty, Blanks blanks) {
    ViseParts builder = new ViseParts(vise, certainty, blanks);
    if (vise.simple()) {
      builder.base();
      builder.jaws();
      builder.screw();
      builder.handle();
    }
    builder.rows();
    builder.parts.sort(Comparator.comparingInt(Part::rank));
    return vise.swivel()
        .map(swivel -> TurnedParts.of(builder.parts, swivel))
        .orElseGet(() -> List.copyOf(builder.parts));
  }

  private void base() {
    if (needs(vise.base().width(), Column.BASE_WIDTH)
        & needs(vise.base().rearReach(), Column.REAR_REACH)
        & needs(vise.base().frontReach(), Column.FRONT_REACH)) {
      always(
          PartRole.BASE,
          constant(certainty.ends(rearEnd(), frontEnd())),
          around(ZERO, halved(Certainty.sizes(vise.base().width()))),
          upTo(vise.base().bedHeight()));
    }
  }

  private void jaws() {
    Jaws jaws = vise.jaws();
    Ends v = new Ends(-(jaws.widestWidth() / 2), jaws.widestWidth() / 2);
    Ends w = new Ends(vise.base().bedHeight(), vise.top());
    long closed = vise.opening().lo();
    long open = vise.opening().hi();
    if (!jaws.both() && needs(jaws.fixedThickness(), Column.FIXED_JAW_THICKNESS)) {
      Interval back = Certainty.sizes(jaws.fixedThickness()).negated();
      always(PartRole.FIXED_JAW, constant(certainty.ends(back, ZERO)), v, w);
    }
    if (needs(jaws.movingThickness(), Column.MOVING_JAW_THICKNESS)) {
      Interval thick = Certainty.sizes(jaws.movingThickness());
      if (jaws.both()) {
        // Exact: openings as read are whole nanometres, so half of one is whole half-nanometres.
        always(
            PartRole.REAR_JAW,
            stretch(
                certainty.ends(thick.plus(closed / 2).negated(), at(-(closed / 2))),
                certainty.ends(thick.plus(open / 2).negated(), at(-(open / 2)))),
            v,
            w);
        always(
            PartRole.FRONT_JAW,
            stretch(
                certainty.ends(at(closed / 2), thick.plus(closed / 2)),
                certainty.ends(at(open / 2), thick.plus(open / 2))),
            v,
            w);
      } else {
        always(
            PartRole.MOVING_JAW,
            stretch(
                certainty.ends(at(closed), thick.plus(closed)),
                certainty.ends(at(open), thick.plus(open))),
            v,
            w);
      }
    }
  }

  private void screw() {
    Screw screw = vise.screw();
    if (!screw.rear().isNone()
        && needs(vise.base().rearReach(), Column.REAR_REACH)
            & needs(screw.rear(), Column.REAR_PROJECTION_CLOSED, Column.REAR_PROJECTION_OPEN)
            & needsRound()) {
      Interval end = rearEnd();
      always(
          PartRole.SCREW_REAR,
          stretch(
              certainty.ends(end.sweptBy(orZero(screw.rear().closed()).negated()), end),
              certainty.ends(end.sweptBy(orZero(screw.rear().open()).negated()), end)),
          around(ZERO, halved(diameter())),
          around(height(), halved(diameter())));
    }
    if (!screw.front().isNone()
        && needs(vise.base().frontReach(), Column.FRONT_REACH)
            & needs(screw.front(), Column.FRONT_PROJECTION_CLOSED, Column.FRONT_PROJECTION_OPEN)
            & needsRound()) {
      Interval end = frontEnd();
      always(
          PartRole.SCREW_FRONT,
          stretch(
              certainty.ends(end, end.sweptBy(orZero(screw.front().closed()))),
              certainty.ends(end, end.sweptBy(orZero(screw.front().open())))),
          around(ZERO, halved(diameter())),
          around(height(), halved(diameter())));
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
      Interval radius = Certainty.sizes(handle.radius());
      Interval depth = Certainty.sizes(handle.depth());
      Interval closed = frontEnd().sweptBy(orZero(screw.front().closed()));
      Interval open = frontEnd().sweptBy(orZero(screw.front().open()));
      OpeningInterval u =
          stretch(
              certainty.ends(closed, closed.sweptBy(depth)),
              certainty.ends(open, open.sweptBy(depth)));
      Ends v = around(ZERO, radius);
      Ends hanging = around(height(), radius);
      // Worked over the top, it stays above the screw's underside; left on while cutting, it may
      // hang in any position.
      Interval lowest =
          height().sweptBy((handle.fullSwing() ? radius : halved(diameter())).negated());
      Ends worked = certainty.ends(lowest, height().sweptBy(radius));
      add(PartRole.HANDLE, Situation.LOADING, u, v, worked);
      if (handle.onWhileCutting()) {
        add(PartRole.HANDLE, Situation.CUTTING, u, v, hanging);
      }
    }
  }

  private void rows() {
    for (int i = 0; i < vise.parts().size(); i++) {
      VisePart row = vise.parts().get(i);
      OpeningInterval u = new OpeningInterval(row.uClosed(), row.uOpen(), vise.opening());
      for (Situation situation : Situation.values()) {
        if (situation.counts(row.when())) {
          parts.add(Part.of(row, i, situation, u, row.tolerance().orElse(tolerance())));
        }
      }
    }
  }

  private void always(PartRole role, OpeningInterval u, Ends v, Ends w) {
    for (Situation situation : Situation.values()) {
      add(role, situation, u, v, w);
    }
  }

  private void add(PartRole role, Situation situation, OpeningInterval u, Ends v, Ends w) {
    if (!v.isReversed() && !w.isReversed()) {
      parts.add(
          Part.of(
              role,
              situation,
              u,
              Interval.of(v.lo(), v.hi()),
              Interval.of(w.lo(), w.hi()),
              tolerance()));
    }
  }

  /** Whether a part that needs the reading is there; notes the column if the reading is open. */
  private boolean needs(Dimension dimension, Column column) {
    return blanks.given(dimension, column) || certainty == Certainty.AT_WORST;
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
  private static Interval orZero(Dimension projection) {
    return projection.isNone() ? ZERO : Certainty.sizes(projection);
  }

  private Interval rearEnd() {
    return Certainty.sizes(vise.base().rearReach()).negated();
  }

  private Interval frontEnd() {
    return Certainty.sizes(vise.base().frontReach());
  }

  private Interval height() {
    return Certainty.sizes(vise.screw().height());
  }

  private Interval diameter() {
    return Certainty.sizes(vise.screw().diameter());
  }

  private long tolerance() {
    return vise.provenance().tolerance();
  }

  private OpeningInterval constant(Ends u) {
    return new OpeningInterval(u, u, vise.opening());
  }

  private OpeningInterval stretch(Ends closed, Ends open) {
    return new OpeningInterval(closed, open, vise.opening());
  }

  /** The ends of what reaches {@code half} to either side of {@code middle}. */
  private Ends around(Interval middle, Interval half) {
    return certainty.ends(middle.sweptBy(half.negated()), middle.sweptBy(half));
  }

  /** Sizes as read are whole nanometres, so half of one is whole half-nanometres. */
  private static Interval halved(Interval size) {
    return Interval.of(size.lo() / 2, size.hi() / 2);
  }

  private static Interval at(long place) {
    return Interval.of(place, place);
  }

  private static Ends upTo(long height) {
    return new Ends(0, height);
  }
}
