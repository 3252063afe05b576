package org.jawroom.standards;

import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.geometry.Length;

/** Stock lengths of studs for inch T-slots. */
public final class InchStock {

  /** Half-nanometres, ascending: common in sets of clamps, from memory, no source seen. */
  public static final List<Long> STUDS =
      IntStream.of(3, 4, 5, 6, 7, 8, 10, 12, 14, 16)
          .mapToObj(halves -> halves * (Length.INCH / 2))
          .toList();

  private InchStock() {}
}
