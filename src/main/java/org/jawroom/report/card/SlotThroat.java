package org.jawroom.report.card;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;

/**
 * How deep the throat of a T-slot may be, table top to the underside of its lips.
 *
 * @param slot nominal width, mm
 * @param wider by how much a holding slot may be wider than that (H12), micrometres
 * @param least depth of the throat, {@code most} likewise; mm
 */
record SlotThroat(int slot, int wider, int least, int most) {

  /**
   * ISO 299 widths with the throat D1 = h − c. To 12 mm as ANSI/ASME B5.1M-1985 prints it in millimetres (5 mm:
   * after BS 2485, whose c agrees with ISO 299); above it worked out of h and c of BS 2485 and B5.1M. H12 after
   * ISO 286. All as reprinted; ISO 299 itself was not seen.
   */
  static final List<SlotThroat> SERIES =
      List.of(
          new SlotThroat(5, 120, 3, 7),
          new SlotThroat(6, 120, 5, 8),
          new SlotThroat(8, 150, 7, 11),
          new SlotThroat(10, 150, 9, 14),
          new SlotThroat(12, 180, 11, 17),
          new SlotThroat(14, 180, 12, 19),
          new SlotThroat(18, 180, 16, 24),
          new SlotThroat(22, 210, 20, 29),
          new SlotThroat(28, 210, 26, 36),
          new SlotThroat(36, 250, 33, 46),
          new SlotThroat(42, 250, 39, 53),
          new SlotThroat(48, 250, 44, 59),
          new SlotThroat(54, 300, 50, 66));

  /** That of a slot as wide as one of the series; empty for any other width. */
  static Optional<SlotThroat> of(long slotWidth) {
    return SERIES.stream()
        .filter(throat -> slotWidth >= throat.slot * Length.MM)
        .filter(throat -> slotWidth <= throat.slot * Length.MM + throat.wider * (Length.MM / 1000))
        .findFirst();
  }
}
