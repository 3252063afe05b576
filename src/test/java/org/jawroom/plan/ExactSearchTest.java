package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.exact.Bound;
import org.jawroom.plan.exact.ExactSearch;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Stage;
import org.junit.jupiter.api.Test;

/**
 * Bounds on small random cells against exhaustive search, whenever the search is stopped. {@code
 * -Dplan.bounds=20000} tries more.
 */
class ExactSearchTest {

  private static final int SEEDS = Integer.getInteger("plan.bounds", 400);
  private static final int STEPS = 5;

  /** No best value is above its ceiling, and a search that is complete has found the best plan. */
  @Test
  void search_stoppedAfterAnyStep_boundsTheBestOfAll() {
    int complete = 0;
    int tight = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      CellSketch asked = RandomCells.cell(seed);
      Task task = task(asked);
      String best = new SimplePlanner(asked).best();
      List<Aim> aims = sums(task);
      long[] values = values(best, task);
      Demands demands = demands(best, task);
      for (int steps = 0; steps <= STEPS; steps++) {
        AtomicInteger left = new AtomicInteger(steps == STEPS ? Integer.MAX_VALUE : steps);
        List<Choice> found = new ArrayList<>();
        Optional<Bound> bound =
            ExactSearch.search(
                task,
                demands,
                aims,
                Optional.empty(),
                () -> left.getAndDecrement() > 0,
                found::add);
        String where = "seed " + seed + ", " + steps + " steps: " + asked;
        assertEquals(found.isEmpty(), bound.isEmpty(), where);
        if (bound.isPresent()) {
          long[] ceilings = ceilings(bound.get(), aims);
          assertTrue(Arrays.compare(values, ceilings) <= 0, where);
          Choice last = found.get(found.size() - 1);
          if (bound.get().complete()) {
            assertEquals(
                best, SimplePlanner.asText(Planner.plan(task, last, stages(task, last))), where);
            complete++;
          }
          tight += Arrays.equals(values, ceilings) ? 1 : 0;
        }
      }
    }
    assertTrue(
        2 * complete > SEEDS && tight > complete, complete + " complete, " + tight + " tight");
  }

  @Test
  void ceiling_ofAnAimAlone_isNotBelowTheBestOfAll() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      CellSketch asked = RandomCells.cell(seed);
      Task task = task(asked);
      List<Aim> aims = sums(task);
      long[] values = values(new SimplePlanner(asked).best(), task);
      for (int place = 0; place < values.length; place++) {
        Aim aim = aims.get(place);
        long ceiling = ExactSearch.ceiling(task, aim).ceiling(aim, any -> 0);
        assertTrue(values[place] <= ceiling, "seed " + seed + ", " + aim + ": " + asked);
      }
    }
  }

  /**
   * Whenever a plan runs out of time: a value as good as the best up to an aim is not above the
   * ceiling there, and what is proven is the best.
   */
  @Test
  void plan_timeRunsOut_provesAndBoundsOnlyWhatIsTrue() {
    int unproven = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      CellSketch asked = RandomCells.cell(seed);
      long[] best = numbers(new SimplePlanner(asked).best());
      AtomicInteger left = new AtomicInteger((int) (seed % 12));
      Plan plan =
          Planner.plan(
              asked.cell(),
              asked.wishes().within(() -> left.getAndDecrement() > 0 ? Long.MAX_VALUE : 0));
      String where = "seed " + seed + ": " + asked;
      for (int place = 0; place < best.length; place++) {
        Stage stage = plan.stages().get(place);
        assertTrue(best[place] <= stage.ceiling(), where);
        if (stage.value() != best[place]) {
          assertFalse(stage.proven(), where);
          unproven++;
          break;
        }
      }
    }
    assertTrue(10 * unproven > SEEDS, unproven + " not proven");
  }

  /** By the first aim two machines, by the next the wide vise on the first of them. */
  @Test
  void ceiling_ofALaterAim_isKnownOnlyForTheCeilingsBefore() {
    Task task = task(CellSketch.parse("M - - | V 1 1 | F 0/0=+,1,9,1 0/1=+,1,5,7 1/1=+,1,5,7 | J"));
    List<Aim> aims = List.of(Aim.EQUIPPED, Aim.OPENING, Aim.JAW);
    Bound bound =
        ExactSearch.search(task, new Demands(), aims, Optional.empty(), () -> true, any -> {})
            .orElseThrow();
    assertEquals(2, bound.ceiling(Aim.EQUIPPED, any -> 0));
    assertEquals(14, bound.ceiling(Aim.OPENING, aim -> 2));
    assertEquals(Long.MAX_VALUE, bound.ceiling(Aim.OPENING, aim -> 1));
    assertEquals(8, bound.ceiling(Aim.JAW, aim -> aim == Aim.EQUIPPED ? 2 : 14));
    assertEquals(Long.MAX_VALUE, bound.ceiling(Aim.GOOD, aim -> 0));
  }

  private static Task task(CellSketch asked) {
    return new Task(
        asked.cell(), asked.wishes().buy(), asked.wishes().budget(), asked.wishes().keep());
  }

  private static List<Aim> sums(Task task) {
    return task.aims().stream().filter(aim -> aim != Aim.HELD).toList();
  }

  private static long[] numbers(String best) {
    String list = best.substring(1, best.indexOf(']'));
    return Arrays.stream(list.split(", ")).mapToLong(Long::parseLong).toArray();
  }

  private static long[] values(String best, Task task) {
    long[] numbers = numbers(best);
    return Arrays.copyOfRange(numbers, task.aims().contains(Aim.HELD) ? 1 : 0, numbers.length);
  }

  private static Demands demands(String best, Task task) {
    return task.aims().contains(Aim.HELD)
        ? new Demands().reach(Aim.HELD, numbers(best)[0])
        : new Demands();
  }

  private static long[] ceilings(Bound bound, List<Aim> aims) {
    return aims.stream().mapToLong(aim -> bound.ceilings().get(aim)).toArray();
  }

  private static List<Stage> stages(Task task, Choice choice) {
    return task.aims().stream()
        .map(aim -> new Stage(aim, task.value(aim, choice), false, Long.MAX_VALUE))
        .toList();
  }
}
