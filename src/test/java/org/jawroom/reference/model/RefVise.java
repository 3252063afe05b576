package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** The parts of a vise without its bolts, in order of precedence, and its bolts. */
public final class RefVise {
  private static final Span NOTHING = new Span(0, 0);

  private final Vise vise;
  private final RefLevel level;
  private final Set<Column> missing;
  private final List<RefPart> parts = new ArrayList<>();
  private boolean complete;

  private RefVise(Vise vise, RefLevel level, Set<Column> missing) {
    this.vise = vise;
    this.level = level;
    this.missing = missing;
  }

  /**
   * All parts; at best, without those that need a blank column. The open readings that any of them
   * needs are added to {@code missing}.
   */
  public static List<RefPart> body(Vise vise, RefLevel level, Set<Column> missing) {
    RefVise reader = new RefVise(vise, level, missing);
    if (vise.simple()) {
      reader.simpleBody();
    }
    for (VisePart row : vise.parts()) {
      if (row.name().equals("handle")) {
        reader.parts.add(reader.fromRow(row));
      }
    }
    for (VisePart row : vise.parts()) {
      if (!row.name().equals("handle")) {
        reader.parts.add(reader.fromRow(row));
      }
    }
    return reader.parts;
  }

  /**
   * The box of one bolt with thread {@code d}.
   *
   * @param readings u, v, and the sizes of its hole along u and along v
   */
  static RefPart bolt(Vise vise, RefLevel level, List<Span> readings, long d) {
    Span thread = new Span(d, d);
    Span halfU = readings.get(2).plus(thread).halves(1);
    Span halfV = readings.get(3).plus(thread).halves(1);
    Span u = level.box(readings.get(0).plus(halfU.negated()), readings.get(0).plus(halfU));
    Span v = level.box(readings.get(1).plus(halfV.negated()), readings.get(1).plus(halfV));
    Span w = new Span(0, vise.boltGrip().orElse(vise.base().bedHeight()) + 2 * d);
    long tolerance = vise.provenance().tolerance();
    return new RefPart("bolts", u.lo(), u.hi(), u.lo(), u.hi(), v, w, w, tolerance);
  }

  /** The box of the clamp beside the base that takes up {@code v}. */
  static RefPart clamp(Vise vise, Span u, Span v) {
    Span w = new Span(0, vise.base().bedHeight());
    long tolerance = vise.provenance().tolerance();
    return new RefPart("clamps", u.lo(), u.hi(), u.lo(), u.hi(), v, w, w, tolerance);
  }

  private RefPart fromRow(VisePart row) {
    Span w = new Span(row.w().lo(), row.w().hi());
    return new RefPart(
        row.name(),
        row.uClosed().lo(),
        row.uClosed().hi(),
        row.uOpen().lo(),
        row.uOpen().hi(),
        new Span(row.v().lo(), row.v().hi()),
        row.when().countsWhileCutting() ? w : null,
        row.when().countsWhileLoading() ? w : null,
        row.tolerance().orElse(vise.provenance().tolerance()));
  }

  private void simpleBody() {
    base();
    Span min = exactly(vise.opening().lo());
    Span max = exactly(vise.opening().hi());
    Span jaw = around(NOTHING, exactly(Math.max(vise.jaws().width(), vise.jaws().platesWidth())));
    long bed = vise.base().bedHeight();
    Span height = new Span(bed, bed + Math.max(vise.jaws().height(), vise.jaws().platesHeight()));
    if (vise.jaws().both()) {
      complete = true;
      Span t = known(Column.MOVING_JAW_THICKNESS, vise.jaws().movingThickness());
      Span closed = min.halves(1);
      Span open = max.halves(1);
      Span farClosed = closed.plus(t);
      Span farOpen = open.plus(t);
      always(
          "rear jaw",
          level.box(farClosed.negated(), closed.negated()),
          level.box(farOpen.negated(), open.negated()),
          jaw,
          height);
      always("front jaw", level.box(closed, farClosed), level.box(open, farOpen), jaw, height);
    } else {
      complete = true;
      Span fixed = known(Column.FIXED_JAW_THICKNESS, vise.jaws().fixedThickness());
      always("fixed jaw", level.box(fixed.negated(), NOTHING), jaw, height);
      complete = true;
      Span t = known(Column.MOVING_JAW_THICKNESS, vise.jaws().movingThickness());
      always("moving jaw", level.box(min, min.plus(t)), level.box(max, max.plus(t)), jaw, height);
    }
    screws();
    handle();
  }

