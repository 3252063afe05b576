package org.jawroom.checks.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/** The exact simplex method against textbook programs and ojAlgo. */
class PolytopeTest {

  private static ValueRange bounds(long lo, long hi) {
    return new ValueRange(Optional.of(Rational.of(lo)), Optional.of(Rational.of(hi)));
  }

  private static ValueRange atMost(long hi) {
    return new ValueRange(Optional.empty(), Optional.of(Rational.of(hi)));
  }

  private static ValueRange atLeast(long lo) {
    return new ValueRange(Optional.of(Rational.of(lo)), Optional.empty());
  }

  private static List<Rational> factors(long... factors) {
    return IntStream.range(0, factors.length).mapToObj(i -> Rational.of(factors[i])).toList();
  }

  /**
   * Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms, chapter 29 (from memory): 3x₁
   * + x₂ + 2x₃ is at most 28 where x₁ + x₂ + 3x₃ ≤ 30, 2x₁ + 2x₂ + 5x₃ ≤ 24, 4x₁ + x₂ + 2x₃ ≤ 36.
   */
  @Test
  void range_textbookProgram_hasItsOptimum() {
    Polytope polytope =
        Polytope.of(
                List.of(atLeast(0), atLeast(0), atLeast(0)),
                List.of(
                    new Polytope.Row(factors(1, 1, 3), atMost(30)),
                    new Polytope.Row(factors(2, 2, 5), atMost(24)),
                    new Polytope.Row(factors(4, 1, 2), atMost(36))))
            .orElseThrow();
    assertEquals(bounds(0, 28), polytope.range(factors(3, 1, 2)));
  }

  @Test
  void of_boundsThatTouch_holdsOnePoint() {
    List<ValueRange> free = List.of(ValueRange.ALL);
    Polytope.Row atMostFive = new Polytope.Row(factors(1), atMost(5));
    assertEquals(
        Optional.of(bounds(5, 5)),
        Polytope.of(free, List.of(atMostFive, new Polytope.Row(factors(1), atLeast(5))))
            .map(polytope -> polytope.range(factors(1))));
    assertTrue(
        Polytope.of(free, List.of(atMostFive, new Polytope.Row(factors(1), atLeast(6)))).isEmpty());
  }

  @Test
  void range_withoutEnd_hasNone() {
    Polytope half = Polytope.of(List.of(atLeast(2)), List.of()).orElseThrow();
    assertEquals(atLeast(2), half.range(factors(1)));
    assertEquals(atMost(-4), half.range(factors(-2)));
    Polytope all = Polytope.of(List.of(ValueRange.ALL), List.of()).orElseThrow();
    assertEquals(ValueRange.ALL, all.range(factors(1)));
  }

  @Test
  void range_randomPrograms_agreesWithOjAlgo() {
    Random random = new Random(7);
    int feasible = 0;
    int empty = 0;
    for (int seed = 0; seed < 400; seed++) {
      int columns = 1 + random.nextInt(4);
      List<ValueRange> bounds = new ArrayList<>();
      for (int j = 0; j < columns; j++) {
        long lo = random.nextInt(11) - 5;
        bounds.add(bounds(lo, lo + random.nextInt(6)));
      }
      List<Polytope.Row> rows = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(4); i++) {
        long lo = random.nextInt(17) - 12;
        rows.add(new Polytope.Row(random(random, columns), bounds(lo, lo + random.nextInt(16))));
      }
      List<Rational> aim = random(random, columns);
      Optional<ValueRange> exact = Polytope.of(bounds, rows).map(polytope -> polytope.range(aim));
      Optional<double[]> about = ojAlgo(bounds, rows, aim);
      assertEquals(about.isPresent(), exact.isPresent(), "seed " + seed + rows + bounds);
      if (exact.isPresent()) {
        assertEquals(about.get()[0], value(exact.get().lo()), 1e-6, "seed " + seed);
        assertEquals(about.get()[1], value(exact.get().hi()), 1e-6, "seed " + seed);
        feasible++;
      } else {
        empty++;
      }
    }
    assertTrue(feasible > 100 && empty > 100, feasible + " " + empty);
  }

  private static List<Rational> random(Random random, int columns) {
    return IntStream.range(0, columns)
        .mapToObj(j -> Rational.of(random.nextInt(7) - 3, 1 + random.nextInt(2)))
        .toList();
  }

  private static double value(Optional<Rational> end) {
    Rational value = end.orElseThrow();
    return value.numerator().doubleValue() / value.denominator().doubleValue();
  }

  private static Optional<double[]> ojAlgo(
      List<ValueRange> bounds, List<Polytope.Row> rows, List<Rational> aim) {
    double[] range = new double[2];
    for (boolean most : new boolean[] {false, true}) {
      ExpressionsBasedModel model = new ExpressionsBasedModel();
      for (int j = 0; j < bounds.size(); j++) {
        model
            .newVariable("x" + j)
            .lower(BigDecimal.valueOf(value(bounds.get(j).lo())))
            .upper(BigDecimal.valueOf(value(bounds.get(j).hi())))
            .weight(BigDecimal.valueOf(value(Optional.of(aim.get(j)))));
      }
      for (int i = 0; i < rows.size(); i++) {
        Expression row =
            model
                .newExpression("row" + i)
                .lower(BigDecimal.valueOf(value(rows.get(i).bounds().lo())))
                .upper(BigDecimal.valueOf(value(rows.get(i).bounds().hi())));
        for (int j = 0; j < bounds.size(); j++) {
          row.set(j, BigDecimal.valueOf(value(Optional.of(rows.get(i).factors().get(j)))));
        }
      }
      Optimisation.Result result = most ? model.maximise() : model.minimise();
      if (!result.getState().isFeasible()) {
        return Optional.empty();
      }
      range[most ? 1 : 0] = result.getValue();
    }
    return Optional.of(range);
  }
}
