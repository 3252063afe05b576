package org.jawroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.Expectations;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.checks.expected.Unknown;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Check;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;

/**
 * Checks of random shops whose tables have no, one, two or three readings wrong, against a search
 * through all sets of readings with ojAlgo, which knows nothing of classes, groups and exact
 * arithmetic.
 */
class SuspectSearchTest {
  private static final List<Profile> PROFILES =
      List.of(Profile.PLAIN, Profile.TOLERANCES, Profile.BOTH_JAWS, Profile.CLUTTERED);
  private static final long TOLERANCE = Length.MM / 2;

  /** Readings of which every set of three is tried. */
  private static final int FEW = 12;

  private int nothingWrong;
  private int oneWrong;
  private int twoWrong;
  private int threeWrong;
  private int everyThree;
  private int severalChoices;
  private int toldApart;

  @Test
  void of_readingsMadeWrong_findsThem() {
    for (Profile profile : PROFILES) {
      for (long seed = 0; seed < 60; seed++) {
        check(profile, seed, (int) (seed % 4));
      }
    }
    assertTrue(nothingWrong >= 40, "nothing wrong " + nothingWrong);
    assertTrue(oneWrong >= 30, "one wrong " + oneWrong);
    assertTrue(twoWrong >= 10, "two wrong " + twoWrong);
    assertTrue(threeWrong >= 5, "three wrong " + threeWrong);
    assertTrue(everyThree >= 3, "every set of three " + everyThree);
    assertTrue(severalChoices >= 20, "several choices " + severalChoices);
    assertTrue(toldApart >= 20, "told apart " + toldApart);
  }

  private void check(Profile profile, long seed, int wrongs) {
    Random random = new Random(seed);
    Shop shop = RandomShops.shop(profile, seed);
    Terms terms = new Terms();
    Expectations expectations = new Expectations(shop.settings(), terms);
    List<ExpectedGap> forms = new ArrayList<>();
    for (int tries = 0; tries < 60 && forms.size() < 4; tries++) {
      expectations.of(random(shop, random)).ifPresent(forms::add);
    }
    List<Unknown> readings =
        forms.stream()
            .flatMap(form -> form.form().terms().keySet().stream())
            .filter(Unknown.ReadingValue.class::isInstance)
            .distinct()
            .toList();
    // The truth: the tables plus errors, large ones of the readings made wrong.
    Map<Unknown, Rational> errors = new HashMap<>();
    for (ExpectedGap form : forms) {
      for (Unknown unknown : form.form().terms().keySet()) {
        if (!(unknown instanceof Unknown.ReadingValue) && !errors.containsKey(unknown)) {
          errors.put(unknown, within(terms.of(unknown).hi().orElseThrow().floor(), random));
        }
      }
    }
    Map<Unknown, Rational> wrong = new LinkedHashMap<>();
    for (int tries = 0; wrong.size() < wrongs; tries++) {
      assertTrue(tries < 1_000, "no reading to make wrong");
      long off = (10 + random.nextInt(20)) * Length.MM * (random.nextBoolean() ? 1 : -1);
      Unknown reading = readings.get(random.nextInt(readings.size()));
      Rational written = terms.of(reading).lo().orElseThrow();
      if (terms.possible(reading).contains(written.plus(Rational.of(off)))) {
        wrong.put(reading, Rational.of(off));
      }
    }
    errors.putAll(wrong);
    List<Check> checks = forms.stream().map(form -> found(form, terms, errors, random)).toList();
    String input =
        profile + " seed " + seed + " wrong " + wrong + "\n" + ShopCsv.text(shop) + checks;
    Reconciliation said = Reconciliation.of(shop.withJobs(List.of()).withChecks(checks));
    if (wrongs == 0) {
      assertEquals(List.of(), said.suspicions(), input);
      nothingWrong++;
      return;
    }
    for (Suspicion suspicion : said.suspicions()) {
      assertFalse(suspicion.choices().isEmpty(), input);
      agreeWithAllSets(suspicion, terms, input);
      holdsTheTruth(suspicion, wrong, terms, input);
    }
  }

  /** The wrong readings that a group meets are a choice if no smaller set explains it. */
  private void holdsTheTruth(
      Suspicion suspicion, Map<Unknown, Rational> wrong, Terms terms, String input) {
    Set<Measurand> met = new HashSet<>();
    for (Unknown unknown : wrong.keySet()) {
      if (suspicion.checks().stream().anyMatch(check -> check.meets(unknown))) {
        met.add(((Unknown.ReadingValue) unknown).measurand());
      }
    }
    int size = suspicion.choices().get(0).size();
    assertTrue(size <= met.size(), input);
    severalChoices += suspicion.choices().size() > 1 ? 1 : 0;
    toldApart += suspicion.tellsApart().isPresent() ? 1 : 0;
    if (size < met.size()) {
      return;
    }
    List<Suspect> truth =
        suspicion.choices().stream()
            .filter(
                choice ->
                    choice.stream().map(Suspect::reading).collect(Collectors.toSet()).equals(met))
            .findFirst()
            .orElseThrow(() -> new AssertionError(input));
    for (Suspect suspect : truth) {
      Unknown unknown = new Unknown.ReadingValue(suspect.reading());
      Rational value = terms.of(unknown).lo().orElseThrow().plus(wrong.get(unknown));
      assertTrue(suspect.mustBe().contains(value), suspect + " " + input);
    }
    oneWrong += size == 1 ? 1 : 0;
    twoWrong += size == 2 ? 1 : 0;
    threeWrong += size == 3 ? 1 : 0;
  }

