package org.jawroom.checks.exact;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A simplex tableau over variables that are 0 or more. Each row says that its basic variable is the
 * row's last entry less the sum of its factors times the variables outside the basis, which are 0.
 * The last row is the sum to be maximised, written likewise.
 */
final class SimplexTable {
  /** Taken off every row of the first phase, so that enough of it keeps each of them. */
  private static final int SLACK = -1;

  private final Rational[][] rows;
  private final int[] basis;
  private final int[] outside;

  private SimplexTable(Rational[][] rows, int[] basis, int[] outside) {
    this.rows = rows;
    this.basis = basis;
    this.outside = outside;
  }

  /**
   * A tableau whose basic solution keeps every row, with nothing to maximise; empty if no solution
   * keeps them.
   *
   * @param bounds each Σ factors·x ≤ the last entry
   * @param columns the number of variables
   */
  static Optional<SimplexTable> feasible(List<Rational[]> bounds, int columns) {
    int count = bounds.size();
    Rational[][] rows = new Rational[count + 1][];
    int[] basis = new int[count];
    int worst = 0;
    for (int i = 0; i < count; i++) {
      rows[i] = new Rational[columns + 2];
      System.arraycopy(bounds.get(i), 0, rows[i], 1, columns + 1);
      rows[i][0] = Rational.of(-1);
      basis[i] = columns + i;
      worst = value(rows[i]).compareTo(value(rows[worst])) < 0 ? i : worst;
    }
    // Maximise less the slack.
    rows[count] = zeros(columns + 2);
    rows[count][0] = Rational.ONE;
    int[] outside = new int[columns + 1];
    Arrays.setAll(outside, j -> j == 0 ? SLACK : j - 1);
    SimplexTable table = new SimplexTable(rows, basis, outside);
    if (count > 0 && value(rows[worst]).signum() < 0) {
      table.pivot(worst, 0);
      table.maximise();
      if (value(rows[count]).signum() < 0) {
        return Optional.empty();
      }
    }
    return Optional.of(table.withoutSlack());
  }

  /**
   * The greatest value of Σ factors·x over all variables; empty if there is none. This tableau
   * stays as it is.
   */
  Optional<Rational> greatest(Rational[] factors) {
    int count = basis.length;
    Rational[][] copies = new Rational[count + 1][];
    Arrays.setAll(copies, i -> rows[i].clone());
    copies[count] = zeros(outside.length + 1);
    for (int j = 0; j < outside.length; j++) {
      if (outside[j] < factors.length) {
        copies[count][j] = factors[outside[j]].negated();
      }
    }
    for (int i = 0; i < count; i++) {
      if (basis[i] < factors.length) {
        addTimes(copies[count], rows[i], factors[basis[i]]);
      }
    }
    SimplexTable table = new SimplexTable(copies, basis.clone(), outside.clone());
    return table.maximise() ? Optional.of(value(copies[count])) : Optional.empty();
  }

  /** Whether the last row has a greatest value; it then has it. */
  private boolean maximise() {
    Rational[] aim = rows[basis.length];
    while (true) {
      int entering =
          least(IntStream.range(0, outside.length).filter(j -> aim[j].signum() < 0), outside);
      if (entering < 0) {
        return true;
      }
      int leaving = leaving(entering);
      if (leaving < 0) {
        return false;
      }
      pivot(leaving, entering);
    }
  }

  /** The row that is the first to bind as a variable grows; −1 if none does. */
  private int leaving(int entering) {
    Rational least = null;
    int best = -1;
    for (int i = 0; i < basis.length; i++) {
      if (rows[i][entering].signum() > 0) {
        Rational limit = value(rows[i]).over(rows[i][entering]);
        int order = best < 0 ? -1 : limit.compareTo(least);
        if (order < 0 || order == 0 && basis[i] < basis[best]) {
          least = limit;
          best = i;
        }
      }
    }
    return best;
  }

  /** The place of the variable with the least index: Bland's rule. */
  private static int least(IntStream places, int[] variables) {
    return places.reduce(-1, (a, b) -> a >= 0 && variables[a] <= variables[b] ? a : b);
  }

  /** Swaps a basic variable with one outside the basis. */
  private void pivot(int row, int column) {
    Rational[] own = rows[row];
    Rational factor = own[column];
    own[column] = Rational.ONE;
    for (int j = 0; j < own.length; j++) {
      own[j] = own[j].over(factor);
    }
    for (int i = 0; i < rows.length; i++) {
      if (i != row && rows[i][column].signum() != 0) {
        Rational times = rows[i][column].negated();
        rows[i][column] = Rational.ZERO;
        addTimes(rows[i], own, times);
      }
    }
    int left = basis[row];
    basis[row] = outside[column];
    outside[column] = left;
  }

  private static void addTimes(Rational[] row, Rational[] other, Rational factor) {
    if (factor.signum() != 0) {
      for (int j = 0; j < row.length; j++) {
        if (other[j].signum() != 0) {
          row[j] = row[j].plus(other[j].times(factor));
        }
      }
    }
  }

  /** The same without the slack, which has come to 0. */
  private SimplexTable withoutSlack() {
    for (int i = 0; i < basis.length; i++) {
      if (basis[i] == SLACK) {
        // Its value is 0, so that a pivot on any factor, whatever its sign, changes no value.
        int column = 0;
        while (rows[i][column].signum() == 0) {
          column++;
        }
        pivot(i, column);
      }
    }
    int slack = IntStream.range(0, outside.length).filter(j -> outside[j] == SLACK).sum();
    Rational[][] left = new Rational[rows.length][];
    Arrays.setAll(left, i -> without(rows[i], slack));
    int[] rest = IntStream.range(0, outside.length).filter(j -> j != slack).toArray();
    return new SimplexTable(left, basis, IntStream.of(rest).map(j -> outside[j]).toArray());
  }

  private static Rational[] without(Rational[] row, int column) {
    Rational[] left = new Rational[row.length - 1];
    System.arraycopy(row, 0, left, 0, column);
    System.arraycopy(row, column + 1, left, column, left.length - column);
    return left;
  }

  private static Rational value(Rational[] row) {
    return row[row.length - 1];
  }

  private static Rational[] zeros(int count) {
    Rational[] zeros = new Rational[count];
    Arrays.fill(zeros, Rational.ZERO);
    return zeros;
  }

  int columns() {
    return outside.length;
  }
}
