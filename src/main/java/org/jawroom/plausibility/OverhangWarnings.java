package org.jawroom.plausibility;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Anchors;
import org.jawroom.placement.bolting.Footprint;
import org.jawroom.placement.bolting.Overhang;
import org.jawroom.placement.bolting.Slotted;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Vise;

/**
 * Vises whose base must hang far over a table's edge to be bolted down at all.
 *
 * <p>The rule: of all places where the bolts of some mount stand in slots, in any turn that vise
 * and machine allow, guards left aside, take the one where the base hangs least over an edge at the
 * end of its length. A warning names it if even there the base hangs over by more than a quarter of
 * its length. Bolts are taken to have no thickness, so that the overhang is never stated too large.
 * There is no warning where a dimension that the rule needs is blank, or where the bolts reach no
 * slots.
 */
final class OverhangWarnings {
  private static final long NO_THICKNESS = 0;

  private final Machine machine;

  /** Empty where a blank leaves the places of the slots open. */
  private final Optional<Slotted> slotted;

  /** Of one machine, with whatever vise. */
  OverhangWarnings(Machine machine) {
    this.machine = machine;
    this.slotted =
        machine.slots().placesKnown() ? Optional.of(Slotted.of(machine)) : Optional.empty();
  }

  Optional<Warning> of(Vise vise) {
    Optional<Interval> base = Footprint.baseAlongU(vise);
    if (slotted.isEmpty() || base.isEmpty()) {
      return Optional.empty();
    }
    OptionalLong least = least(vise, base.get(), slotted.get());
    if (least.isEmpty() || !isMuch(least.getAsLong(), base.get())) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.vise(
            vise.name(),
            "bolt_u",
            "on "
                + machine.name()
                + " at least "
                + SpokenLength.of(least.getAsLong())
                + " of its base, more than a quarter of its length, hangs over the table's edge wherever"
                + " it is bolted. Check bolt_u, the reaches and the slots"));
  }

  /** The least overhang, or the first that is not much; empty if no bolts reach slots. */
  private OptionalLong least(Vise vise, Interval base, Slotted slotted) {
    OptionalLong least = OptionalLong.empty();
    for (Orientation turn : vise.turns()) {
      if (machine.turns().contains(turn)) {
        for (Mount mount : vise.mounts()) {
          Optional<Strips> places =
              mount.isOpen()
                  ? Optional.empty()
                  : slotted.places(Anchors.ofBolts(mount, NO_THICKNESS), turn);
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
