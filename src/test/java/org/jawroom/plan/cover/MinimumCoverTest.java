package org.jawroom.plan.cover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jawroom.plan.program.Program;
import org.jawroom.plan.program.Solver;
import org.jawroom.plan.program.Sum;
import org.junit.jupiter.api.Test;

/** Covers against every choice of sets, and against a mixed-integer solver where those are many. */
class MinimumCoverTest {

  @Test
  void of_smallSystems_needsAsFewAsTheBestOfAllChoices() {
    Random lot = new Random(41);
    Map<Integer, Integer> sizes = new HashMap<>();
    int unheld = 0;
    for (int i = 0; i < 3000; i++) {
      int elements = lot.nextInt(13);
      List<BitSet> sets = random(lot, elements, lot.nextInt(12), 1 + lot.nextInt(70));
      Cover cover = MinimumCover.of(elements, sets);
      assertHolds(elements, sets, cover);
      assertTrue(cover.isProven(), () -> sets.toString());
      assertEquals(fewest(sets), cover.sets().size(), () -> sets.toString());
      sizes.merge(cover.sets().size(), 1, Integer::sum);
      unheld += cover.unheld().isEmpty() ? 0 : 1;
    }
    for (int size = 0; size <= 5; size++) {
      assertTrue(sizes.getOrDefault(size, 0) > 20, size + " sets: " + sizes);
    }
    assertTrue(unheld > 100, "only " + unheld + " with elements that no set holds");
  }

  @Test
  void of_largerSystems_agreesWithAMixedIntegerSolver() {
    Random lot = new Random(42);
    int large = 0;
    for (int i = 0; i < 40; i++) {
      int elements = 20 + lot.nextInt(30);
      List<BitSet> sets = random(lot, elements, 20 + lot.nextInt(30), 6 + lot.nextInt(12));
      Cover cover = MinimumCover.of(elements, sets);
      assertHolds(elements, sets, cover);
      assertTrue(cover.isProven(), () -> sets.toString());
      assertEquals(bySolver(elements, sets), cover.sets().size(), () -> sets.toString());
      large += cover.sets().size() > 6 ? 1 : 0;
    }
    assertTrue(large > 10, "only " + large + " with more than six sets");
  }

  /** With so little work that it stops anywhere, what it states still holds. */
  @Test
  void of_whateverWorkIsAllowed_statesBoundsThatHold() {
    Random lot = new Random(43);
    int open = 0;
    for (int i = 0; i < 60; i++) {
      int elements = 25 + lot.nextInt(10);
      List<BitSet> sets = random(lot, elements, 30, 10 + lot.nextInt(6));
      int fewest = MinimumCover.of(elements, sets).sets().size();
      for (long words = 1; words < 200_000; words *= 3) {
        Cover cover = MinimumCover.of(elements, sets, words);
        assertHolds(elements, sets, cover);
        assertTrue(
            cover.atLeast() <= fewest && fewest <= cover.sets().size(),
            () -> cover + ", but " + fewest + " of " + sets);
        open += cover.isProven() ? 0 : 1;
      }
    }
    assertTrue(open > 100, "only " + open + " were left open");
  }

  /** Three parallel lines of nine points; the other way round, five points that meet every line. */
  @Test
  void of_theAffinePlaneOfOrderThree_takesFiveLines() {
    List<BitSet> lines = new ArrayList<>();
    for (int slope = 0; slope < 4; slope++) {
      for (int start = 0; start < 3; start++) {
        BitSet line = new BitSet();
        for (int step = 0; step < 3; step++) {
          int x = slope == 3 ? start : step;
          int y = slope == 3 ? step : (start + slope * step) % 3;
          line.set(3 * x + y);
        }
        lines.add(line);
      }
    }
    assertEquals(3, MinimumCover.of(9, lines).sets().size());
    // R. E. Jamison, "Covering finite fields with cosets of subspaces", 1977: n(q - 1) + 1 points
    // meet every hyperplane of AG(n, q), and no fewer do.
    List<BitSet> points = new ArrayList<>();
    for (int point = 0; point < 9; point++) {
      BitSet through = new BitSet();
      for (int line = 0; line < lines.size(); line++) {
        through.set(line, lines.get(line).get(point));
      }
      points.add(through);
    }
    assertEquals(5, MinimumCover.of(12, points).sets().size());
  }

  @Test
  void of_noElementsOrNoSets_takesNone() {
    assertEquals(new Cover(List.of(), 0, List.of()), MinimumCover.of(0, List.of()));
    assertEquals(new Cover(List.of(), 0, List.of(0, 1)), MinimumCover.of(2, List.of()));
    assertEquals(new Cover(List.of(), 0, List.of(0)), MinimumCover.of(1, List.of(new BitSet())));
  }

  @Test
  void of_equalSets_takesTheFirst() {
    assertEquals(
        new Cover(List.of(0), 1, List.of()), MinimumCover.of(2, List.of(set(0, 1), set(0, 1))));
  }

  @Test
  void of_anElementBeyond_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> MinimumCover.of(2, List.of(set(2))));
    assertThrows(IllegalArgumentException.class, () -> new Cover(List.of(), 1, List.of()));
  }

  private static BitSet set(int... elements) {
    BitSet set = new BitSet();
    for (int element : elements) {
      set.set(element);
    }
    return set;
  }

  private static List<BitSet> random(Random lot, int elements, int count, int percent) {
    List<BitSet> sets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      BitSet set = new BitSet();
      for (int element = 0; element < elements; element++) {
        set.set(element, lot.nextInt(100) < percent);
      }
      sets.add(set);
    }
    return sets;
  }

  private static void assertHolds(int elements, List<BitSet> sets, Cover cover) {
    BitSet held = new BitSet();
    cover.sets().forEach(set -> held.or(sets.get(set)));
    cover.unheld().forEach(element -> assertFalse(held.get(element)));
    cover.unheld().forEach(held::set);
    assertEquals(elements, held.cardinality(), () -> cover + " of " + sets);
    assertEquals(cover.sets().stream().distinct().sorted().toList(), cover.sets());
  }

  private static int fewest(List<BitSet> sets) {
    BitSet all = new BitSet();
    sets.forEach(all::or);
    int fewest = Integer.MAX_VALUE;
    for (int chosen = 0; chosen < 1 << sets.size(); chosen++) {
      BitSet held = new BitSet();
      for (int set = 0; set < sets.size(); set++) {
        if ((chosen >> set & 1) == 1) {
          held.or(sets.get(set));
        }
      }
      fewest = held.equals(all) ? Math.min(fewest, Integer.bitCount(chosen)) : fewest;
    }
    return fewest;
  }

  private static int bySolver(int elements, List<BitSet> sets) {
    Program program = new Program();
    Sum taken = new Sum();
    for (int set = 0; set < sets.size(); set++) {
      taken.add(program.column(true, 1), -1);
    }
    for (int element = 0; element < elements; element++) {
      Sum holders = new Sum();
      for (int set = 0; set < sets.size(); set++) {
        if (sets.get(set).get(element)) {
          holders.add(set, 1);
        }
      }
      if (!holders.isConstant()) {
        program.atLeast(holders, 1);
      }
    }
    program.maximise(taken);
    Solver.Answer answer = Solver.maximise(program, () -> 60_000);
    assertEquals(Solver.State.OPTIMAL, answer.state(), () -> sets.toString());
    return (int) -program.value(answer.objective());
  }
}
