package org.jawroom.placement.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jawroom.clearance.obstacle.OpeningBounds.Bound;
import org.jawroom.clearance.obstacle.OpeningBounds.Facing;
import org.jawroom.geometry.Fraction;
import org.jawroom.geometry.Interval;
import org.junit.jupiter.api.Test;

/**
 * {@link OpeningLine} against every whole position of a short line and every pair of openings
 * there. All slopes divide {@link #PARTS}, so every end of a range is one of finitely many shares.
 */
class OpeningLineTwinTest {
  private static final int PARTS = 12;
  private static final int[] SLOPES = {-6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6};
  private static final int SEEDS = 20_000;

  /** Scaled by this factor, all intersections of two bounds are whole numbers. */
  private static final long WHOLE = 27_720;

  @Test
  void widest_shortLines_isTheWidestOfAllTried() {
    int between = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Line line = new Line(seed);
      OpeningRange fast = line.widest(1);
      int[] slow = line.tried();
      if (slow == null) {
        assertEquals(OpeningRange.EMPTY, fast, line::toString);
      } else {
        assertEquals(0, fast.from().compareTo(Fraction.of(slow[0], PARTS)), line::toString);
        assertEquals(0, fast.to().compareTo(Fraction.of(slow[1], PARTS)), line::toString);
        between += slow[0] > 0 && slow[1] < PARTS ? 1 : 0;
      }
    }
    assertTrue(between > SEEDS / 250, "only " + between);
  }

  /** With products beyond a long; the shares do not change. */
  @Test
  void widest_longLines_isThatOfShorterOnes() {
    int wider = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Line line = new Line(seed);
      OpeningRange shorter = line.widest(WHOLE);
      OpeningRange longer = line.widest(WHOLE << 24);
      assertEquals(0, shorter.from().compareTo(longer.from()), line::toString);
      assertEquals(0, shorter.to().compareTo(longer.to()), line::toString);
      wider += longer.betterThan(line.widest(1)) ? 1 : 0;
    }
    assertTrue(wider > SEEDS / 100, "meetings between whole places matter: only " + wider);
  }

  private static final class Line {
    private final int seed;
    private final List<Bound> walls = new ArrayList<>();
    private final List<List<Bound>> boxes = new ArrayList<>();
    private final int pLo;
    private final int pHi;

    Line(int seed) {
      this.seed = seed;
      Random random = new Random(seed);
      pLo = random.nextInt(5) - 2;
      pHi = pLo + random.nextInt(8);
      for (int i = random.nextInt(6); i > 0; i--) {
        walls.add(bound(random));
      }
      for (int i = random.nextInt(3); i > 0; i--) {
        List<Bound> sides = new ArrayList<>();
        for (int side = 1 + random.nextInt(2); side > 0; side--) {
          sides.add(bound(random));
        }
        boxes.add(sides);
      }
    }

    private static Bound bound(Random random) {
      int slope = SLOPES[random.nextInt(SLOPES.length)];
      return new Bound(random.nextInt(15) - 4, slope, random.nextBoolean());
    }

    OpeningRange widest(long scale) {
      List<Facing> facing =
          boxes.stream().map(sides -> new Facing(0, 0, scaled(sides, scale), 0, 0)).toList();
      Interval p = Interval.of(pLo * scale, pHi * scale);
      return new OpeningLine(scaled(walls, scale), facing, p).widest(OpeningRange.EMPTY);
    }

    private static List<Bound> scaled(List<Bound> bounds, long scale) {
      return bounds.stream()
          .map(bound -> new Bound(bound.c() * scale, bound.delta() * scale, bound.before()))
          .toList();
    }

    /** The widest range, ties to the first start; null if there is none. */
    int[] tried() {
      int[] widest = null;
      for (int p = pLo; p <= pHi; p++) {
        for (int from = 0; from <= PARTS; from++) {
          for (int to = PARTS; to >= from; to--) {
            int wider = widest == null ? 1 : to - from - (widest[1] - widest[0]);
            if ((wider > 0 || wider == 0 && from < widest[0]) && isClear(p, from, to)) {
              widest = new int[] {from, to};
            }
          }
        }
      }
      return widest;
    }

    private boolean isClear(int p, int from, int to) {
      return walls.stream().allMatch(wall -> allows(wall, p, from, to))
          && boxes.stream()
              .allMatch(box -> box.stream().anyMatch(side -> allows(side, p, from, to)));
    }

    private static boolean allows(Bound bound, int p, int from, int to) {
      long most = PARTS * (bound.c() - p);
      long one = bound.delta() * from;
      long other = bound.delta() * to;
      return bound.before() ? Math.max(one, other) <= most : Math.min(one, other) >= most;
    }

    @Override
    public String toString() {
      return "seed " + seed + ": walls " + walls + ", boxes " + boxes + ", p " + pLo + " to " + pHi;
    }
  }
}
