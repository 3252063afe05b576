package org.jawroom.plausibility;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Footprint;
import org.jawroom.placement.bolting.Overhang;
import org.jawroom.placement.bolting.slot.Anchors;
import org.jawroom.placement.bolting.slot.Slotted;
import org.jawroom.placement.space.Strips;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/**
 * Warnings about vises whose base hangs far over a table's edge wherever they are bolted, on every
 * machine whose slots their bolts reach. On a single machine it may just be too large a vise, which
 * its verdict shows; on all of them a reading is probably wrong.
 *
 * <p>The overhang is the least over all places where the bolts of some mount stand in slots, in any
 * turn that vise and machine allow, guards ignored; only edges at the ends of the base's length
 * count. It is much if it exceeds a quarter of the base's length. Bolts are taken to have no
 * thickness, so that the overhang is never stated too large. A machine counts neither way where a
 * dimension needed is blank, or where the bolts reach no slots.
 */
final class OverhangWarnings {
  static final String COLUMN = "bolt_u";

  private static final long NO_THICKNESS = 0;

  private final Machine machine;

  /** Empty where a blank leaves the places of the slots open. */
  private final Optional<Slotted> slotted;

  /** For one machine, with any vise. */
  OverhangWarnings(Machine machine) {
    this.machine = machine;
    this.slotted =
        machine.slots().placesKnown() ? Optional.of(Slotted.of(machine)) : Optional.empty();
  }

  static Optional<Warning> of(List<OverhangWarnings> machines, Vise vise) {
    Optional<Interval> base = Footprint.baseAlongU(vise);
    if (base.isEmpty()) {
      return Optional.empty();
    }
    OptionalLong leastOfAll = OptionalLong.empty();
    String where = "";
    for (OverhangWarnings one : machines) {
      OptionalLong least = one.least(vise, base.get());
      if (least.isPresent()) {
        if (!isMuch(least.getAsLong(), base.get())) {
          return Optional.empty();
        }
        if (least.getAsLong() < leastOfAll.orElse(Long.MAX_VALUE)) {
          leastOfAll = least;
          where = one.machine.name();
        }
      }
    }
    return leastOfAll.isEmpty()
        ? Optional.empty()
        : Optional.of(warning(vise, leastOfAll.getAsLong(), where));
  }

  private static Warning warning(Vise vise, long least, String where) {
    return Warning.vise(
        Seriousness.WRONG,
        vise.name(),
        COLUMN,
        "more than a quarter of its base hangs over the table's edge wherever it is bolted on any"
            + " machine, at least "
            + SpokenLength.of(least)
            + ", on "
            + where
            + ". Check bolt_u, the reaches and the slots");
  }

  /** The least overhang, or the first that is not much; empty if no bolts reach slots. */
  private OptionalLong least(Vise vise, Interval base) {
    if (slotted.isEmpty()) {
      return OptionalLong.empty();
    }
    OptionalLong least = OptionalLong.empty();
    for (Orientation turn : vise.turns()) {
      if (machine.turns().contains(turn)) {
        for (Mount mount : vise.mounts()) {
          Optional<Strips> places =
              mount.isOpen()
                  ? Optional.empty()
                  : slotted.get().places(Anchors.ofBolts(mount, NO_THICKNESS), turn);
          if (places.isPresent()) {
            long here = Overhang.leastEndwise(machine, base, turn, places.get());
            if (!isMuch(here, base)) {
              return OptionalLong.of(here);
            }
            least = OptionalLong.of(Math.min(here, least.orElse(here)));
          }
        }
      }
    }
    return least;
  }

  private static boolean isMuch(long overhang, Interval base) {
    return 4 * overhang > base.length();
  }
}
