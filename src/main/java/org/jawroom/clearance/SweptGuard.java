package org.jawroom.clearance;

import java.util.Optional;
import org.jawroom.geometry.Box;
import org.jawroom.shop.Axes;
import org.jawroom.shop.Guard;

/**
 * What a guard sweeps in one situation, in the table frame.
 *
 * @param guard which guard of the machine; empty: the table itself, which is held against few parts
 *     only
 * @param rank its place in the order of guards, by which equal margins are told apart; on one
 *     machine no two guards share it
 * @param moves the axes along which it moves against the table; z only where its height matters
 * @param clearance required by the guard itself or by the setting
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

  /** As reports call it. */
  public String name() {
    return guard.map(Guard::name).orElse(TABLE);
  }

  /** Whether it is the table itself. */
  public boolean table() {
    return guard.isEmpty();
  }

  /** Whether both are the same guard of one machine, be it in another situation. */
  public boolean isSameAs(SweptGuard other) {
    return rank == other.rank;
  }

  /** The same guard in the same situation, elsewhere. */
  SweptGuard at(Box box) {
    return new SweptGuard(guard, rank, moves, situation, box, clearance, tolerance);
  }
}
