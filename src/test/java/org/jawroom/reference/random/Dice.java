package org.jawroom.reference.random;

import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Dimension;

/** Seeded random lengths on a grid, so that ties and exact contact are common. */
final class Dice {
  /** A quarter of the usual size, in whole millimetres only. */
  static final long TINY = Length.MM / 4;

  /** A hundred times the usual size, near the greatest length that a table may contain. */
  static final long HUGE = 100 * Length.MM;

  static final List<Long> WHOLE_MILLIMETRES = List.of(Length.MM);
  static final List<Long> NANOMETRES = List.of(Length.NANOMETRE);

  /** So coarse that nearly everything touches something exactly. */
  static final List<Long> COARSE = List.of(20 * Length.MM, 30 * Length.MM);

  private static final List<Long> MILLIMETRES =
      List.of(10 * Length.MM, 5 * Length.MM, Length.MM, Length.MM / 1000);
  private static final List<Long> INCHES =
      List.of(Length.INCH / 4, Length.INCH / 8, Length.INCH / 64, Length.INCH / 1000);

  private final SplittableRandom random;
  private final long grain;
  private final long scale;

  Dice(long seed, boolean inches) {
    this(seed, inches ? INCHES : MILLIMETRES);
  }

  /** Lengths on one of {@code grains}, the same one throughout. */
  Dice(long seed, List<Long> grains) {
    this(seed, grains, Length.MM);
  }

  /** Lengths with {@code scale} per millimetre requested. */
  Dice(long seed, List<Long> grains, long scale) {
    random = new SplittableRandom(seed);
    grain = among(grains);
    this.scale = scale;
  }

  /** A number from 0 up to but excluding {@code below}. */
  int pick(int below) {
    return random.nextInt(below);
  }

  boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  <T> T among(List<T> choices) {
    return choices.get(pick(choices.size()));
  }

  /** About {@code length}, on the grid of {@link #mm}. */
  long inMm(long length) {
    return length / scale;
  }

  /** A whole multiple of the grain between about {@code low} and {@code high} mm. */
  long mm(long low, long high) {
    long from = Math.floorDiv(low * scale, grain);
    long to = Math.floorDiv(high * scale, grain);
    return random.nextLong(from, to + 1) * grain;
  }

  Dimension dimension(long low, long high) {
    return Dimension.of(mm(low, high));
  }

  OptionalLong perhaps(int percent, long low, long high) {
    return chance(percent) ? OptionalLong.of(mm(low, high)) : OptionalLong.empty();
  }
}
