package org.jawroom.plausibility;

import static org.jawroom.standards.TSlot.isInchThroat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Slots;
import org.jawroom.standards.TSlot;

/** Slot widths and pitches off the published series. They are accepted: such tables exist. */
final class SlotWarnings {
  private SlotWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    Slots slots = machine.slots();
    if (slots.width().isKnown()) {
      long width = slots.width().length();
      if (TSlot.metric(width).isEmpty() && !isInchThroat(width)) {
        warnings.add(
            Warning.machine(
                machine.name(),
                "slot_width",
                SpokenLength.of(width)
                    + " is in no published series (ISO 299, ASME B5.1M). Measure the slot's throat at"
                    + " the table top, not the bolt; if that is what it is, leave it"));
      }
    }
    if (slots.needsPitch() && slots.pitch().isKnown()) {
      pitch(machine.name(), slots.width(), slots.pitch().length()).ifPresent(warnings::add);
    }
    return warnings;
  }

  private static Optional<Warning> pitch(String machine, Dimension width, long pitch) {
    if (width.isKnown() && isInchThroat(width.length())) {
      return Optional.empty();
    }
    Optional<TSlot> row = width.isKnown() ? TSlot.metric(width.length()) : Optional.empty();
    boolean published = row.map(r -> r.hasPitch(pitch)).orElseGet(() -> TSlot.isPitch(pitch));
    if (published) {
      return Optional.empty();
    }
    String series = row.map(r -> " for a slot of " + SpokenLength.mm(r.width())).orElse("");
    return Optional.of(
        Warning.machine(
            machine,
            "slot_pitch",
            SpokenLength.of(pitch)
                + " is not in the published series"
                + series
                + " (BS 2485). Measure from one edge of a slot to the same edge of the next; if that is"
                + " what it is, leave it"));
  }
}