  /**
   * Every set of one reading; if none explains the checks, every set of two; if none of these does,
   * every set of three of few readings, and of many only the sets that are listed.
   */
  private void agreeWithAllSets(Suspicion suspicion, Terms terms, String input) {
    List<Unknown> readings =
        suspicion.checks().stream()
            .flatMap(check -> check.form().terms().keySet().stream())
            .filter(Unknown.ReadingValue.class::isInstance)
            .distinct()
            .toList();
    Set<Set<Unknown>> sets = new HashSet<>();
    for (Unknown one : readings) {
      addIfItExplains(Set.of(one), suspicion.checks(), terms, sets);
    }
    if (sets.isEmpty()) {
      for (int i = 0; i < readings.size(); i++) {
        for (int j = 0; j < i; j++) {
          Set<Unknown> pair = Set.of(readings.get(i), readings.get(j));
          addIfItExplains(pair, suspicion.checks(), terms, sets);
        }
      }
    }
    if (sets.isEmpty() && readings.size() <= FEW) {
      for (int i = 0; i < readings.size(); i++) {
        for (int j = 0; j < i; j++) {
          for (int k = 0; k < j; k++) {
            Set<Unknown> three = Set.of(readings.get(i), readings.get(j), readings.get(k));
            addIfItExplains(three, suspicion.checks(), terms, sets);
          }
        }
      }
      everyThree++;
    } else if (sets.isEmpty()) {
      for (List<Suspect> choice : suspicion.choices()) {
        Set<Unknown> three =
            choice.stream()
                .map(suspect -> (Unknown) new Unknown.ReadingValue(suspect.reading()))
                .collect(Collectors.toSet());
        assertEquals(3, three.size(), input);
        addIfItExplains(three, suspicion.checks(), terms, sets);
      }
    }
    assertEquals(
        sets,
        suspicion.choices().stream()
            .map(
                choice ->
                    choice.stream()
                        .map(suspect -> (Unknown) new Unknown.ReadingValue(suspect.reading()))
                        .collect(Collectors.toSet()))
            .collect(Collectors.toSet()),
        input);
  }

  private static void addIfItExplains(
      Set<Unknown> set, List<ExpectedGap> checks, Terms terms, Set<Set<Unknown>> sets) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Map<Unknown, Variable> variables = new LinkedHashMap<>();
    for (ExpectedGap check : checks) {
      for (Unknown unknown : check.form().terms().keySet()) {
        if (!variables.containsKey(unknown)) {
          Variable variable = model.newVariable("v" + variables.size());
          variables.put(unknown, variable);
          ValueRange bounds = set.contains(unknown) ? terms.possible(unknown) : terms.of(unknown);
          bounds.lo().ifPresent(end -> variable.lower(mm(end)));
          bounds.hi().ifPresent(end -> variable.upper(mm(end)));
        }
      }
    }
    for (int i = 0; i < checks.size(); i++) {
      ExpectedGap check = checks.get(i);
      Expression row = model.newExpression("row" + i);
      check
          .form()
          .terms()
          .forEach((unknown, factor) -> row.set(variables.get(unknown), about(factor)));
      Rational known = check.found().minus(check.form().constant());
      row.lower(mm(known.minus(Rational.of(check.slack()))));
      row.upper(mm(known.plus(Rational.of(check.slack()))));
    }
    if (model.minimise().getState().isFeasible()) {
      sets.add(set);
    }
  }

  private static BigDecimal mm(Rational length) {
    return about(length.over(Rational.of(Length.MM)));
  }

  private static BigDecimal about(Rational value) {
    return new BigDecimal(value.numerator())
        .divide(new BigDecimal(value.denominator()), MathContext.DECIMAL64);
  }

  private static Rational within(long most, Random random) {
    return Rational.of(random.nextLong(2 * most + 1) - most);
  }

  private static Check found(
      ExpectedGap form, Terms terms, Map<Unknown, Rational> errors, Random random) {
    Rational gap = terms.nominal(form.form()).plus(within(form.slack() - 1, random));
    for (Map.Entry<Unknown, Rational> term : form.form().terms().entrySet()) {
      gap = gap.plus(term.getValue().times(errors.getOrDefault(term.getKey(), Rational.ZERO)));
    }
    return with(form.check(), Optional.of(form.axis()), gap.floor());
  }

  private static Check random(Shop shop, Random random) {
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    List<String> parts =
        ViseParts.of(vise, new Blanks()).stream().map(part -> part.name()).distinct().toList();
    List<Guard> guards = machine.guards();
    return new Check(
        machine,
        vise,
        Orientation.ALL.get(random.nextInt(4)),
        random.nextLong(Length.MM * 300),
        random.nextLong(Length.MM * 200),
        parts.get(random.nextInt(parts.size())),
        guards.isEmpty()
            ? Optional.empty()
            : Optional.of(guards.get(random.nextInt(guards.size()))),
        random.nextBoolean() ? Check.Opening.CLOSED : Check.Opening.OPEN,
        random.nextInt(3) > 0,
        Optional.empty(),
        0,
        new Provenance(TOLERANCE, false, "", ""));
  }

  private static Check with(Check check, Optional<Axis> axis, long found) {
    return new Check(
        check.machine(),
        check.vise(),
        check.handleTo(),
        check.fromLeft(),
        check.fromFront(),
        check.part(),
        check.guard(),
        check.opening(),
        check.whileCutting(),
        axis,
        found,
        check.provenance());
  }
}
