package org.jawroom.plan.program;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

/**
 * Adapter to ojAlgo. Only this class and {@link Complaints} know which solver answers a {@link
 * Program}.
 */
public final class Solver {

  /** The status that the solver claims; callers verify every point in whole numbers. */
  public enum State {
    OPTIMAL,
    FEASIBLE,
    INFEASIBLE,
    UNDECIDED
  }

  /**
   * What the solver claims.
   *
   * @param values of the columns; empty if there is no point
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, nor kept
  public record Answer(State state, double objective, double[] values) {

    /** Keeps the point, if any, but drops the claim of optimality or infeasibility. */
    Answer inDoubt() {
      return new Answer(values.length > 0 ? State.FEASIBLE : State.UNDECIDED, objective, values);
    }
  }

  private static final double[] NO_POINT = {};

  private static final NumberContext GAP = NumberContext.of(10, 8);

  /**
   * One thread and no Gomory cuts: with them ojAlgo 56.1.1 reports some small feasible programs as
   * infeasible (PlannerTwinTest contains one). The thresholds below exceed any violation and any
   * fractionality, so no cut is generated.
   */
  private static final IntegerStrategy STRATEGY =
      IntegerStrategy.newConfigurable()
          .withParallelism(() -> 1)
          .withGapTolerance(GAP)
          .withGMICutConfiguration(
              new IntegerStrategy.GMICutConfiguration()
                  .withFractionality(1)
                  .withViolation(BigDecimal.valueOf(1_000_000_000)));

  private Solver() {}

  /**
   * A constant added to the objective. The solver's gap is relative to the objective; with this
   * height it amounts to at least half and less than one whole unit. A better plan is better by at
   * least one unit, so branches that promise less are pruned.
   */
  private static double height(Program program) {
    return 0.9 / GAP.getRelativeError() - program.reach();
  }

  /** How a program is handed over; the ways fail on different programs. */
  private enum Way {
    MIXED,
    /** The last column first. */
    REVERSED,
    /**
     * All columns whole. Asked so about a program that other ways can solve, it took a point that
     * was not optimal for optimal once in 4200; so those come first.
     */
    WHOLE,
    /** The same with sparse matrices whatever the size. */
    WHOLE_SPARSE;

    boolean isWhole() {
      return this == WHOLE || this == WHOLE_SPARSE;
    }

    /** The place of a column among the variables. */
    int place(int column, int columns) {
      return this == REVERSED ? columns - 1 - column : column;
    }
  }

  /**
   * Maximizes on one thread.
   *
   * <p>Some feasible programs are reported as infeasible, about one in 500 of those that {@code
   * MirrorTest} makes; each other way it is mostly other ones. One of its first 2300 cells has such
   * a program that is reported so every way but reversed. So a program counts as infeasible only if
   * it is reported so every way.
   *
   * @param program one of whose optimal points is whole
   * @param remainingMillis the time left, above 0, queried before each attempt
   */
  public static Answer maximise(Program program, LongSupplier remainingMillis) {
    Answer answer = new Answer(State.INFEASIBLE, 0, NO_POINT);
    if (!program.isPossible()) {
      return answer;
    }
    for (Way way : Way.values()) {
      long left = remainingMillis.getAsLong();
      if (way != Way.MIXED && left <= 0) {
        return new Answer(State.UNDECIDED, 0, NO_POINT);
      }
      answer = attempt(way.isWhole() ? program.whole() : program, way, left);
      if (answer.state() != State.INFEASIBLE) {
        return answer;
      }
    }
    return answer;
  }

  private static Answer attempt(Program program, Way way, long millis) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    int columns = program.columns().size();
    List<Variable> variables = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      Program.Column column = program.columns().get(way.place(i, columns));
      variables.add(
          model.newVariable("x" + i).lower(0).upper(column.upper()).integer(column.whole()));
    }
    int number = 0;
    for (Program.Row row : program.rows()) {
      Expression expression = model.newExpression("r" + number++);
      row.sum()
          .forEach(
              (column, amount) ->
                  expression.set(variables.get(way.place(column, columns)), amount));
      if (row.lower() != Long.MIN_VALUE) {
        expression.lower(row.lower());
      }
      if (row.upper() != Long.MAX_VALUE) {
        expression.upper(row.upper());
      }
    }
    program
        .objective()
        .forEach(
            (column, amount) ->
                variables.get(way.place(column, columns)).weight(BigDecimal.valueOf(amount)));
    model.newVariable("height").level(height(program)).weight(1);
    model.options.integer(STRATEGY);
    if (way == Way.WHOLE_SPARSE) {
      model.options.sparse = true;
    }
    model.options.time_abort = Math.max(1, millis);
    model.options.time_suffice = model.options.time_abort;
    long before = Complaints.written();
    Answer answer = read(model.maximise(), program, way);
    return Complaints.written() == before ? answer : answer.inDoubt();
  }

  private static Answer read(Optimisation.Result result, Program program, Way way) {
    Optimisation.State claimed = result.getState();
    if (claimed == Optimisation.State.INFEASIBLE) {
      return new Answer(State.INFEASIBLE, 0, NO_POINT);
    }
    if (!claimed.isFeasible()) {
      return new Answer(State.UNDECIDED, 0, NO_POINT);
    }
    double[] values = new double[program.columns().size()];
    for (int column = 0; column < values.length; column++) {
      values[column] = result.doubleValue(way.place(column, values.length));
    }
    State state = claimed.isOptimal() ? State.OPTIMAL : State.FEASIBLE;
    return new Answer(state, result.getValue() - height(program), values);
  }
}