  private void base() {
    complete = true;
    Span width = known(Column.BASE_WIDTH, vise.base().width());
    Span rear = known(Column.REAR_REACH, vise.base().rearReach());
    Span front = known(Column.FRONT_REACH, vise.base().frontReach());
    Span w = new Span(0, vise.base().bedHeight());
    always("base", level.box(rear.negated(), front), around(NOTHING, width), w);
  }

  private void screws() {
    Projection behind = vise.screw().rear();
    if (!behind.isNone()) {
      complete = true;
      Span end = known(Column.REAR_REACH, vise.base().rearReach()).negated();
      Span closed = known(Column.REAR_PROJECTION_CLOSED, behind.closed());
      Span open = known(Column.REAR_PROJECTION_OPEN, behind.open());
      screw(
          "screw rear",
          level.box(end.plus(closed.negated()), end),
          level.box(end.plus(open.negated()), end));
    }
    Projection before = vise.screw().front();
    if (!before.isNone()) {
      complete = true;
      Span end = known(Column.FRONT_REACH, vise.base().frontReach());
      Span closed = known(Column.FRONT_PROJECTION_CLOSED, before.closed());
      Span open = known(Column.FRONT_PROJECTION_OPEN, before.open());
      screw("screw front", level.box(end, end.plus(closed)), level.box(end, end.plus(open)));
    }
  }

  private void screw(String name, Span closed, Span open) {
    Span thick = known(Column.SCREW_DIAMETER, vise.screw().diameter());
    Span axis = known(Column.SCREW_HEIGHT, vise.screw().height());
    always(name, closed, open, around(NOTHING, thick), around(axis, thick));
  }

  private void handle() {
    if (vise.handle().radius().isNone()) {
      return;
    }
    complete = true;
    Span front = known(Column.FRONT_REACH, vise.base().frontReach());
    Span closed = front.plus(known(Column.FRONT_PROJECTION_CLOSED, vise.screw().front().closed()));
    Span open = front.plus(known(Column.FRONT_PROJECTION_OPEN, vise.screw().front().open()));
    Span radius = known(Column.HANDLE_RADIUS, vise.handle().radius());
    Span depth = known(Column.HANDLE_DEPTH, vise.handle().depth());
    Span axis = known(Column.SCREW_HEIGHT, vise.screw().height());
    Span lowest = axis.plus(radius.negated());
    if (!vise.handle().fullSwing()) {
      Span thick = known(Column.SCREW_DIAMETER, vise.screw().diameter());
      lowest = axis.plus(thick.halves(-1));
    }
    if (complete) {
      Span uClosed = level.box(closed, closed.plus(depth));
      Span uOpen = level.box(open, open.plus(depth));
      Span all = around(axis, radius.halves(4));
      parts.add(
          new RefPart(
              "handle",
              uClosed.lo(),
              uClosed.hi(),
              uOpen.lo(),
              uOpen.hi(),
              around(NOTHING, radius.halves(4)),
              vise.handle().onWhileCutting() ? all : null,
              level.box(lowest, axis.plus(radius)),
              vise.provenance().tolerance()));
    }
  }

  private void always(String name, Span u, Span v, Span w) {
    always(name, u, u, v, w);
  }

  private void always(String name, Span closed, Span open, Span v, Span w) {
    if (complete) {
      long tolerance = vise.provenance().tolerance();
      parts.add(
          new RefPart(name, closed.lo(), closed.hi(), open.lo(), open.hi(), v, w, w, tolerance));
    }
  }

  /**
   * The values of a reading; 0 for {@code none}. An open one is recorded; at best, a blank drops
   * the part.
   */
  private Span known(Column column, Dimension dimension) {
    if (dimension.isNone()) {
      return NOTHING;
    }
    if (dimension.isOpen()) {
      missing.add(column);
    }
    if (dimension.isBlank() && level == RefLevel.BEST) {
      complete = false;
      return NOTHING;
    }
    return RefLevel.values(dimension, 0);
  }

  private static Span exactly(long length) {
    return new Span(length, length);
  }

  /** middle ± width/2. */
  private Span around(Span middle, Span width) {
    return level.box(middle.plus(width.halves(-1)), middle.plus(width.halves(1)));
  }
}
