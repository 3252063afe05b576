package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Stretch;
import org.jawroom.geometry.Turn;

/**
 * What the parts of a vise sweep over one range of openings, in the vise frame, laid out for quick
 * reckoning: it serves every turn, place and machine.
 *
 * <p>Parts are of three {@link Kind}s, since what a guard asks of a part hangs on nothing else. Of
 * each kind it knows how far its parts reach all together, their tolerances added, for guards that
 * fill everything beyond a face.
 */
public final class SweptParts {
  private static final Comparator<Part> PRECEDENCE =
      Comparator.comparingInt(Part::rank).thenComparing(Part::situation);

  private final List<Part> parts;
  private final Interval openings;
  private final Kind[] kinds;
  private final Ends[] ends;
  private final Ends[][] reaches;

  private SweptParts(
      List<Part> parts, Interval openings, Kind[] kinds, Ends[] ends, Ends[][] reaches) {
    this.parts = parts;
    this.openings = openings;
    this.kinds = kinds;
    this.ends = ends;
    this.reaches = reaches;
  }

  /** The six limits of a box in the vise frame, and how far each of them may be off. */
  record Ends(long uLo, long uHi, long vLo, long vHi, long wLo, long wHi, long tolerance) {

    /** Reaches nowhere: no face is near it. */
    private static final Ends NONE =
        new Ends(
            Length.ENDLESS,
            -Length.ENDLESS,
            Length.ENDLESS,
            -Length.ENDLESS,
            Length.ENDLESS,
            -Length.ENDLESS,
            0);

    /** The lowest x with the vise standing at the origin. */
    long xLo(Turn turn) {
      return turn.uAxis() == Axis.X
          ? (turn.uSign() > 0 ? uLo : -uHi)
          : (turn.vSign() > 0 ? vLo : -vHi);
    }

    long xHi(Turn turn) {
      return turn.uAxis() == Axis.X
          ? (turn.uSign() > 0 ? uHi : -uLo)
          : (turn.vSign() > 0 ? vHi : -vLo);
    }

    long yLo(Turn turn) {
      return turn.uAxis() == Axis.Y
          ? (turn.uSign() > 0 ? uLo : -uHi)
          : (turn.vSign() > 0 ? vLo : -vHi);
    }

    long yHi(Turn turn) {
      return turn.uAxis() == Axis.Y
          ? (turn.uSign() > 0 ? uHi : -uLo)
          : (turn.vSign() > 0 ? vHi : -vLo);
    }

    private Ends hull(Ends other, long grown) {
      return new Ends(
          Math.min(uLo, other.uLo - grown),
          Math.max(uHi, other.uHi + grown),
          Math.min(vLo, other.vLo - grown),
          Math.max(vHi, other.vHi + grown),
          Math.min(wLo, other.wLo - grown),
          Math.max(wHi, other.wHi + grown),
          0);
    }
  }

  public static SweptParts of(List<Part> parts, Interval openings) {
    List<Part> sorted = new ArrayList<>(parts);
    sorted.sort(PRECEDENCE);
    Ends[] ends = new Ends[sorted.size()];
    for (int i = 0; i < ends.length; i++) {
      Interval u = sorted.get(i).u().over(openings);
      ends[i] = ends(sorted.get(i), u.lo(), u.hi());
    }
    return of(sorted, openings, ends);
  }

  private static SweptParts of(List<Part> sorted, Interval openings, Ends[] ends) {
    Kind[] kinds = new Kind[ends.length];
    Ends[][] reaches = {{Ends.NONE, Ends.NONE, Ends.NONE}, {Ends.NONE, Ends.NONE, Ends.NONE}};
    for (int i = 0; i < ends.length; i++) {
      kinds[i] = Kind.of(sorted.get(i));
      int kind = kinds[i].ordinal();
      reaches[0][kind] = reaches[0][kind].hull(ends[i], 0);
      reaches[1][kind] = reaches[1][kind].hull(ends[i], ends[i].tolerance());
    }
    return new SweptParts(List.copyOf(sorted), openings, kinds, ends, reaches);
  }

  /** The same and these. */
  public SweptParts with(List<Part> more) {
    List<Part> all = new ArrayList<>(parts);
    all.addAll(more);
    return of(all, openings);
  }

  /** The same parts over another range of openings. */
  public SweptParts over(Interval range) {
    return range == openings || range.equals(openings) ? this : of(parts, range);
  }

  /**
   * A bound from above, over every opening of the range at once: each part shrunk to what it covers
   * at all openings, whose limits along u may then stand in the wrong order. A place that is not
   * clear even so is clear at no opening.
   */
  public SweptParts core() {
    Ends[] shrunk = new Ends[ends.length];
    for (int i = 0; i < shrunk.length; i++) {
      Stretch u = parts.get(i).u();
      shrunk[i] =
          u.isConstant()
              ? ends[i]
              : ends(
                  parts.get(i),
                  Math.max(u.lo(openings.lo()), u.lo(openings.hi())),
                  Math.min(u.hi(openings.lo()), u.hi(openings.hi())));
    }
    return of(parts, openings, shrunk);
  }

  /** The parts, by rank and then by situation. */
  public List<Part> parts() {
    return parts;
  }

  public Interval openings() {
    return openings;
  }

  int count() {
    return ends.length;
  }

  Ends ends(int i) {
    return ends[i];
  }

  Kind kind(int i) {
    return kinds[i];
  }

  /** How far the parts of a kind reach, with their tolerances or without. */
  Ends reach(Kind kind, boolean withTolerance) {
    return reaches[withTolerance ? 1 : 0][kind.ordinal()];
  }

  private static Ends ends(Part part, long uLo, long uHi) {
    return new Ends(
        uLo, uHi, part.v().lo(), part.v().hi(), part.w().lo(), part.w().hi(), part.tolerance());
  }
}
