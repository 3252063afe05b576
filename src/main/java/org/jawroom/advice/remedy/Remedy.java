package org.jawroom.advice.remedy;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.shop.machine.Guard;

/**
 * A single change that makes a pairing fit.
 *
 * @param guard the guard moved, for {@link RemedyKind#MOVE}; else empty
 * @param way the direction in which it is moved; empty for other kinds
 * @param amount the least amount that serves, half-nanometres, a whole multiple of 0.01 mm; empty
 *     if the change has none
 * @param then the verdict after the change: {@code fits} or {@code awkward}
 * @param place the roomiest placement after the change; for {@link RemedyKind#TURN} its turn is the
 *     one to use
 */
public record Remedy(
    RemedyKind kind,
    Optional<Guard> guard,
    Optional<Direction> way,
    OptionalLong amount,
    Verdict then,
    Roomiest place) {

  /** The name written to {@code remedies.csv}: {@code move door}. */
  public String name() {
    return guard.map(moved -> kind.code() + " " + moved.name()).orElse(kind.code());
  }

  /** The turn of the placement after the change. */
  public Orientation turn() {
    return place.handleTo();
  }
}
