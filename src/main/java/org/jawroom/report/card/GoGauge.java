package org.jawroom.report.card;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.standards.HexKey;

/** What must pass through a gap that no rule reaches, so that the least allowed is surely there. */
record GoGauge(PeopleUnit unit) {

  /**
   * A gauge: the smallest key not under {@code required}, if it is expected to pass a gap of {@code
   * expected} at least; else a block.
   */
  String words(long required, long expected) {
    if (required <= 0) {
      return "a feeler";
    }
    List<Long> keys = unit == PeopleUnit.MM ? HexKey.METRIC : HexKey.INCH;
    Optional<Long> key = keys.stream().filter(size -> size >= required).findFirst();
    return key.isPresent() && key.get() <= expected
        ? article(name(key.get())) + " hex key"
        : "a block or feelers " + unit.brief(required, Rounding.UP) + " " + unit.word() + " thick";
  }

  /** No key is 11 or 18. */
  private static String article(String figure) {
    return (figure.startsWith("8") ? "an " : "a ") + figure;
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
