package org.jawroom.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.checks.expected.Unknown;
import org.jawroom.shop.value.Measurand;

/**
 * Finds the least sets of readings that explain a group of checks: a diagnosis of least
 * cardinality. Source: R. Reiter, A theory of diagnosis from first principles, Artificial
 * Intelligence 32 (1987): a diagnosis hits every conflict, here every check that disagrees.
 *
 * <p>Readings that enter every check by the same factors, but for a common one, explain the same:
 * of such a class one is tried for all, and no least set has two.
 */
final class SuspectSearch {
  private final CheckGroup group;
  private final Terms terms;
  private final List<ExpectedGap> disagreeing;
  private final List<List<Unknown>> classes;

  private SuspectSearch(CheckGroup group, Terms terms) {
    this.group = group;
    this.terms = terms;
    this.disagreeing =
        group.checks().stream()
            .filter(check -> check.says() != ExpectedGap.Agreement.AGREES)
            .toList();
    Map<Object, List<Unknown>> alike = new LinkedHashMap<>();
    for (Unknown unknown : group.unknowns()) {
      if (unknown instanceof Unknown.ReadingValue) {
        alike.computeIfAbsent(pattern(unknown), none -> new ArrayList<>()).add(unknown);
      }
    }
    this.classes = List.copyOf(alike.values());
  }

  /** What is suspected; empty if nothing wrong is needed to explain the checks. */
  static Optional<Suspicion> of(CheckGroup group, Terms terms) {
    return group.with(List.of()).isPresent()
        ? Optional.empty()
        : Optional.of(new SuspectSearch(group, terms).find());
  }

  /**
   * Reiter's tree of hitting sets, level by level: a set that explains too little leaves a
   * conflict, and every diagnosis that contains the set has a reading of the conflict besides.
   */
  private Suspicion find() {
    Set<List<Integer>> level = Set.of(List.of());
    for (int size = 1; size <= Suspicion.LARGEST; size++) {
      SortedSet<List<Integer>> larger = new TreeSet<>(SuspectSearch::compare);
      for (List<Integer> set : level) {
        List<ExpectedGap> conflict = conflict(first(set));
        for (int i = 0; i < classes.size(); i++) {
          Unknown one = classes.get(i).get(0);
          if (!set.contains(i) && conflict.stream().anyMatch(check -> check.meets(one))) {
            larger.add(Stream.concat(set.stream(), Stream.of(i)).sorted().toList());
          }
        }
      }
      List<List<Suspect>> choices = new ArrayList<>();
      level = new LinkedHashSet<>();
      for (List<Integer> set : larger) {
        if (hitsAll(first(set)) && group.with(first(set)).isPresent()) {
          members(set.stream().map(classes::get).toList(), new ArrayList<>(), choices);
        } else {
          level.add(set);
        }
      }
      if (!choices.isEmpty()) {
        return new Suspicion(group.checks(), choices, tellsApart(choices));
      }
    }
    return new Suspicion(group.checks(), List.of(), Optional.empty());
  }

  /** One reading of each class of a set. */
  private List<Unknown> first(List<Integer> set) {
    return set.stream().map(i -> classes.get(i).get(0)).toList();
  }

  private static int compare(List<Integer> one, List<Integer> other) {
    for (int i = 0; i < one.size(); i++) {
      if (!one.get(i).equals(other.get(i))) {
        return one.get(i).compareTo(other.get(i));
      }
    }
    return 0;
  }

  /**
   * Few checks that a set of readings, which does not explain all, does not explain together: the
   * check that completes the shortest contradictory beginning belongs to them, and so on among
   * those before it. Source: U. Junker, Preferred explanations and relaxations for over-constrained
   * problems, AAAI 2004, divides likewise (from memory).
   */
  private List<ExpectedGap> conflict(List<Unknown> wrong) {
    Optional<ExpectedGap> alone =
        disagreeing.stream().filter(check -> wrong.stream().noneMatch(check::meets)).findFirst();
    if (alone.isPresent()) {
      return List.of(alone.get());
    }
    List<ExpectedGap> conflict = new ArrayList<>();
    List<ExpectedGap> rest = group.checks();
    while (isExplained(conflict, wrong)) {
      int explained = 0;
      int contradicted = rest.size();
      while (contradicted - explained > 1) {
        int middle = (explained + contradicted) / 2;
        List<ExpectedGap> some = new ArrayList<>(conflict);
        some.addAll(rest.subList(0, middle));
        if (isExplained(some, wrong)) {
          explained = middle;
        } else {
          contradicted = middle;
        }
      }
      conflict.add(rest.get(contradicted - 1));
      rest = rest.subList(0, contradicted - 1);
    }
    return conflict;
  }

