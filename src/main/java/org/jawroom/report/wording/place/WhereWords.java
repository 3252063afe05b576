package org.jawroom.report.wording.place;

import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Where a part comes nearest to a guard, in the words of a person at the machine; never a bare
 * sign.
 */
public record WhereWords(PeopleUnit unit, Machine machine, Vise vise) {

  private static final String STANDING = "wherever the axes stand";

  /** {@code jaws closed, table all the way back}; {@code openings} is the range considered. */
  public String of(Limit limit, Interval openings) {
    // The strips of a turned part are the same at every opening, the part itself is not.
    String jaws =
        limit.part().outline().isPresent()
            ? "jaws " + at(JawEnd.CLOSED, openings) + ", then " + at(JawEnd.OPEN, openings)
            : jaws(limit.opening(), openings);
    return jaws + ", " + axes(limit);
  }

  private String jaws(JawEnd end, Interval openings) {
    return end == JawEnd.ANY ? "at any opening" : "jaws " + at(end, openings);
  }

  private String at(JawEnd end, Interval openings) {
    if (end == JawEnd.CLOSED) {
      return openings.lo() == vise.opening().lo()
          ? "closed"
          : "at " + unit.brief(openings.lo(), Rounding.UP);
    }
    return openings.hi() == vise.opening().hi()
        ? "fully open"
        : "at " + unit.brief(openings.hi(), Rounding.DOWN);
  }

  /** The part and the guard: {@code screw rear to rear cover}. */
  public static String pair(Limit limit) {
    return limit.part().name() + " to " + limit.guard().name();
  }

  private String axes(Limit limit) {
    Axis axis = limit.axis();
    boolean moves = limit.guard().moves().has(axis);
    boolean tableGoes = machine.tableMoves().has(axis);
    if (limit.situation() == Situation.LOADING) {
      return "loading, " + (moves ? loading(limit, tableGoes) : STANDING);
    }
    return moves ? cutting(limit, tableGoes) : STANDING;
  }

  private static String loading(Limit limit, boolean tableGoes) {
    if (limit.axis() == Axis.Z) {
      return tableGoes ? "table at its lowest" : "nose at its highest";
    }
    return (tableGoes ? "table" : limit.guard().name()) + " at the load position";
  }

  private String cutting(Limit limit, boolean tableGoes) {
    Axis axis = limit.axis();
    boolean guardIsLow = guardIsLow(limit);
    return switch (axis) {
      // A guard in front of the part is nearest when the table stands forward or, for a guard
      // carried with the spindle, when the guard has run back.
      case Y ->
          guardIsLow
              ? along(limit.guard().name(), tableGoes, "forward", "back")
              : along(limit.guard().name(), tableGoes, "back", "forward");
      case X ->
          guardIsLow
              ? along(limit.guard().name(), tableGoes, "left", "right")
              : along(limit.guard().name(), tableGoes, "right", "left");
      case Z ->
          guardIsLow
              ? (tableGoes ? "table at its lowest" : "nose at its highest")
              : (tableGoes ? "table as high" : "nose as low")
                  + " as the shortest tool lets it, nose "
                  + unit.brief(lowestNose(limit), Rounding.DOWN)
                  + " above the table";
    };
  }

  /**
   * The lowest height of the nose over the table, derived from the position of the guard's
   * underside.
   */
  private long lowestNose(Limit limit) {
    long underside = limit.guard().guard().orElseThrow().limits().z().lo();
    return limit.guardBox().z().lo() - underside;
  }

  private static String along(String guard, boolean tableGoes, String table, String other) {
    return tableGoes ? "table all the way " + table : guard + " run all the way " + other;
  }

  /**
   * Whether the guard lies on the low side of the part along the limiting axis (in front, to its
   * left, under it), or overlaps it least on that side.
   */
  public static boolean guardIsLow(Limit limit) {
    Interval guard = limit.guardBox().along(limit.axis());
    Interval part = limit.partBox().along(limit.axis());
    return part.lo() - guard.hi() >= guard.lo() - part.hi();
  }
}
