package org.jawroom.shop;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.Require;
import org.jawroom.shop.vise.Vise;

/**
 * A gap measured on the machine, between a part of a vise as it stands there and a guard. Lengths
 * in half-nanometres.
 *
 * @param fromLeft the measure from the table's left edge by which a setup card says where the vise
 *     stands, {@code fromFront} from its front edge; negative where it hangs over
 * @param part the name of the part
 * @param guard the guard; empty: the table itself
 * @param opening between the jaws
 * @param whileCutting whether the axes stand where cutting brings the two nearest; else at the load
 *     position
 * @param axis along which it was measured; empty: the one that limits
 * @param found the gap found
 * @param provenance of each of the three measures
 */
public record Check(
    Machine machine,
    Vise vise,
    Orientation handleTo,
    long fromLeft,
    long fromFront,
    String part,
    Optional<Guard> guard,
    Opening opening,
    boolean whileCutting,
    Optional<Axis> axis,
    long found,
    Provenance provenance) {

  /**
   * How far the jaws stood open.
   *
   * @param stated the length stated; empty: closed or open
   * @param open whether they stood fully open; false if stated
   */
  public record Opening(OptionalLong stated, boolean open) {
    public static final Opening CLOSED = new Opening(OptionalLong.empty(), false);
    public static final Opening OPEN = new Opening(OptionalLong.empty(), true);

    public static Opening of(long length) {
      return new Opening(OptionalLong.of(length), false);
    }

    /** The opening of a vise. */
    public long on(Vise vise) {
      return stated.orElse(open ? vise.opening().hi() : vise.opening().lo());
    }
  }

  /** Whether the other check was made with the same vise on the same machine. */
  public boolean isOfSamePairing(Check other) {
    return machine.name().equals(other.machine.name()) && vise.name().equals(other.vise.name());
  }

  public Check {
    Require.named("part", part);
  }

  /**
   * Whether the gap found is smaller than the clearance required from the guard; touching is not.
   *
   * @param clearance required from guards without one of their own
   */
  public boolean isBelow(long clearance) {
    return found < guard.map(Guard::clearance).orElse(OptionalLong.empty()).orElse(clearance);
  }
}
