package org.jawroom.clearance.guard;

import java.util.Optional;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Box;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;

/**
 * The swept box of a guard in one situation, in the table frame.
 *
 * @param guard the guard of the machine; empty: the table itself, which is checked against few
 *     parts only
 * @param rank its position in the order of guards, which decides among equal margins; unique per
 *     guard on one machine
 * @param moves the axes along which it moves against the table; z only if its height matters
 * @param clearance the guard's own required clearance or that of the settings
 */
public record SweptGuard(
    Optional<Guard> guard,
    int rank,
    Axes moves,
    Situation situation,
    Box box,
    long clearance,
    long tolerance) {

  /** The name of the guard that is the table itself. */
  public static final String TABLE = "table";

  /** The name printed in reports. */
  public String name() {
    return guard.map(Guard::name).orElse(TABLE);
  }

  /** Whether it is the table itself. */
  public boolean table() {
    return guard.isEmpty();
  }

  /** Whether both are the same guard of one machine, possibly in different situations. */
  public boolean isSameAs(SweptGuard other) {
    return rank == other.rank;
  }

  /** The same guard in the same situation with another box. */
  SweptGuard at(Box box) {
    return new SweptGuard(guard, rank, moves, situation, box, clearance, tolerance);
  }
}
