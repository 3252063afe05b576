package org.jawroom.report.card.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jawroom.geometry.Length;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.standards.GaugeBlocks;
import org.jawroom.standards.HexKey;

/** A go gauge for a gap that no rule reaches: if it passes, the least allowed gap is there. */
record GoGauge(PeopleUnit unit) {

  /**
   * Names a gauge: the smallest key not under {@code required} if a gap of at least {@code
   * expected} lets it pass; else a block.
   */
  String words(long required, long expected) {
    if (required <= 0) {
      return "a feeler";
    }
    List<Long> keys = unit == PeopleUnit.MM ? HexKey.METRIC : HexKey.INCH;
    Optional<Long> key = keys.stream().filter(size -> size >= required).findFirst();
    return key.isPresent() && key.get() <= expected
        ? article(name(key.get())) + " hex key"
        : block(required);
  }

  /** Gauge blocks of sizes that a common set has; feelers where no blocks make up the thickness. */
  private String block(long required) {
    boolean metric = unit == PeopleUnit.MM;
    GaugeBlocks set = metric ? GaugeBlocks.METRIC : GaugeBlocks.INCH;
    long thickness = Length.ceilTo(required, metric ? Length.MM / 10 : Length.INCH / 1000);
    long printed = metric ? Length.MM / 100 : Length.INCH / 1000;
    return set.stack(thickness)
        .filter(blocks -> blocks.stream().allMatch(block -> block % printed == 0))
        .map(
            blocks ->
                (blocks.size() == 1 ? "a gauge block " : "gauge blocks ")
                    + blocks.stream().map(this::figure).collect(Collectors.joining(" + "))
                    + " "
                    + unit.word())
        .orElseGet(() -> "feelers " + figure(thickness) + " " + unit.word() + " thick");
  }

  /** Exact: blocks are whole hundredths of a millimetre, or whole thousandths of an inch. */
  private String figure(long thickness) {
    return unit.fine(thickness, Rounding.NEAREST);
  }

  /** The keys have no size that needs "an", such as 11 or 18. */
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
