package org.jawroom.standards;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;

/**
 * A T-nut after DIN 508, and the bolt that goes with a slot.
 *
 * @param slot nominal width of the slot, mm; {@code thread} nominal diameter, mm
 * @param baseWidth e, greatest width of the nut's base, tenths of a millimetre
 * @param height h overall, {@code baseHeight} k greatest height of the base; tenths of a millimetre
 */
public record TNut(int slot, int thread, int baseWidth, int height, int baseHeight) {

  /**
   * DIN 508, transcribed from its table: the greatest e and k of each size, which decide whether a
   * nut passes a slot.
   */
  public static final List<TNut> DIN_508 =
      List.of(
          new TNut(5, 4, 90, 65, 30),
          new TNut(6, 5, 100, 80, 40),
          new TNut(8, 6, 130, 100, 60),
          new TNut(10, 8, 150, 120, 60),
          new TNut(12, 10, 180, 140, 70),
          new TNut(14, 12, 220, 160, 80),
          new TNut(18, 16, 280, 200, 100),
          new TNut(22, 20, 350, 280, 140),
          new TNut(28, 24, 440, 360, 180),
          new TNut(36, 30, 540, 440, 220),
          new TNut(42, 36, 650, 520, 260),
          new TNut(48, 42, 750, 600, 300),
          new TNut(54, 48, 850, 700, 340));

  /**
   * The diameter of the bolt that goes with a slot of this width: that of the widest nut in the
   * series not wider than the slot, so 5/8 in and 16 mm take M12.
   *
   * @param slotWidth half-nanometres
   * @return half-nanometres; empty below a slot width of 5 mm, for which no bolt exists
   */
  public static OptionalLong boltFor(long slotWidth) {
    OptionalLong bolt = OptionalLong.empty();
    for (TNut nut : DIN_508) {
      if (nut.slot * Length.MM <= slotWidth) {
        bolt = OptionalLong.of(nut.thread * Length.MM);
      }
    }
    return bolt;
  }

  /**
   * The diameters of the bolts that may hold in a slot of this width, in the order in which they
   * are tried: the one of {@link #boltFor}, then, with nuts or stepped studs of a smaller thread,
   * the next smaller ones of the series.
   *
   * @param slotWidth half-nanometres
   * @param smaller how many smaller ones there may be
   * @return half-nanometres; empty below a slot width of 5 mm
   */
  public static List<Long> boltsFor(long slotWidth, int smaller) {
    List<Long> fitting =
        DIN_508.stream()
            .filter(nut -> nut.slot * Length.MM <= slotWidth)
            .map(nut -> nut.thread * Length.MM)
            .toList();
    List<Long> bolts =
        new ArrayList<>(fitting.subList(Math.max(0, fitting.size() - 1 - smaller), fitting.size()));
    Collections.reverse(bolts);
    return List.copyOf(bolts);
  }
}
