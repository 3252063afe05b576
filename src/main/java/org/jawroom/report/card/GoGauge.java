package org.jawroom.report.card;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.report.PeopleUnit;
import org.jawroom.report.Rounding;

/** What must pass through a gap that no rule reaches, so that the least allowed is surely there. */
record GoGauge(PeopleUnit unit) {

  /**
   * Across the flats, tenths of a millimetre: hexagon keys after ISO 2936, from memory, no source
   * seen.
   */
  private static final List<Integer> METRIC_KEYS =
      List.of(15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 140, 170, 190);

  /**
   * Across the flats, 64ths of an inch: hexagon keys after ASME B18.3, from memory, no source seen.
   */
  private static final List<Integer> INCH_KEYS =
      List.of(4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 32, 36, 40);

  /**
   * A gauge: the smallest key not under {@code required}, if it is expected to pass a gap of {@code
   * expected} at least; else a block.
   */
  String words(long required, long expected) {
    if (required <= 0) {
      return "a feeler";
    }
    List<Integer> keys = unit == PeopleUnit.MM ? METRIC_KEYS : INCH_KEYS;
    OptionalLong key =
        keys.stream().mapToLong(this::across).filter(size -> size >= required).findFirst();
    return key.isPresent() && key.getAsLong() <= expected
        ? article(name(key.getAsLong())) + " hex key"
        : "a block or feelers " + unit.brief(required, Rounding.UP) + " " + unit.word() + " thick";
  }

  /** No key is 11 or 18. */
  private static String article(String figure) {
    return (figure.startsWith("8") ? "an " : "a ") + figure;
  }

  private long across(int key) {
    return unit == PeopleUnit.MM ? key * (Length.MM / 10) : key * (Length.INCH / 64);
  }

  private String name(long across) {
    if (unit == PeopleUnit.MM) {
      return unit.brief(across, Rounding.NEAREST) + " mm";
    }
    int sixtyFourths = (int) (across / (Length.INCH / 64));
    int divisor = Integer.lowestOneBit(sixtyFourths | 64);
    return sixtyFourths / divisor + "/" + 64 / divisor + " in";
  }
}
