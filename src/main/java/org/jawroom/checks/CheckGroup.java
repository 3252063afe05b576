package org.jawroom.checks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jawroom.checks.exact.Polytope;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.checks.expected.Unknown;

/**
 * Checks that share readings, ends or faces, and what explains them together: an error for each
 * reading that may be wrong, one within tolerance for each end and face, a value within its range
 * for each open reading, and errors of the checks' own measures. All of it is linear, so that a set
 * of readings explains the checks exactly if a polytope is not empty.
 */
final class CheckGroup {
  private final List<ExpectedGap> checks;
  private final Terms terms;
  private final List<Unknown> unknowns;

  CheckGroup(List<ExpectedGap> checks, Terms terms) {
    this.checks = List.copyOf(checks);
    this.terms = terms;
    Set<Unknown> met = new LinkedHashSet<>();
    checks.forEach(check -> met.addAll(check.form().terms().keySet()));
    // In the order in which the tables were met, so that results do not depend on the checks.
    this.unknowns = terms.all().keySet().stream().filter(met::contains).toList();
  }

  List<ExpectedGap> checks() {
    return checks;
  }

  List<Unknown> unknowns() {
    return unknowns;
  }

  /** What explains the checks if some readings may have any possible value. */
  Optional<Solution> with(List<Unknown> wrong) {
    return solution(wrong, wrong);
  }

  /** What the checks leave of an open reading; empty if nothing explains them together. */
  Optional<ValueRange> left(Unknown open) {
    return solution(List.of(), List.of(open)).map(solution -> solution.of(open));
  }

  /**
   * @param asked quantities of which the solution is asked
   */
  private Optional<Solution> solution(List<Unknown> wrong, List<Unknown> asked) {
    Map<Unknown, Integer> places = new LinkedHashMap<>();
    List<ValueRange> bounds = new ArrayList<>();
    for (Unknown unknown : unknowns) {
      if (asked.contains(unknown) || isShared(unknown)) {
        places.put(unknown, bounds.size());
        bounds.add(wrong.contains(unknown) ? terms.possible(unknown) : terms.of(unknown));
      }
    }
    List<Polytope.Row> rows = new ArrayList<>();
    for (ExpectedGap check : checks) {
      List<Rational> factors = new ArrayList<>(Collections.nCopies(bounds.size(), Rational.ZERO));
      ValueRange sum =
          ValueRange.around(check.slack())
              .plus(ValueRange.at(check.found().minus(check.form().constant())));
      for (Map.Entry<Unknown, Rational> term : check.form().terms().entrySet()) {
        Integer place = places.get(term.getKey());
        if (place != null) {
          factors.set(place, term.getValue());
        } else {
          sum = sum.plus(terms.of(term.getKey()).times(term.getValue().negated()));
        }
      }
      rows.add(new Polytope.Row(factors, sum));
    }
    return Polytope.of(bounds, rows).map(polytope -> new Solution(places, polytope));
  }

  /** Whether several checks meet the quantity and it may have several values. */
  private boolean isShared(Unknown unknown) {
    return !terms.of(unknown).isSingle()
        && checks.stream().filter(check -> check.meets(unknown)).count() > 1;
  }

  /** The values that explain the checks. */
  record Solution(Map<Unknown, Integer> places, Polytope polytope) {

    /** What a quantity may be, which must be one that was asked for. */
    ValueRange of(Unknown unknown) {
      List<Rational> factors = new ArrayList<>(Collections.nCopies(places.size(), Rational.ZERO));
      factors.set(places.get(unknown), Rational.ONE);
      return polytope.range(factors);
    }
  }
}
