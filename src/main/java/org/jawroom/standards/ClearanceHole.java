package org.jawroom.standards;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;

/**
 * The hole for a bolt to pass through, medium series (ISO 273).
 *
 * @param thread nominal diameter, mm; {@code hole} in tenths of a millimetre
 */
public record ClearanceHole(int thread, int hole) {

  /** ISO 273:1979, medium series, transcribed for the threads that go with T-slots. */
  public static final List<ClearanceHole> ISO_273 =
      List.of(
          new ClearanceHole(4, 45),
          new ClearanceHole(5, 55),
          new ClearanceHole(6, 66),
          new ClearanceHole(8, 90),
          new ClearanceHole(10, 110),
          new ClearanceHole(12, 135),
          new ClearanceHole(14, 155),
          new ClearanceHole(16, 175),
          new ClearanceHole(18, 200),
          new ClearanceHole(20, 220),
          new ClearanceHole(22, 240),
          new ClearanceHole(24, 260),
          new ClearanceHole(30, 330),
          new ClearanceHole(36, 390),
          new ClearanceHole(42, 450),
          new ClearanceHole(48, 520));

  /** The hole for a thread, both in half-nanometres; empty if the thread is not in the table. */
  public static OptionalLong of(long thread) {
    return ISO_273.stream()
        .filter(row -> row.thread * Length.MM == thread)
        .mapToLong(row -> row.hole * (Length.MM / 10))
        .findFirst();
  }
}
