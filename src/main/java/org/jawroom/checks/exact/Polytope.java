package org.jawroom.checks.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The points x of a space with bounds on each coordinate and on sums of them, exact: lo ≤ x_j ≤ hi
 * and lo ≤ Σ a_j·x_j ≤ hi. All bounds are closed.
 *
 * <p>The simplex method in rational numbers, with Bland's rule, which never cycles. Source: R. G.
 * Bland, New finite pivoting rules for the simplex method, Mathematics of Operations Research 2
 * (1977).
 */
public final class Polytope {

  /** One sum and its bounds. */
  public record Row(List<Rational> factors, ValueRange bounds) {
    public Row {
      factors = List.copyOf(factors);
    }
  }

  /** How a coordinate is made of variables that are 0 or more: offset + sign·p, less n if free. */
  private record Coordinate(Rational offset, int sign, int column, boolean free) {}

  private final List<Coordinate> coordinates;
  private final SimplexTable feasible;

  private Polytope(List<Coordinate> coordinates, SimplexTable feasible) {
    this.coordinates = coordinates;
    this.feasible = feasible;
  }

  /** The polytope; empty if no point keeps every bound. */
  public static Optional<Polytope> of(List<ValueRange> bounds, List<Row> rows) {
    List<Coordinate> coordinates = new ArrayList<>();
    int columns = 0;
    for (ValueRange one : bounds) {
      boolean free = one.lo().isEmpty() && one.hi().isEmpty();
      coordinates.add(
          new Coordinate(
              one.lo().or(one::hi).orElse(Rational.ZERO),
              one.lo().isPresent() || free ? 1 : -1,
              columns,
              free));
      columns += free ? 2 : 1;
    }
    List<Rational[]> table = new ArrayList<>();
    for (int j = 0; j < bounds.size(); j++) {
      ValueRange one = bounds.get(j);
      if (one.lo().isPresent() && one.hi().isPresent()) {
        Rational[] row = zeros(columns + 1);
        row[coordinates.get(j).column] = Rational.ONE;
        row[columns] = one.hi().get().minus(one.lo().get());
        table.add(row);
      }
    }
    for (Row row : rows) {
      for (int sign : new int[] {1, -1}) {
        Optional<Rational> end = sign > 0 ? row.bounds.hi() : row.bounds.lo();
        if (end.isPresent()) {
          Rational[] line = line(coordinates, row.factors, columns, sign);
          line[columns] = end.get().times(Rational.of(sign)).plus(line[columns]);
          table.add(line);
        }
      }
    }
    return SimplexTable.feasible(table, columns).map(start -> new Polytope(coordinates, start));
  }

  /** The least and the greatest value of Σ factors·x; an end is missing if there is none. */
  public ValueRange range(List<Rational> factors) {
    return new ValueRange(greatest(factors, -1).map(Rational::negated), greatest(factors, 1));
  }

  private Optional<Rational> greatest(List<Rational> factors, int sign) {
    int columns = feasible.columns();
    Rational[] line = line(coordinates, factors, columns, sign);
    Rational offset = line[columns].negated();
    return feasible.greatest(Arrays.copyOf(line, columns)).map(offset::plus);
  }

  /**
   * {@code sign} times a sum of coordinates in terms of the variables; the last entry is the part
   * that does not depend on them, negated.
   */
  private static Rational[] line(
      List<Coordinate> coordinates, List<Rational> factors, int columns, int sign) {
    Rational[] line = zeros(columns + 1);
    for (int j = 0; j < coordinates.size(); j++) {
      Coordinate one = coordinates.get(j);
      Rational factor = factors.get(j).times(Rational.of(sign));
      line[one.column] = factor.times(Rational.of(one.sign));
      if (one.free) {
        line[one.column + 1] = factor.negated();
      }
      line[columns] = line[columns].minus(factor.times(one.offset));
    }
    return line;
  }

  private static Rational[] zeros(int count) {
    Rational[] zeros = new Rational[count];
    Arrays.fill(zeros, Rational.ZERO);
    return zeros;
  }
}
