package org.jawroom.clearance.obstacle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sorting must lose no obstacle; otherwise a vise that hits something is reported as fitting. */
class RisingObstaclesTest {
  private static final int STRIDE = Obstacles.STRIDE;

  @Test
  void of_randomObstacles_areAllThereInAscendingOrder() {
    int equal = 0;
    for (long seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      long[] found = random.longs(STRIDE * random.nextInt(60), 0, 40).toArray();
      String input = "seed " + seed + ": " + Arrays.toString(found);
      long[] rising = RisingObstacles.of(found.clone(), found.length);
      assertEquals(sorted(found), sorted(rising), input);
      for (int i = STRIDE; i < rising.length; i += STRIDE) {
        assertTrue(rising[i - STRIDE] <= rising[i], input);
        equal += rising[i - STRIDE] == rising[i] ? 1 : 0;
      }
    }
    assertTrue(equal > 100, "only " + equal + " beside one of the same a");
  }

  @Test
  void of_moreThanTheCount_takesWhatIsBefore() {
    long[] found = {3, 4, 0, 1, -1, 1, 2, 0, 1, -1, 9, 9, 9, 9, 9};
    assertArrayEquals(
        new long[] {1, 2, 0, 1, -1, 3, 4, 0, 1, -1}, RisingObstacles.of(found, 2 * STRIDE));
  }

  /** Each obstacle as a text, in any fixed order. */
  private static List<String> sorted(long[] obstacles) {
    return IntStream.range(0, obstacles.length / STRIDE)
        .mapToObj(i -> Arrays.toString(Arrays.copyOfRange(obstacles, i * STRIDE, (i + 1) * STRIDE)))
        .sorted()
        .toList();
  }
}
