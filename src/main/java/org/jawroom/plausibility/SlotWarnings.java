package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Length;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;
import org.jawroom.standards.TSlot;

/**
 * Warnings about slot widths and pitches that no published series has and that are not common
 * either. They are accepted, since such tables exist.
 */
final class SlotWarnings {

  /**
   * Throats outside the series for which T-nuts are common: 16, 20 and 27 mm and 5/8 in; common
   * practice, no source.
   */
  private static final List<Long> COMMON_THROATS =
      List.of(16 * Length.MM, 20 * Length.MM, 27 * Length.MM, 5 * Length.INCH / 8);

  /** How far a throat may be above its nominal width: H12 over 18 to 30 mm (ISO 286). */
  private static final long THROAT_TOLERANCE = 21 * Length.MM / 100;

  /** Inch tables have pitches of whole quarters of an inch; common practice, no source. */
  private static final long INCH_STEP = Length.INCH / 4;

  /** Half a step of the second decimal, to which pitches are written in inches. */
  private static final long INCH_ROUNDING = 5 * Length.INCH / 1000;

  private SlotWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    Slots slots = machine.slots();
    if (slots.width().isKnown() && !isWidth(slots.width().length())) {
      warnings.add(
          Warning.machine(
              Seriousness.UNUSUAL,
              machine.name(),
              "slot_width",
              SpokenLength.of(slots.width().length())
                  + " is in no published series (ISO 299, ASME B5.1M). Measure the slot's throat at"
                  + " the table top, not the bolt; if that is what it is, leave it"));
    }
    if (slots.needsPitch() && slots.pitch().isKnown() && !isPitch(slots.pitch().length())) {
      warnings.add(
          Warning.machine(
              Seriousness.UNUSUAL,
              machine.name(),
              "slot_pitch",
              SpokenLength.of(slots.pitch().length())
                  + " is not in the published series (BS 2485), nor a whole number of quarter"
                  + " inches. Measure from one edge of a slot to the same edge of the next; if that"
                  + " is what it is, leave it"));
    }
    return warnings;
  }

  private static boolean isWidth(long width) {
    return TSlot.metric(width).isPresent()
        || TSlot.isInchThroat(width)
        || COMMON_THROATS.stream()
            .anyMatch(throat -> throat <= width && width <= throat + THROAT_TOLERANCE);
  }

  private static boolean isPitch(long pitch) {
    long over = Math.floorMod(pitch, INCH_STEP);
    return TSlot.isPitch(pitch) || Math.min(over, INCH_STEP - over) <= INCH_ROUNDING;
  }
}
