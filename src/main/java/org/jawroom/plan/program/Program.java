package org.jawroom.plan.program;

import java.util.ArrayList;
import java.util.List;

/**
 * A mixed-integer program with integer coefficients, to be maximized. It separates the formulation
 * from the solver.
 */
public final class Program {

  /**
   * If the absolute coefficients of a row or an objective, times the bounds of their columns, add
   * up to more than this, double arithmetic proves nothing.
   */
  static final long CERTAIN = 100_000_000;

  record Column(boolean whole, long upper) {}

  /** {@link Long#MIN_VALUE} means no lower limit, {@link Long#MAX_VALUE} no upper one. */
  record Row(Sum sum, long lower, long upper) {}

  private final List<Column> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private Sum objective = new Sum();
  private long constant;
  private long unit = 1;
  private boolean certain = true;
  private boolean possible = true;

  /** Adds a column with the closed range [0, {@code upper}]; returns its index. */
  public int column(boolean whole, long upper) {
    columns.add(new Column(whole, upper));
    return columns.size() - 1;
  }

  /**
   * The same program with every column whole. It has the same optimum if some optimal point of this
   * one is whole.
   */
  Program whole() {
    Program whole = new Program();
    columns.forEach(column -> whole.column(true, column.upper()));
    whole.rows.addAll(rows);
    whole.objective = objective;
    whole.constant = constant;
    whole.unit = unit;
    whole.certain = certain;
    whole.possible = possible;
    return whole;
  }

  public void atMost(Sum sum, long upper) {
    long divisor = sum.divisor();
    add(sum, divisor, Long.MIN_VALUE, Math.floorDiv(upper - sum.constant(), divisor));
  }

  public void atLeast(Sum sum, long lower) {
    long divisor = sum.divisor();
    add(sum, divisor, -Math.floorDiv(sum.constant() - lower, divisor), Long.MAX_VALUE);
  }

  /** Dividing by the common divisor and rounding the limit inward excludes no integral point. */
  private void add(Sum sum, long divisor, long lower, long upper) {
    Sum reduced = sum.dividedBy(divisor);
    if (reduced.isConstant()) {
      possible &= lower <= 0 && upper >= 0;
      return;
    }
    certain &=
        reach(reduced) <= CERTAIN
            && (lower == Long.MIN_VALUE || Math.abs(lower) <= CERTAIN)
            && (upper == Long.MAX_VALUE || Math.abs(upper) <= CERTAIN);
    rows.add(new Row(reduced, lower, upper));
  }

  public void maximise(Sum sum) {
    unit = sum.divisor();
    constant = sum.constant();
    objective = sum.dividedBy(unit);
    certain &= reach(objective) <= CERTAIN;
  }

  /** An upper bound on the absolute value of the sum over all points. */
  private long reach(Sum sum) {
    long[] reach = {0};
    sum.forEach(
        (column, amount) ->
            reach[0] =
                Math.addExact(
                    reach[0], Math.multiplyExact(Math.abs(amount), columns.get(column).upper())));
    return reach[0];
  }

  /** An upper bound on the absolute value of the objective. */
  long reach() {
    return reach(objective);
  }

  /** Whether all coefficients are small enough to trust a floating-point solver. */
  public boolean isCertain() {
    return certain;
  }

  /** False if a row without columns is violated, so that there is no feasible point. */
  boolean isPossible() {
    return possible;
  }

  /** The value of the original sum for the solver's objective value {@code reduced}. */
  public long value(double reduced) {
    return Math.round(reduced) * unit + constant;
  }

  List<Column> columns() {
    return columns;
  }

  List<Row> rows() {
    return rows;
  }

  Sum objective() {
    return objective;
  }
}
