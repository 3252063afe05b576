package org.jawroom.standards;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.jawroom.geometry.Length;

/**
 * The blocks of a common set of gauge blocks, wrung together to a thickness. All lengths in
 * half-nanometres.
 */
public final class GaugeBlocks {
  private static final long TENTH = Length.INCH / 10_000;
  private static final long MICROMETRE = Length.MM / 1000;

  /** The set of 81 blocks in inches, after ASME B89.1.9: from memory, no source seen. */
  public static final GaugeBlocks INCH =
      new GaugeBlocks(
          TENTH,
          LongStream.rangeClosed(1001, 1009),
          LongStream.rangeClosed(101, 149).map(i -> i * 10),
          LongStream.rangeClosed(1, 19).map(i -> i * 500),
          LongStream.rangeClosed(1, 4).map(i -> i * 10_000));

  /** The set of 87 blocks in millimetres, after ISO 3650: from memory, no source seen. */
  public static final GaugeBlocks METRIC =
      new GaugeBlocks(
          MICROMETRE,
          LongStream.rangeClosed(1001, 1009),
          LongStream.rangeClosed(101, 149).map(i -> i * 10),
          LongStream.rangeClosed(1, 19).map(i -> i * 500),
          LongStream.rangeClosed(1, 10).map(i -> i * 10_000));

  private final TreeSet<Long> sizes = new TreeSet<>();

  private GaugeBlocks(long unit, LongStream... series) {
    for (LongStream one : series) {
      one.forEach(count -> sizes.add(count * unit));
    }
  }

  /** How many blocks the set has. */
  public int count() {
    return sizes.size();
  }

  /**
   * The fewest blocks, at most three and no two alike, that make up a thickness exactly, the
   * thickest first; empty if none do.
   */
  public Optional<List<Long>> stack(long thickness) {
    if (sizes.contains(thickness)) {
      return Optional.of(List.of(thickness));
    }
    for (long one : sizes.descendingSet()) {
      long rest = thickness - one;
      if (rest < one && sizes.contains(rest)) {
        return Optional.of(List.of(one, rest));
      }
    }
    for (long one : sizes.descendingSet()) {
      for (long other : sizes.headSet(one, false).descendingSet()) {
        long rest = thickness - one - other;
        if (rest < other && sizes.contains(rest)) {
          return Optional.of(List.of(one, other, rest));
        }
      }
    }
    return Optional.empty();
  }
}
