package org.jawroom.plan.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Small random seatings against every way to seat the rows. */
class SeatingTest {

  private static final int SEEDS = 2000;
  private static final int CHANGES = 6;

  @Test
  void with_rowsChangedOneAfterTheOther_isTheBestOfAllWays() {
    int none = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Random random = new Random(seed);
      int rows = 1 + random.nextInt(4);
      int[] capacity = new int[rows + random.nextInt(4)];
      Arrays.setAll(capacity, column -> column < rows ? 1 : random.nextInt(3));
      Long[][] worths = new Long[rows][capacity.length];
      Seating seating = Seating.empty(rows, capacity);
      for (int row = 0; row < rows; row++) {
        worths[row][row] = 0L;
      }
      for (int change = 0; change < rows + CHANGES; change++) {
        int row = change < rows ? change : random.nextInt(rows);
        Long[] before = worths[row];
        worths[row] = worths(random, capacity.length);
        Optional<Seating> next = seating.with(row, whole(worths[row]));
        Optional<Long> best = best(worths, capacity, 0);
        String where = "seed " + seed + ": " + Arrays.deepToString(worths);
        assertEquals(best.map(BigInteger::valueOf), next.map(Seating::total), where);
        if (next.isEmpty()) {
          none++;
          worths[row] = before;
        } else {
          seating = next.get();
          assertSeats(seating, worths, capacity, where);
          assertLosses(seating, worths, capacity, where);
        }
      }
    }
    assertTrue(none > SEEDS / 10, none + " without a seating");
  }

  private static Long[] worths(Random random, int columns) {
    Long[] worths = new Long[columns];
    for (int column = 0; column < columns; column++) {
      worths[column] = random.nextInt(3) == 0 ? null : (long) (random.nextInt(12) - 4);
    }
    return worths;
  }

  private static BigInteger[] whole(Long[] worths) {
    return Arrays.stream(worths)
        .map(worth -> worth == null ? null : BigInteger.valueOf(worth))
        .toArray(BigInteger[]::new);
  }

  /** The greatest total of the rows from {@code row} on in what is left of the columns. */
  private static Optional<Long> best(Long[][] worths, int[] left, int row) {
    if (row == worths.length) {
      return Optional.of(0L);
    }
    Optional<Long> best = Optional.empty();
    for (int column = 0; column < left.length; column++) {
      if (left[column] > 0 && worths[row][column] != null) {
        long worth = worths[row][column];
        left[column]--;
        Optional<Long> total = best(worths, left, row + 1).map(rest -> rest + worth);
        left[column]++;
        if (best.isEmpty() || total.isPresent() && total.get() > best.get()) {
          best = total;
        }
      }
    }
    return best;
  }

  private static void assertSeats(Seating seating, Long[][] worths, int[] capacity, String where) {
    int[] left = capacity.clone();
    long total = 0;
    for (int row = 0; row < worths.length; row++) {
      int column = seating.columnOf(row);
      assertTrue(--left[column] >= 0, where);
      total += worths[row][column];
    }
    assertEquals(BigInteger.valueOf(total), seating.total(), where);
  }

  /** Whoever must take a seat loses at least what is said. */
  private static void assertLosses(Seating seating, Long[][] worths, int[] capacity, String where) {
    for (int row = 0; row < worths.length; row++) {
      for (int column = 0; column < capacity.length; column++) {
        if (worths[row][column] != null) {
          Long[][] forced = worths.clone();
          forced[row] = new Long[capacity.length];
          forced[row][column] = worths[row][column];
          BigInteger most =
              seating
                  .total()
                  .subtract(seating.loss(row, column, BigInteger.valueOf(worths[row][column])));
          best(forced, capacity, 0)
              .ifPresent(best -> assertTrue(BigInteger.valueOf(best).compareTo(most) <= 0, where));
        }
      }
    }
  }
}
