package org.jawroom.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;

/** The sizes of the sets are from memory, no source seen. */
class GaugeBlocksTest {
  private static final long MIL = Length.INCH / 1000;
  private static final long HUNDREDTH = Length.MM / 100;

  @Test
  void sets_haveTheirNumberOfBlocks() {
    assertEquals(81, GaugeBlocks.INCH.count());
    assertEquals(87, GaugeBlocks.METRIC.count());
  }

  @Test
  void stack_takesTheFewest() {
    assertEquals(Optional.of(List.of(250 * MIL)), GaugeBlocks.INCH.stack(250 * MIL));
    assertEquals(Optional.of(List.of(850 * MIL, 135 * MIL)), GaugeBlocks.INCH.stack(985 * MIL));
    assertEquals(
        Optional.of(List.of(500 * HUNDREDTH, 140 * HUNDREDTH)),
        GaugeBlocks.METRIC.stack(640 * HUNDREDTH));
  }

  @Test
  void stack_ofWhatNoBlocksMakeUp_isEmpty() {
    assertEquals(Optional.empty(), GaugeBlocks.INCH.stack(49 * MIL));
    assertEquals(Optional.of(List.of(50 * MIL)), GaugeBlocks.INCH.stack(50 * MIL));
    assertEquals(Optional.empty(), GaugeBlocks.INCH.stack(51 * MIL));
    assertEquals(Optional.empty(), GaugeBlocks.METRIC.stack(49 * HUNDREDTH));
  }

  @Test
  void stack_addsUpToTheThickness() {
    int found = 0;
    for (long mils = 100; mils <= 2000; mils++) {
      Optional<List<Long>> stack = GaugeBlocks.INCH.stack(mils * MIL);
      if (stack.isPresent()) {
        assertEquals(mils * MIL, stack.get().stream().mapToLong(Long::longValue).sum());
        assertEquals(stack.get().size(), new HashSet<>(stack.get()).size());
        found++;
      }
    }
    assertTrue(found > 1800, "found " + found);
  }
}
