package org.jawroom.report.checks;

import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.Rounding;

/**
 * Exact values as millimetres to 0.001. The lower end of a range is rounded down, the upper one up,
 * so that no range leaves out a true value.
 */
final class CheckFigures {
  private CheckFigures() {}

  /** A lower end; empty: there is none. */
  static String low(Optional<Rational> end) {
    return end.map(value -> Figures.millimetres(value.floor(), Rounding.DOWN)).orElse("");
  }

  /** An upper end, or an amount; empty: there is none. */
  static String high(Optional<Rational> end) {
    return end.map(value -> Figures.millimetres(value.ceiling(), Rounding.UP)).orElse("");
  }
}
