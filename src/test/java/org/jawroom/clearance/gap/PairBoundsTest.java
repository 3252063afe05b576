package org.jawroom.clearance.gap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.junit.jupiter.api.Test;

class PairBoundsTest {
  private static final Interval HEIGHT = Interval.of(0, 10);

  @Test
  void of_publishedExample_forbidsTheConfigurationSpaceObstacle() {
    // Lozano-Pérez, Spatial Planning: A Configuration Space Approach, IEEE Trans. Computers
    // C-32(2), 1983: the obstacle of body B against A under translation is A ⊕ (−B). Worked numbers
    // derived from it: A = [100,140]×[50,70], B = [−10,50]×[−20,30] gives [50,150]×[20,90],
    // touching on the edges.
    Box guard = new Box(Interval.of(100, 140), Interval.of(50, 70), HEIGHT);
    Box body = new Box(Interval.of(-10, 50), Interval.of(-20, 30), HEIGHT);

    PairBounds bounds = PairBounds.of(body, guard, 0);

    assertEquals(new PairBounds(50, 150, 20, 90, -10), bounds);
    assertEquals(0, bounds.margin(50, 60));
    assertEquals(-1, bounds.margin(51, 60));
    assertEquals(1, bounds.margin(49, 60));
  }

  @Test
  void of_sweptOverTravel_growsTheObstacleByTheTravel() {
    // The same example swept over [−200, 200] in X: [−150, 350] × [20, 90].
    Interval swept = Interval.of(100, 140).sweptBy(Interval.of(-200, 200));
    Box guard = new Box(swept, Interval.of(50, 70), HEIGHT);
    Box body = new Box(Interval.of(-10, 50), Interval.of(-20, 30), HEIGHT);

    assertEquals(new PairBounds(-150, 350, 20, 90, -10), PairBounds.of(body, guard, 0));
  }

  @Test
  void margin_anywhere_isGapOfTheMovedBoxesLessTheNeed() {
    Random random = new Random(2);
    int hit = 0;
    int touching = 0;
    for (int i = 0; i < 5_000; i++) {
      Box part = box(random);
      Box guard = box(random);
      long need = random.nextInt(5);
      long x = random.nextInt(60) - 30;
      long y = random.nextInt(60) - 30;

      assertEquals(
          part.at(x, y).gapTo(guard) - need,
          PairBounds.of(part, guard, need).margin(x, y),
          () -> part + " at " + x + "," + y + " against " + guard);
      hit += part.at(x, y).gapTo(guard) < 0 ? 1 : 0;
      touching += part.at(x, y).gapTo(guard) == 0 ? 1 : 0;
    }
    assertTrue(hit > 50 && touching > 20, hit + " hit, " + touching + " touch");
  }

  private static Box box(Random random) {
    return new Box(interval(random), interval(random), interval(random));
  }

  private static Interval interval(Random random) {
    int lo = random.nextInt(40) - 20;
    return Interval.of(lo, lo + random.nextInt(15));
  }
}
