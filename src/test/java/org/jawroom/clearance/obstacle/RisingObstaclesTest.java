package org.jawroom.clearance.obstacle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Pruning must change no margin anywhere; otherwise a vise that hits something is reported as
 * fitting.
 */
class RisingObstaclesTest {
  private static final int STRIDE = Obstacles.STRIDE;
  private static final int HALF = 6;

  @Test
  void marginsStayAsTheyAreEverywhere() {
    for (long seed = 0; seed < 3_000; seed++) {
      Random random = new Random(seed);
      // Up to 16 obstacles use another sort than more.
      long[] found = new long[STRIDE * random.nextInt(random.nextBoolean() ? 9 : 60)];
      for (int i = 0; i < found.length; i += STRIDE) {
        found[i] = random.nextInt(2 * HALF) - HALF;
        found[i + 1] = found[i] + random.nextInt(HALF);
        found[i + 2] = random.nextInt(2 * HALF) - HALF;
        found[i + 3] = found[i + 2] + random.nextInt(HALF);
        found[i + 4] = random.nextInt(4) - 3;
      }
      String input = "seed " + seed + ": " + Arrays.toString(found);
      long[] rising = RisingObstacles.of(found.clone(), found.length);
      for (int i = STRIDE; i < rising.length; i += STRIDE) {
        assertTrue(rising[i - STRIDE] <= rising[i], input);
      }
      for (long x = -HALF; x <= HALF; x++) {
        for (long y = -HALF; y <= HALF; y++) {
          assertEquals(margin(found, x, y), margin(rising, x, y), input);
        }
      }
    }
  }

  @Test
  void whatIsWithinAnotherIsLeftOut() {
    long[] wide = {-5, 5, -5, 5, -2};
    assertArrayEquals(wide, rising(-5, 5, -5, 5, -2, -4, 5, -5, 5, -2));
    assertArrayEquals(wide, rising(-5, 5, -5, 5, -2, -5, 5, -5, 5, -2));
    assertArrayEquals(wide, rising(-5, 5, -5, 5, -2, -5, 5, -5, 5, -1));
  }

  @Test
  void whatIsNearerSomewhereStays() {
    for (int end = 0; end < STRIDE; end++) {
      long[] both = {-5, 5, -5, 5, -2, -5, 5, -5, 5, -2};
      both[STRIDE + end] += end == 1 || end == 3 ? 1 : -1;
      assertEquals(2 * STRIDE, rising(both).length, Arrays.toString(both));
    }
  }

  @Test
  void onlyWhatIsBeforeTheCountIsTaken() {
    long[] found = {3, 4, 0, 1, -1, 1, 2, 0, 1, -1, 9, 9, 9, 9, 9};
    assertArrayEquals(
        new long[] {1, 2, 0, 1, -1, 3, 4, 0, 1, -1}, RisingObstacles.of(found, 2 * STRIDE));
  }

  private static long[] rising(long... found) {
    return RisingObstacles.of(found, found.length);
  }

  private static long margin(long[] obstacles, long x, long y) {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < obstacles.length; i += STRIDE) {
      long alongX = Math.max(obstacles[i] - x, x - obstacles[i + 1]);
      long alongY = Math.max(obstacles[i + 2] - y, y - obstacles[i + 3]);
      least = Math.min(least, Math.max(Math.max(alongX, alongY), obstacles[i + 4]));
    }
    return least;
  }
}
