package org.jawroom.standards;

import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.geometry.Length;

/** Widths across flats of hexagon keys, half-nanometres, ascending. */
public final class HexKey {

  /** ISO 2936, from memory, no source seen. */
  public static final List<Long> METRIC =
      IntStream.of(15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 140, 170, 190)
          .mapToObj(tenths -> tenths * (Length.MM / 10))
          .toList();

  /** ASME B18.3, from memory, no source seen. */
  public static final List<Long> INCH =
      IntStream.of(4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 32, 36, 40)
          .mapToObj(sixtyFourths -> sixtyFourths * (Length.INCH / 64))
          .toList();

  private HexKey() {}
}
