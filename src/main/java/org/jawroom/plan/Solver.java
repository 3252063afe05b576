package org.jawroom.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

/** Asks ojAlgo; with {@link Complaints} all that knows which solver answers a {@link Program}. */
final class Solver {

  /**
   * What the solver says; nothing of it is believed before it has been counted again in whole
   * numbers.
   */
  enum State {
    OPTIMAL,
    FEASIBLE,
    INFEASIBLE,
    UNDECIDED
  }

  /**
   * @param values of the columns; empty if there is no point
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, nor kept
  record Answer(State state, double objective, double[] values) {

    /** The point stands, if there is one; that none is better, or none there, does not. */
    Answer inDoubt() {
      return new Answer(values.length > 0 ? State.FEASIBLE : State.UNDECIDED, objective, values);
    }
  }

  private static final NumberContext GAP = NumberContext.of(10, 8);

  /**
   * One thread, and no Gomory cuts: with them ojAlgo 56.1.1 calls some small programs infeasible
   * that are not (PlannerTwinTest has one). No cut is ever violated by as much as this, and no part
   * is such a fraction.
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
   * Added to the objective, so that the gap, which the solver reckons in parts of the objective,
   * comes to between a half and less than one whole: where a better plan must be better by one at
   * least, branches that promise less are not worth the time.
   */
  private static double height(Program program) {
    return 0.9 / GAP.getRelativeError() - program.reach();
  }

  /** Answers within about {@code millis}, on one thread. */
  static Answer maximise(Program program, long millis) {
    if (!program.isPossible()) {
      return new Answer(State.INFEASIBLE, 0, new double[0]);
    }
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> variables = new ArrayList<>();
    for (Program.Column column : program.columns()) {
      variables.add(
          model
              .newVariable("x" + variables.size())
              .lower(0)
              .upper(column.upper())
              .integer(column.whole()));
    }
    int number = 0;
    for (Program.Row row : program.rows()) {
      Expression expression = model.newExpression("r" + number++);
      row.sum().forEach((column, amount) -> expression.set(variables.get(column), amount));
      if (row.lower() != Long.MIN_VALUE) {
        expression.lower(row.lower());
      }
      if (row.upper() != Long.MAX_VALUE) {
        expression.upper(row.upper());
      }
    }
    program
        .objective()
        .forEach((column, amount) -> variables.get(column).weight(BigDecimal.valueOf(amount)));
    model.newVariable("height").level(height(program)).weight(1);
    model.options.integer(STRATEGY);
    model.options.time_abort = Math.max(1, millis);
    model.options.time_suffice = model.options.time_abort;
    long before = Complaints.written();
    Answer answer = read(model.maximise(), program);
    return Complaints.written() == before ? answer : answer.inDoubt();
  }

  private static Answer read(Optimisation.Result result, Program program) {
    Optimisation.State told = result.getState();
    if (told == Optimisation.State.INFEASIBLE) {
      return new Answer(State.INFEASIBLE, 0, new double[0]);
    }
    if (!told.isFeasible()) {
      return new Answer(State.UNDECIDED, 0, new double[0]);
    }
    double[] values = new double[program.columns().size()];
    for (int column = 0; column < values.length; column++) {
      values[column] = result.doubleValue(column);
    }
    State state = told.isOptimal() ? State.OPTIMAL : State.FEASIBLE;
    return new Answer(state, result.getValue() - height(program), values);
  }
}
