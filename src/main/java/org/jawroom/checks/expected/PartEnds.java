package org.jawroom.checks.expected;

import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Check;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/**
 * The readings behind each end of a part, by the table of section 4 of the model: every end is a
 * sum of readings with fixed signs. Axes are those of the vise frame: X for u, Y for v, Z for w.
 *
 * <p>Between closed and open, what the jaws make of the projections is a share of both readings. A
 * taller or wider jaw plate takes the jaw's place as the tables have it.
 */
final class PartEnds {
  private final Vise vise;
  private final Terms terms;
  private final long clampRoom;
  private final LinearForm opening;
  private final Rational share;

  /**
   * @param clampRoom the width of a clamp beside the base
   */
  PartEnds(Vise vise, Check.Opening opening, long clampRoom, Terms terms) {
    this.vise = vise;
    this.clampRoom = clampRoom;
    this.terms = terms;
    long range = vise.opening().length();
    long s = opening.on(vise);
    this.share = range == 0 ? Rational.ZERO : Rational.of(s - vise.opening().lo(), range);
    this.opening =
        opening.stated().isPresent()
            ? LinearForm.constant(s)
            : known(opening.open() ? "opening_max" : "opening_min", s);
  }

  /**
   * One end of a part.
   *
   * @param bolt for a bolt of a mount
   * @param high whether the end at the greater coordinate
   */
  LinearForm end(Part part, Optional<BoltPlace> bolt, Axis axis, boolean high) {
    if (part.row().isPresent()) {
      return ofRow(part.row().get(), axis, high);
    }
    return switch (axis) {
      case X -> alongU(part, bolt, high);
      case Y -> alongV(part, bolt, high);
      case Z -> alongW(part, bolt, high);
    };
  }

  private LinearForm alongU(Part part, Optional<BoltPlace> bolt, boolean high) {
    return switch (part.role()) {
      case BASE, CLAMP -> high ? frontEnd() : rearEnd();
      case FIXED_JAW ->
          high
              ? LinearForm.ZERO
              : reading("fixed_jaw_thickness", vise.jaws().fixedThickness()).negated();
      case MOVING_JAW -> high ? opening.plus(movingThickness()) : opening;
      case REAR_JAW ->
          high ? opening.half().negated() : opening.half().plus(movingThickness()).negated();
      case FRONT_JAW -> high ? opening.half().plus(movingThickness()) : opening.half();
      case SCREW_REAR -> high ? rearEnd() : rearEnd().minus(projection("rear", true));
      case SCREW_FRONT -> high ? frontEnd().plus(projection("front", true)) : frontEnd();
      case HANDLE ->
          high ? knob(true).plus(reading("handle_depth", vise.handle().depth())) : knob(false);
      case BOLT -> bolt.orElseThrow().alongU(terms, vise.name(), high);
      case BODY, ROW, WORK -> throw new IllegalArgumentException(part.name());
    };
  }

  private LinearForm alongV(Part part, Optional<BoltPlace> bolt, boolean high) {
    LinearForm half =
        switch (part.role()) {
          case BASE -> reading("base_width", vise.base().width()).half();
          case FIXED_JAW, MOVING_JAW, REAR_JAW, FRONT_JAW ->
              (vise.jaws().platesWidth() > vise.jaws().width()
                      ? known("plates_width", vise.jaws().platesWidth())
                      : known("jaw_width", vise.jaws().width()))
                  .half();
          case SCREW_REAR, SCREW_FRONT -> diameter().half();
          case HANDLE -> radius();
          case CLAMP -> clamp(part, high);
          case BOLT -> {
            LinearForm end = bolt.orElseThrow().alongV(terms, vise.name(), high);
            yield high ? end : end.negated();
          }
          case BODY, ROW, WORK -> throw new IllegalArgumentException(part.name());
        };
    return high ? half : half.negated();
  }

  /** Of a clamp's end along v, its distance from the middle toward +v (at the low end: −v). */
  private LinearForm clamp(Part part, boolean high) {
    LinearForm half = reading("base_width", vise.base().width()).half();
    boolean right = part.v().lo() >= 0;
    LinearForm outward = right == high ? half.plus(LinearForm.constant(clampRoom)) : half;
    return right == high ? outward : outward.negated();
  }