  private boolean isExplained(List<ExpectedGap> checks, List<Unknown> wrong) {
    return checks.isEmpty() || new CheckGroup(checks, terms).with(wrong).isPresent();
  }

  private void members(List<List<Unknown>> chosen, List<Unknown> set, List<List<Suspect>> choices) {
    if (set.size() == chosen.size()) {
      choices.add(suspects(set));
      return;
    }
    for (Unknown member : chosen.get(set.size())) {
      set.add(member);
      members(chosen, set, choices);
      set.remove(set.size() - 1);
    }
  }

  private List<Suspect> suspects(List<Unknown> set) {
    CheckGroup.Solution solution = group.with(set).orElseThrow();
    return set.stream()
        .map(
            unknown ->
                new Suspect(
                    measurand(unknown),
                    terms.of(unknown),
                    solution.of(unknown),
                    explains(set, unknown)))
        .toList();
  }

  private int explains(List<Unknown> set, Unknown own) {
    return (int)
        disagreeing.stream()
            .filter(
                check -> set.stream().noneMatch(other -> !other.equals(own) && check.meets(other)))
            .count();
  }

  /** Whether every check that disagrees meets one of the readings. */
  private boolean hitsAll(List<Unknown> set) {
    return disagreeing.stream().allMatch(check -> set.stream().anyMatch(check::meets));
  }

  /**
   * The factors of a reading in every check, over the first of them, and how far below its written
   * value it may be, in terms of the first; an open reading is alone, since its own range no longer
   * counts where it is a suspect.
   */
  private Object pattern(Unknown unknown) {
    if (!terms.of(unknown).isSingle()) {
      return unknown;
    }
    List<Rational> factors = new ArrayList<>();
    Optional<Rational> first = Optional.empty();
    for (ExpectedGap check : group.checks()) {
      Rational factor = check.form().terms().getOrDefault(unknown, Rational.ZERO);
      if (first.isEmpty() && factor.signum() != 0) {
        first = Optional.of(factor);
      }
      factors.add(first.isPresent() ? factor.over(first.get()) : factor);
    }
    Rational scale = first.orElse(Rational.ONE);
    ValueRange possible = terms.possible(unknown);
    Rational written = terms.of(unknown).lo().orElseThrow();
    return List.of(factors, possible.plus(ValueRange.at(written.negated())).times(scale));
  }

  /**
   * The reading that separates most pairs of choices: what one says it is, the other excludes. A
   * choice without it says that it is as written, within its tolerance.
   */
  private Optional<Measurand> tellsApart(List<List<Suspect>> choices) {
    Optional<Measurand> best = Optional.empty();
    long most = 0;
    List<Measurand> readings =
        choices.stream()
            .flatMap(choice -> choice.stream().map(Suspect::reading))
            .distinct()
            .toList();
    for (Measurand reading : readings) {
      List<ValueRange> said = choices.stream().map(choice -> said(choice, reading)).toList();
      long apart = 0;
      for (int i = 0; i < said.size(); i++) {
        for (int j = 0; j < i; j++) {
          apart += said.get(i).isApartFrom(said.get(j)) ? 1 : 0;
        }
      }
      if (apart > most) {
        most = apart;
        best = Optional.of(reading);
      }
    }
    return best;
  }

  private ValueRange said(List<Suspect> choice, Measurand reading) {
    return choice.stream()
        .filter(suspect -> suspect.reading().equals(reading))
        .findFirst()
        .map(Suspect::mustBe)
        .orElseGet(() -> terms.of(new Unknown.ReadingValue(reading)).plus(slack(reading)));
  }

  /**
   * How far a reading that is right may be off: by the widest error of the ends, or of the faces,
   * that it enters, since that covers all readings on the way.
   */
  private ValueRange slack(Measurand reading) {
    Unknown unknown = new Unknown.ReadingValue(reading);
    return group.checks().stream()
        .filter(check -> check.meets(unknown))
        .flatMap(check -> check.form().terms().keySet().stream())
        .filter(
            reading.isOfMachine()
                ? Unknown.GuardFace.class::isInstance
                : Unknown.PartEnd.class::isInstance)
        .map(terms::of)
        .max(Comparator.comparing(error -> error.hi().orElseThrow()))
        .orElse(ValueRange.ZERO);
  }

  private static Measurand measurand(Unknown unknown) {
    return ((Unknown.ReadingValue) unknown).measurand();
  }
}
