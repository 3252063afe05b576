package org.jawroom.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** The parts of a vise without its bolts, in order of precedence, and its bolts. */
final class RefVise {
  private final Vise vise;
  private final Set<Column> missing;
  private final List<RefPart> parts = new ArrayList<>();
  private boolean complete;

  private RefVise(Vise vise, Set<Column> missing) {
    this.vise = vise;
    this.missing = missing;
  }

  /**
   * All parts that need no blank column; the blank columns that the others need are added to {@code
   * missing}.
   */
  static List<RefPart> body(Vise vise, Set<Column> missing) {
    RefVise reader = new RefVise(vise, missing);
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

  /** The box of one bolt with thread {@code d}. */
  static RefPart bolt(Vise vise, Bolt bolt, long d) {
    long u = bolt.u().length();
    long v = bolt.v().length();
    long halfU = (bolt.holeU().length() + d) / 2;
    long halfV = (bolt.holeV().length() + d) / 2;
    Span w = new Span(0, vise.boltGrip().orElse(vise.base().bedHeight()) + 2 * d);
    Span side = new Span(v - halfV, v + halfV);
    long tolerance = vise.provenance().tolerance();
    return new RefPart("bolts", u - halfU, u + halfU, u - halfU, u + halfU, side, w, w, tolerance);
  }

  /** The box of the clamp beside the base that takes up {@code v}. */
  static RefPart clamp(RefPart base, Span v) {
    return new RefPart(
        "clamps",
        base.loClosed(),
        base.hiClosed(),
        base.loOpen(),
        base.hiOpen(),
        v,
        base.cutting(),
        base.loading(),
        base.tolerance());
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
    long min = vise.opening().lo();
    long max = vise.opening().hi();
    Span jaw = around(0, Math.max(vise.jaws().width(), vise.jaws().platesWidth()));
    long bed = vise.base().bedHeight();
    Span height = new Span(bed, bed + Math.max(vise.jaws().height(), vise.jaws().platesHeight()));
    if (vise.jaws().both()) {
      complete = true;
      long t = known(Column.MOVING_JAW_THICKNESS, vise.jaws().movingThickness());
      always("rear jaw", -min / 2 - t, -min / 2, -max / 2 - t, -max / 2, jaw, height);
      always("front jaw", min / 2, min / 2 + t, max / 2, max / 2 + t, jaw, height);
    } else {
      complete = true;
      long fixed = known(Column.FIXED_JAW_THICKNESS, vise.jaws().fixedThickness());
      always("fixed jaw", -fixed, 0, -fixed, 0, jaw, height);
      complete = true;
      long t = known(Column.MOVING_JAW_THICKNESS, vise.jaws().movingThickness());
      always("moving jaw", min, min + t, max, max + t, jaw, height);
    }
    screws();
    handle();
  }

  private void base() {
    complete = true;
    long width = known(Column.BASE_WIDTH, vise.base().width());
    long rear = known(Column.REAR_REACH, vise.base().rearReach());
    long front = known(Column.FRONT_REACH, vise.base().frontReach());
    if (complete) {
      Span w = new Span(0, vise.base().bedHeight());
      always("base", -rear, front, -rear, front, around(0, width), w);
    }
  }

  private void screws() {
    Projection behind = vise.screw().rear();
    if (!behind.isNone()) {
      complete = true;
      long rear = known(Column.REAR_REACH, vise.base().rearReach());
      long closed = known(Column.REAR_PROJECTION_CLOSED, behind.closed());
      long open = known(Column.REAR_PROJECTION_OPEN, behind.open());
      long thick = known(Column.SCREW_DIAMETER, vise.screw().diameter());
      long axis = known(Column.SCREW_HEIGHT, vise.screw().height());
      always(
          "screw rear",
          -rear - closed,
          -rear,
          -rear - open,
          -rear,
          around(0, thick),
          around(axis, thick));
    }
    Projection before = vise.screw().front();
    if (!before.isNone()) {
      complete = true;
      long front = known(Column.FRONT_REACH, vise.base().frontReach());
      long closed = known(Column.FRONT_PROJECTION_CLOSED, before.closed());
      long open = known(Column.FRONT_PROJECTION_OPEN, before.open());
      long thick = known(Column.SCREW_DIAMETER, vise.screw().diameter());
      long axis = known(Column.SCREW_HEIGHT, vise.screw().height());
      always(
          "screw front",
          front,
          front + closed,
          front,
          front + open,
          around(0, thick),
          around(axis, thick));
    }
  }

  private void handle() {
    if (vise.handle().radius().isNone()) {
      return;
    }
    complete = true;
    long front = known(Column.FRONT_REACH, vise.base().frontReach());
    long closed = front + known(Column.FRONT_PROJECTION_CLOSED, vise.screw().front().closed());
    long open = front + known(Column.FRONT_PROJECTION_OPEN, vise.screw().front().open());
    long radius = known(Column.HANDLE_RADIUS, vise.handle().radius());
    long depth = known(Column.HANDLE_DEPTH, vise.handle().depth());
    long axis = known(Column.SCREW_HEIGHT, vise.screw().height());
    long lowest = axis - radius;
    if (!vise.handle().fullSwing()) {
      lowest = axis - known(Column.SCREW_DIAMETER, vise.screw().diameter()) / 2;
    }
    if (complete) {
      parts.add(
          new RefPart(
              "handle",
              closed,
              closed + depth,
              open,
              open + depth,
              around(0, 2 * radius),
              vise.handle().onWhileCutting() ? around(axis, 2 * radius) : null,
              new Span(lowest, axis + radius),
              vise.provenance().tolerance()));
    }
  }

  private void always(
      String name, long loClosed, long hiClosed, long loOpen, long hiOpen, Span v, Span w) {
    if (complete) {
      long tolerance = vise.provenance().tolerance();
      parts.add(new RefPart(name, loClosed, hiClosed, loOpen, hiOpen, v, w, w, tolerance));
    }
  }

  /** The length; 0 for {@code none}; a blank drops the part and records the column. */
  private long known(Column column, Dimension dimension) {
    if (dimension.isBlank()) {
      missing.add(column);
      complete = false;
      return 0;
    }
    return dimension.isNone() ? 0 : dimension.length();
  }

  /** middle ± width/2. */
  private static Span around(long middle, long width) {
    return new Span(middle - width / 2, middle + width / 2);
  }
}
