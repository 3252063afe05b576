package org.jawroom.clearance.obstacle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.gap.PairBounds;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.junit.jupiter.api.Test;

/**
 * {@link Obstacles}, which merges guards into walls and folds and prunes pairs, against {@link
 * MarginField}, which evaluates every pair. The worlds are a few half-nanometres wide, so that
 * equal margins are common.
 */
class ObstaclesTwinTest {
  private static final Interval OPENINGS = Interval.of(0, 6);
  private static final int SEEDS = 1_500;

  @Test
  void limit_smallWorlds_isThatOfThePairs() {
    int limited = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      World world = new World(seed);
      MarginField pairs = world.field(world.openings);
      Obstacles obstacles = Obstacles.of(world.swept(), world.sweptGuards(), world.turn);
      for (int i = 0; i < 8; i++) {
        long x = world.within(12);
        long y = world.within(12);
        Optional<Limit> limit = pairs.limit(x, y);
        String input = world + " at " + x + ", " + y;
        if (limit.isPresent()) {
          limited++;
          long margin = limit.get().margin();
          assertEquals(limit, obstacles.limit(x, y, margin), input);
          assertEquals(Optional.empty(), obstacles.limit(x, y, margin - 1), input);
        }
      }
    }
    assertTrue(limited > 7 * SEEDS, "only " + limited);
  }

  @Test
  void within_smallWorlds_keepsWhateverMakesTheMarginLessThanTheBound() {
    int kept = 0;
    int left = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      World world = new World(seed);
      MarginField pairs = world.field(world.openings);
      Obstacles obstacles = Obstacles.of(world.swept(), world.sweptGuards(), world.turn);
      Interval x = world.interval(12);
      Interval y = world.interval(12);
      long bound = world.within(14);
      Axis first = world.random.nextBoolean() ? Axis.X : Axis.Y;
      long[] near = obstacles.within(first, x, y, bound);
      kept += near.length / Obstacles.STRIDE;
      left +=
          obstacles.within(first, x, y, Length.ENDLESS).length / Obstacles.STRIDE
              - near.length / Obstacles.STRIDE;
      for (long px = x.lo(); px <= x.hi(); px++) {
        for (long py = y.lo(); py <= y.hi(); py++) {
          long expected = Math.min(bound, pairs.margin(px, py));
          long actual = Math.min(bound, margin(obstacles, first, near, px, py));
          String input = world + " at " + px + ", " + py + " within " + x + " " + y + " " + bound;
          assertEquals(expected, actual, input);
        }
      }
    }
    assertTrue(kept > SEEDS && left > SEEDS, kept + " kept, " + left + " left out");
  }

  @Test
  void withoutTolerance_smallWorlds_isThatOfExactPartsAndGuards() {
    for (int seed = 0; seed < SEEDS; seed++) {
      World world = new World(seed);
      MarginField exact = world.exact().field(world.openings);
      Obstacles obstacles =
          Obstacles.withoutTolerance(world.swept(), world.sweptGuards(), world.turn);
      long x = world.within(12);
      long y = world.within(12);
      long[] near = obstacles.within(Axis.X, Interval.of(x, x), Interval.of(y, y), Length.ENDLESS);
      assertEquals(exact.margin(x, y), margin(obstacles, Axis.X, near, x, y), world::toString);
    }
  }

  /** A position clear at some opening is clear of what a part covers at all openings. */
  @Test
  void core_smallWorlds_isNoLessThanTheMarginAtAnyOpening() {
    int more = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      World world = new World(seed);
      Obstacles core = Obstacles.of(world.swept().core(), world.sweptGuards(), world.turn);
      long x = world.within(12);
      long y = world.within(12);
      long[] near = core.within(Axis.X, Interval.of(x, x), Interval.of(y, y), Length.ENDLESS);
      long most = margin(core, Axis.X, near, x, y);
      for (long s = world.openings.lo(); s <= world.openings.hi(); s++) {
        long at = world.field(Interval.of(s, s)).margin(x, y);
        assertTrue(most >= at, world + " at " + x + ", " + y + ", opening " + s);
        more += most > at ? 1 : 0;
      }
    }
    assertTrue(more > SEEDS / 10, "only " + more);
  }

  /** The minimum over walls and obstacles by definition. */
  private static long margin(Obstacles obstacles, Axis first, long[] near, long x, long y) {
    long margin = Length.ENDLESS;
    margin = Math.min(margin, x - obstacles.left());
    margin = Math.min(margin, obstacles.right() - x);
    margin = Math.min(margin, y - obstacles.front());
    margin = Math.min(margin, obstacles.rear() - y);
    for (int i = 0; i < near.length; i += Obstacles.STRIDE) {
      PairBounds pair = new PairBounds(near[i], near[i + 1], near[i + 2], near[i + 3], near[i + 4]);
      margin = Math.min(margin, first == Axis.X ? pair.margin(x, y) : pair.margin(y, x));
    }
    return margin;
  }

  /** Random parts of every kind and guards of every shape. */
  private static final class World {
    private final long seed;
    private final Random random;
    private final Orientation turn;
    private final Interval openings;
    private final long handRoom;
    private final List<Part> parts;
    private final List<SweptGuard> guards;

    World(long seed) {
      this.seed = seed;
      this.random = new Random(seed);
      this.turn = Orientation.values()[random.nextInt(4)];
      this.openings = random.nextInt(3) == 0 ? Interval.of(1, 4) : OPENINGS;
      this.handRoom = random.nextInt(4);
      this.parts = new ArrayList<>();
      for (int rank = 0; rank < 1 + random.nextInt(4); rank++) {
        addPart(rank);
      }
      this.guards = new ArrayList<>();
      for (int rank = 0; rank < 1 + random.nextInt(4); rank++) {
        addGuard(rank);
      }
    }

    private World(World other, List<Part> parts, List<SweptGuard> guards) {
      this.seed = other.seed;
      this.random = other.random;
      this.turn = other.turn;
      this.openings = other.openings;
      this.handRoom = other.handRoom;
      this.parts = parts;
      this.guards = guards;
    }

    private void addPart(int rank) {
      boolean handle = random.nextInt(3) == 0;
      Interval u = interval(8);
      Interval open = interval(8);
      OpeningInterval stretch = new OpeningInterval(u, random.nextBoolean() ? u : open, OPENINGS);
      Interval v = interval(8);
      Interval w = interval(6);
      int tolerance = random.nextInt(2);
      int both = random.nextInt(4);
      // Mostly equal in both situations, which the solver evaluates once; otherwise different in
      // one property.
      int change = random.nextInt(10);
      for (Situation situation : Situation.values()) {
        if (both != situation.ordinal()) {
          boolean changed = situation == Situation.LOADING;
          parts.add(
              NamedPieces.part(
                  "part " + rank,
                  rank,
                  handle ^ (changed && change == 0),
                  situation,
                  changed && change == 1
                      ? OpeningInterval.constant(interval(8), OPENINGS)
                      : stretch,
                  changed && change == 2 ? interval(8) : v,
                  changed && change == 3 ? interval(6) : w,
                  changed && change == 4 ? 1 - tolerance : tolerance));
        }
      }
    }

    private void addGuard(int rank) {
      boolean table = random.nextInt(6) == 0;
      int shape = random.nextInt(8);
      Interval x = shape == 0 || shape == 1 ? Interval.ALL : side();
      Interval y = shape == 2 || shape == 3 ? Interval.ALL : side();
      Interval z = random.nextBoolean() ? Interval.ALL : interval(8);
      int both = random.nextInt(4);
      int shift = Math.max(0, random.nextInt(5) - 2);
      int clearance = random.nextInt(4);
      int tolerance = random.nextInt(2);
      // Mostly equal in both situations, which the solver evaluates once.
      int change = random.nextInt(6);
      for (Situation situation : Situation.values()) {
        if (both != situation.ordinal()) {
          boolean changed = situation == Situation.LOADING;
          // Occasionally at the same limits and with the same clearance as its predecessor.
          boolean again = !guards.isEmpty() && random.nextInt(4) == 0;
          SweptGuard last = again ? guards.get(guards.size() - 1) : null;
          guards.add(
              NamedPieces.guard(
                  "guard " + rank,
                  rank,
                  table,
                  situation,
                  again ? last.box() : new Box(x, y, z).at(situation.ordinal() * shift, 0),
                  again ? last.clearance() : changed && change == 0 ? random.nextInt(4) : clearance,
                  again
                      ? last.tolerance()
                      : changed && change == 1 ? random.nextInt(2) : tolerance));
        }
      }
    }

    /** Occasionally unbounded on one side. */
    private Interval side() {
      Interval interval = interval(12);
      return switch (random.nextInt(4)) {
        case 0 -> Interval.of(-Length.ENDLESS, interval.hi());
        case 1 -> Interval.of(interval.lo(), Length.ENDLESS);
        default -> interval;
      };
    }

    Interval interval(int half) {
      long lo = within(half);
      return Interval.of(lo, lo + random.nextInt(half));
    }

    long within(int half) {
      return random.nextInt(2 * half) - half;
    }

    /** The same world without tolerances. */
    World exact() {
      return new World(
          this,
          parts.stream()
              .map(
                  p ->
                      NamedPieces.part(
                          p.name(), p.rank(), p.handle(), p.situation(), p.u(), p.v(), p.w(), 0))
              .toList(),
          guards.stream()
              .map(
                  g ->
                      NamedPieces.guard(
                          g.name(), g.rank(), g.table(), g.situation(), g.box(), g.clearance(), 0))
              .toList());
    }

    SweptParts swept() {
      return SweptParts.of(parts, OPENINGS).over(openings);
    }

    SweptGuards sweptGuards() {
      return SweptGuards.of(guards, handRoom);
    }

    MarginField field(Interval range) {
      return MarginField.of(Pair.all(handRoom, parts, guards), turn, range);
    }

    @Override
    public String toString() {
      return "seed " + seed + ": " + turn + " " + openings + " hand " + handRoom + " " + parts + " "
          + guards;
    }
  }
}
