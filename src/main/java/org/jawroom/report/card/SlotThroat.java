package org.jawroom.report.card;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;

/**
 * How deep the throat of a T-slot may be, table top to the underside of its lips.
 *
 * @param slot nominal width, mm
 * @param wider by how much a holding slot may be wider than that (H12), micrometres
 * @param least depth of the throat, {@code most} likewise; tenths of a millimetre
 */
record SlotThroat(int slot, int wider, int least, int most) {

  /**
   * ISO 299 widths with the throat D1 = h − c. To 12 mm as ANSI/ASME B5.1M-1985 prints it in
   * millimetres (5 mm: from the least of BS 2485 to the greatest of B5.1M, which disagree about c);
   * above it worked out of h and c of both. H12 after ISO 286. All as reprinted; ISO 299 itself was
   * not seen.
   */
  static final List<SlotThroat> SERIES =
      List.of(
          new SlotThroat(5, 120, 35, 70),
          new SlotThroat(6, 120, 50, 80),
          new SlotThroat(8, 150, 70, 110),
          new SlotThroat(10, 150, 90, 140),
          new SlotThroat(12, 180, 110, 170),
          new SlotThroat(14, 180, 120, 190),
          new SlotThroat(18, 180, 160, 240),
          new SlotThroat(22, 210, 200, 290),
          new SlotThroat(28, 210, 260, 360),
          new SlotThroat(36, 250, 330, 460),
          new SlotThroat(42, 250, 390, 530),
          new SlotThroat(48, 250, 440, 590),
          new SlotThroat(54, 300, 500, 660));

  /** That of a slot as wide as one of the series; empty for any other width. */
  static Optional<SlotThroat> of(long slotWidth) {
    return SERIES.stream()
        .filter(throat -> slotWidth >= throat.slot * Length.MM)
        .filter(throat -> slotWidth <= throat.slot * Length.MM + throat.wider * (Length.MM / 1000))
        .findFirst();
  }
}
