package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * A mixed-integer program in whole numbers, to be maximised: the language between what is asked and
 * the solver that answers.
 */
final class Program {

  /**
   * Rows and objectives whose amounts add up to more than this are beyond what doubles settle for
   * certain.
   */
  static final long CERTAIN = 100_000_000;

  record Column(boolean whole, long upper) {}

  /** A lower limit of {@link Long#MIN_VALUE} or an upper of {@link Long#MAX_VALUE} is none. */
  record Row(Sum sum, long lower, long upper) {}

  private final List<Column> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private Sum objective = new Sum();
  private long constant;
  private long unit = 1;
  private boolean certain = true;
  private boolean possible = true;

  /** A column from 0 to {@code upper}; returns its index. */
  int column(boolean whole, long upper) {
    columns.add(new Column(whole, upper));
    return columns.size() - 1;
  }

  void atMost(Sum sum, long upper) {
    long divisor = sum.divisor();
    add(sum, divisor, Long.MIN_VALUE, Math.floorDiv(upper - sum.constant(), divisor));
  }

  void atLeast(Sum sum, long lower) {
    long divisor = sum.divisor();
    add(sum, divisor, -Math.floorDiv(sum.constant() - lower, divisor), Long.MAX_VALUE);
  }

  /**
   * Dividing by what all amounts have in common, and the limit toward the lattice, loses no whole
   * point.
   */
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

  void maximise(Sum sum) {
    unit = sum.divisor();
    constant = sum.constant();
    objective = sum.dividedBy(unit);
    certain &= reach(objective) <= CERTAIN;
  }

  /** No point takes a sum further from 0 than this. */
  private long reach(Sum sum) {
    long[] reach = {0};
    sum.forEach(
        (column, amount) ->
            reach[0] =
                Math.addExact(
                    reach[0], Math.multiplyExact(Math.abs(amount), columns.get(column).upper())));
    return reach[0];
  }

  /** The objective is no further from 0 than this. */
  long reach() {
    return reach(objective);
  }

  /** Whether all amounts are small enough for a solver in floating point to be believed. */
  boolean isCertain() {
    return certain;
  }

  /** False: a row without columns cannot be met, so there is no point at all. */
  boolean isPossible() {
    return possible;
  }

  /**
   * What the whole sum to be maximised comes to where the solver's objective is {@code reduced}.
   */
  long value(double reduced) {
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
