package org.jawroom.placement.set;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Whether a set of vises stands on a machine.
 *
 * @param least of the margins and of the gaps between neighbours less the spacing; empty unless it
 *     fits, and for a single vise for which nothing listed can be hit
 * @param stands from left to right (front to back for slots along y); empty unless it fits
 * @param hindrances what keeps it from fitting; empty unless it does not fit
 */
public record SetOutcome(
    ViseSet set,
    Machine machine,
    Fits fits,
    OptionalLong least,
    List<Stand> stands,
    List<Hindrance> hindrances) {
  public SetOutcome {
    stands = List.copyOf(stands);
    hindrances = List.copyOf(hindrances);
    if (stands.size() != (fits == Fits.YES ? set.count() : 0)) {
      throw new IllegalArgumentException(fits + " with " + stands.size() + " places");
    }
    if (hindrances.isEmpty() == (fits == Fits.NO)) {
      throw new IllegalArgumentException(fits + " with " + hindrances.size() + " hindrances");
    }
  }

  /** Whether it fits; unknown where open readings decide. */
  public enum Fits {
    YES,
    NO,
    UNKNOWN
  }

  /**
   * A vise of the set where it stands.
   *
   * @param pairing the vise alone on the machine
   * @param extent what its parts sweep along the slots where it stands, over the full opening range
   *     and in both situations
   * @param there details of the place, over the full opening range and without hand room
   * @param nextGap along the slots to the next vise; empty for the last
   * @param handRoom whether its handle has hand room there
   */
  public record Stand(
      SolvedPairing pairing,
      Interval extent,
      Inspection there,
      OptionalLong nextGap,
      boolean handRoom) {

    public Vise vise() {
      return pairing.outcome().vise();
    }

    public Recommendation place() {
      return there.place();
    }

    /** The pairing as if this were its place, {@code awkward} without hand room. */
    public Outcome placed() {
      return pairing
          .outcome()
          .at(
              handRoom ? Verdict.FITS : Verdict.AWKWARD,
              place(),
              Optional.of(vise().opening()),
              pairing.caveatsAt(place()),
              Optional.empty());
    }
  }

  /**
   * What keeps a set from fitting.
   *
   * @param vises the kinds that cannot stand there even alone; empty for {@link
   *     Hindrance.Kind#SIDE_BY_SIDE}
   */
  public record Hindrance(Kind kind, List<Vise> vises) {
    public Hindrance {
      vises = List.copyOf(vises);
    }

    /** The kinds, in order of precedence. */
    public enum Kind {
      /** Neither bolts nor clamps hold some of the vises. */
      NO_MOUNT,
      /** Some have no place over their full opening range, even alone. */
      NO_PLACE,
      /** Each stands alone, but there is not enough room side by side. */
      SIDE_BY_SIDE
    }
  }
}
