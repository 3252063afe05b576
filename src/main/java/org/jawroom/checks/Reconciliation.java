package org.jawroom.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.Expectations;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.checks.expected.Unknown;
import org.jawroom.shop.Check;
import org.jawroom.shop.Evidence;
import org.jawroom.shop.Shop;
import org.jawroom.shop.value.Measurand;

/**
 * What the checks of a shop say of its tables.
 *
 * @param checks in input order
 * @param suspicions one for each group of checks that disagrees, in the order of their first checks
 * @param narrowed in the order in which the checks meet the readings
 */
public record Reconciliation(
    List<Result> checks, List<Suspicion> suspicions, List<Narrowed> narrowed) {

  /**
   * One check.
   *
   * @param expected empty where part and guard never stand beside each other
   */
  public record Result(Check check, Optional<ExpectedGap> expected) {}

  public Reconciliation {
    checks = List.copyOf(checks);
    suspicions = List.copyOf(suspicions);
    narrowed = List.copyOf(narrowed);
  }

  /** Reconciles all checks of a shop. */
  public static Reconciliation of(Shop shop) {
    Terms terms = new Terms();
    Expectations expectations = new Expectations(shop.settings(), terms);
    List<Result> checks =
        shop.checks().stream().map(check -> new Result(check, expectations.of(check))).toList();
    List<ExpectedGap> expected =
        checks.stream().flatMap(result -> result.expected().stream()).toList();
    List<Suspicion> suspicions = new ArrayList<>();
    for (List<ExpectedGap> group : groups(expected)) {
      SuspectSearch.of(new CheckGroup(group, terms), terms).ifPresent(suspicions::add);
    }
    List<ExpectedGap> agreeing =
        expected.stream().filter(one -> one.says() == ExpectedGap.Agreement.AGREES).toList();
    List<Narrowed> narrowed = new ArrayList<>();
    for (List<ExpectedGap> group : groups(agreeing)) {
      narrowed.addAll(narrowed(new CheckGroup(group, terms), terms));
    }
    return new Reconciliation(checks, suspicions, narrowed);
  }

  /**
   * The checks that share readings, ends or faces, directly or by way of others; each group in the
   * order of the checks.
   */
  private static List<List<ExpectedGap>> groups(List<ExpectedGap> checks) {
    List<ExpectedGap> left = new ArrayList<>(checks);
    List<List<ExpectedGap>> groups = new ArrayList<>();
    while (!left.isEmpty()) {
      Set<Unknown> met = new HashSet<>(left.get(0).form().terms().keySet());
      List<ExpectedGap> group = List.of();
      List<ExpectedGap> joined = joined(left, met);
      while (joined.size() > group.size()) {
        group = joined;
        group.forEach(check -> met.addAll(check.form().terms().keySet()));
        joined = joined(left, met);
      }
      groups.add(group);
      left.removeAll(group);
    }
    return groups;
  }

  private static List<ExpectedGap> joined(List<ExpectedGap> checks, Set<Unknown> met) {
    return checks.stream().filter(check -> met.stream().anyMatch(check::meets)).toList();
  }

  private static List<Narrowed> narrowed(CheckGroup group, Terms terms) {
    List<Narrowed> narrowed = new ArrayList<>();
    for (Unknown unknown : group.unknowns()) {
      if (unknown instanceof Unknown.ReadingValue reading && !terms.of(unknown).isSingle()) {
        ValueRange was = terms.of(unknown);
        Optional<ValueRange> now = group.left(unknown);
        if (now.isPresent() && !now.get().equals(was)) {
          narrowed.add(new Narrowed(reading.measurand(), was, now.get()));
        }
      }
    }
    return narrowed;
  }

  /**
   * The readings suspected, without duplicates. Where no small set explains the checks, every
   * reading is that one of those that disagree meets.
   */
  public List<Measurand> suspects() {
    return suspicions.stream()
        .flatMap(one -> (one.choices().isEmpty() ? one.met() : one.readings()).stream())
        .distinct()
        .toList();
  }

  /** What reports mark. */
  public Evidence evidence() {
    List<Check> disagreeing =
        checks.stream()
            .filter(
                result ->
                    result.expected().isEmpty()
                        || result.expected().get().says() != ExpectedGap.Agreement.AGREES)
            .map(Result::check)
            .toList();
    List<Check> agreeing =
        checks.stream()
            .map(Result::check)
            .filter(check -> disagreeing.stream().noneMatch(check::isOfSamePairing))
            .toList();
    return new Evidence(suspects(), agreeing);
  }
}
