package org.jawroom.plan.exact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jawroom.plan.CellSketch;
import org.jawroom.plan.RandomCells;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Ranking;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.junit.jupiter.api.Test;

class WorthsTest {

  private static final int SEEDS = 300;

  /** As numbers choices compare like the lists of their values, then by their fits. */
  @Test
  void of_twoChoices_comparesLikeTheirValuesInOrder() {
    int ties = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      CellSketch asked = RandomCells.cell(seed);
      Task task = task(asked);
      List<Aim> aims = sums(task);
      Worths worths = new Worths(task, aims);
      Random random = new Random(seed);
      Choice one = choice(task, random);
      Choice other = choice(task, random);
      long[] first = values(task, aims, one);
      long[] second = values(task, aims, other);
      int order = Arrays.compare(first, second);
      ties += order == 0 ? 1 : 0;
      for (int machine = 0; order == 0 && machine < task.cell().machines().size(); machine++) {
        Ranking ranking = Ranking.from(task, machine);
        order = Long.compare(ranking.of(one), ranking.of(other));
      }
      String where = "seed " + seed + ": " + asked;
      assertEquals(Integer.signum(order), worths.of(one).compareTo(worths.of(other)), where);
      assertArrayEquals(first, worths.values(worths.of(one)), where);
    }
    assertTrue(ties > 5, ties + " ties");
  }

  /** Unequal fits of a sum, bought or not, are worth no more together than the seats they take. */
  @Test
  void values_ofMoreThanALongHolds_areExact() {
    Task task =
        task(
            CellSketch.parse(
                "M - - | V 1 1 | F 0/0=+,1,900000000000000001,800000000000000003"
                    + " 1/1=-,1,900000000000000005,800000000000000007 | J"));
    List<Aim> aims = List.of(Aim.EQUIPPED, Aim.GOOD, Aim.OPENING, Aim.JAW);
    Worths worths = new Worths(task, aims);
    assertArrayEquals(
        new long[] {2, 1, 1_800_000_000_000_000_006L, 1_600_000_000_000_000_010L},
        worths.values(worths.of(0).add(worths.of(1))));
  }

  /** Two of a kind stand on either table, but there are three. */
  @Test
  void beyondStock_moreRoomThanVises_namesTheKindThatIsNotForSale() {
    String cell = "M - - | V 3 | F 0/0=+,2,1,1 1/0=+,2,1,1 | J";
    Task task = task(CellSketch.parse(cell));
    Worths worths = new Worths(task, List.of(Aim.SET_OUT));
    Choice both = Choice.of(task, List.of(0, 1)).orElseThrow();
    assertEquals(Set.of(0), worths.beyondStock(both));
    assertEquals(Set.of(), worths.beyondStock(Choice.of(task, List.of(0)).orElseThrow()));
    assertArrayEquals(new long[] {4}, worths.values(Relaxation.of(task, worths).worth()));
    assertArrayEquals(
        new long[] {3}, worths.values(Relaxation.of(task, worths.withAllOut(Set.of(0))).worth()));
    Task selling = task(CellSketch.parse(cell.replace("V 3", "V 3@100") + " | buy"));
    assertEquals(Set.of(), new Worths(selling, List.of(Aim.SET_OUT)).beyondStock(both));
  }

  private static Task task(CellSketch asked) {
    return new Task(
        asked.cell(), asked.wishes().buy(), asked.wishes().budget(), asked.wishes().keep());
  }

  private static List<Aim> sums(Task task) {
    return task.aims().stream().filter(aim -> aim != Aim.HELD).toList();
  }

  private static Choice choice(Task task, Random random) {
    List<Integer> taken = new ArrayList<>();
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      List<Integer> fits = task.ofMachine(machine);
      if (!fits.isEmpty() && random.nextInt(4) > 0) {
        taken.add(fits.get(random.nextInt(fits.size())));
      }
    }
    return Choice.of(task, taken).orElseThrow();
  }

  private static long[] values(Task task, List<Aim> aims, Choice choice) {
    return aims.stream().mapToLong(aim -> task.value(aim, choice)).toArray();
  }
}