  private LinearForm alongW(Part part, Optional<BoltPlace> bolt, boolean high) {
    LinearForm bed = known("bed_height", vise.base().bedHeight());
    return switch (part.role()) {
      case BASE, CLAMP -> high ? bed : LinearForm.ZERO;
      case FIXED_JAW, MOVING_JAW, REAR_JAW, FRONT_JAW ->
          high
              ? bed.plus(
                  vise.jaws().platesHeight() > vise.jaws().height()
                      ? known("plates_height", vise.jaws().platesHeight())
                      : known("jaw_height", vise.jaws().height()))
              : bed;
      case SCREW_REAR, SCREW_FRONT ->
          high ? height().plus(diameter().half()) : height().minus(diameter().half());
      case HANDLE -> high ? height().plus(radius()) : height().minus(below(part));
      case BOLT -> {
        LinearForm grip =
            vise.boltGrip().isPresent() ? known("bolt_grip", vise.boltGrip().getAsLong()) : bed;
        yield high
            ? grip.plus(LinearForm.constant(2 * bolt.orElseThrow().thread()))
            : LinearForm.ZERO;
      }
      case BODY, ROW, WORK -> throw new IllegalArgumentException(part.name());
    };
  }

  /** How far the handle hangs below the screw's axis. */
  private LinearForm below(Part part) {
    Handle handle = vise.handle();
    return handle.fullSwing() || part.situation() == Situation.CUTTING
        ? radius()
        : diameter().half();
  }

  private LinearForm ofRow(VisePart row, Axis axis, boolean high) {
    String letter = axis == Axis.X ? "u" : axis == Axis.Y ? "v" : "w";
    String column = letter + (high ? "_max" : "_min");
    if (axis != Axis.X) {
      return ofRow(row, column, high ? end(row, axis).hi() : end(row, axis).lo());
    }
    long closed = high ? row.uClosed().hi() : row.uClosed().lo();
    long open = high ? row.uOpen().hi() : row.uOpen().lo();
    if (closed == open) {
      return ofRow(row, column + "_closed", closed);
    }
    if (vise.opening().length() == 0) {
      return (closed > open) == high
          ? ofRow(row, column + "_closed", closed)
          : ofRow(row, column + "_open", open);
    }
    return shared(ofRow(row, column + "_closed", closed), ofRow(row, column + "_open", open));
  }

  private static org.jawroom.geometry.Interval end(VisePart row, Axis axis) {
    return axis == Axis.Y ? row.v() : row.w();
  }

  private LinearForm ofRow(VisePart row, String column, long value) {
    return terms.placed(new Measurand("vise_parts", vise.name(), row.name(), column), value);
  }

  /**
   * What the screw sticks out.
   *
   * @param most which of the two, where the vise has a single opening: a part then holds both
   */
  private LinearForm projection(String end, boolean most) {
    Screw screw = vise.screw();
    Projection projection = end.equals("rear") ? screw.rear() : screw.front();
    LinearForm closed = reading(end + "_projection_closed", projection.closed());
    LinearForm open = reading(end + "_projection_open", projection.open());
    if (vise.opening().length() == 0) {
      return (terms.nominal(closed).compareTo(terms.nominal(open)) >= 0) == most ? closed : open;
    }
    return shared(closed, open);
  }

  private LinearForm shared(LinearForm closed, LinearForm open) {
    return closed.times(Rational.ONE.minus(share)).plus(open.times(share));
  }

  private LinearForm knob(boolean high) {
    return frontEnd().plus(projection("front", high));
  }

  private LinearForm rearEnd() {
    return reading("rear_reach", vise.base().rearReach()).negated();
  }

  private LinearForm frontEnd() {
    return reading("front_reach", vise.base().frontReach());
  }

  private LinearForm movingThickness() {
    return reading("moving_jaw_thickness", vise.jaws().movingThickness());
  }

  private LinearForm height() {
    return reading("screw_height", vise.screw().height());
  }

  private LinearForm diameter() {
    return reading("screw_diameter", vise.screw().diameter());
  }

  private LinearForm radius() {
    return reading("handle_radius", vise.handle().radius());
  }

  private LinearForm reading(String column, Dimension dimension) {
    return terms.reading(measurand(column), dimension);
  }

  private LinearForm known(String column, long value) {
    return terms.known(measurand(column), value);
  }

  private Measurand measurand(String column) {
    return new Measurand("vises", vise.name(), "", column);
  }
}
