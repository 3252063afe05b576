package org.jawroom.standards;

import java.util.Map;
import org.jawroom.geometry.Length;

/** Plain washers under a bolt's head. */
public final class Washer {

  /** Thread to thickness in tenths of a millimetre: ISO 7089, from memory, no source seen. */
  private static final Map<Long, Integer> THICKNESS =
      Map.ofEntries(
          Map.entry(4L, 8),
          Map.entry(5L, 10),
          Map.entry(6L, 16),
          Map.entry(8L, 16),
          Map.entry(10L, 20),
          Map.entry(12L, 25),
          Map.entry(16L, 30),
          Map.entry(20L, 30),
          Map.entry(24L, 40),
          Map.entry(30L, 40),
          Map.entry(36L, 50),
          Map.entry(42L, 80),
          Map.entry(48L, 80));

  private Washer() {}

  /** Thickness of the washer for a thread of DIN 508, both in half-nanometres. */
  public static long thickness(long thread) {
    return THICKNESS.get(thread / Length.MM) * (Length.MM / 10);
  }
}
