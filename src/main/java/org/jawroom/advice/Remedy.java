package org.jawroom.advice;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.search.Roomiest;

/**
 * One change that alone makes a pairing fit.
 *
 * @param guard the guard moved, for {@link RemedyKind#MOVE}; else empty
 * @param way which way it is moved; empty for other kinds
 * @param amount the least that serves, half-nanometres, a whole multiple of 0.01 mm; empty where
 *     the change has none
 * @param then the roomiest place after the change: its turn is the one to use for {@link
 *     RemedyKind#TURN}
 */
public record Remedy(
    RemedyKind kind, String guard, Optional<Direction> way, OptionalLong amount, Roomiest then) {

  /** As {@code remedies.csv} tells it: {@code move door}. */
  public String name() {
    return guard.isEmpty() ? kind.code() : kind.code() + " " + guard;
  }

  /** The turn in which it then stands. */
  public Orientation turn() {
    return then.handleTo();
  }
}
