package org.jawroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.LinearForm;
import org.jawroom.checks.expected.Terms;
import org.jawroom.checks.expected.Unknown;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Check;
import org.jawroom.shop.Shop;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.value.Provenance;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;

/**
 * The polybox of the literature on diagnosis, two adders over three multipliers: J. de Kleer and B.
 * C. Williams, Diagnosing multiple faults, Artificial Intelligence 32 (1987); R. Reiter, A theory
 * of diagnosis from first principles, in the same volume. From memory, no source seen.
 *
 * <p>The multipliers M1, M2, M3 yield 6 each, the adders F = M1 + M2 and G = M2 + M3, so 12 each. A
 * component is a reading here: what it adds, 0 for an adder that works.
 */
class PublishedDiagnosesTest {
  private static final Path HAND = Path.of("src/test/resources/org/jawroom/checks/hand");

  private final Terms terms = new Terms();

  /** F is 10 and G is 12: one component alone may be M1 or A1. */
  @Test
  void polybox_oneOutputWrong_hasTheSingleDiagnosesPublished() throws Exception {
    Suspicion suspicion = suspicion(10, 12);
    assertEquals(Set.of(Set.of("M1"), Set.of("A1")), diagnoses(suspicion));
    Map<String, ValueRange> mustBe =
        suspicion.choices().stream()
            .map(choice -> choice.get(0))
            .collect(Collectors.toMap(one -> one.reading().column(), Suspect::mustBe));
    assertEquals(
        Map.of("M1", ValueRange.at(Rational.of(4)), "A1", ValueRange.at(Rational.of(-2))), mustBe);
    assertEquals("M1", suspicion.tellsApart().orElseThrow().column());
  }

  /**
   * What is right may be off by the tolerance of the ends it enters, so that 4 and 6 are not apart.
   */
  @Test
  void tellsApart_withinTheTolerance_isNothing() throws Exception {
    LinearForm face = terms.error(new Unknown.GuardFace("polybox", "F", Axis.Y, true), 2);
    LinearForm sum = component("M1", 6).plus(component("A1", 0)).plus(face);
    LinearForm other = component("M1", 6).plus(component("A1", 0));
    Suspicion suspicion =
        SuspectSearch.of(new CheckGroup(List.of(output(4, sum), output(4, other)), terms), terms)
            .orElseThrow();
    assertEquals(Set.of(Set.of("M1"), Set.of("A1")), diagnoses(suspicion));
    assertEquals(Optional.empty(), suspicion.tellsApart());
  }

  /** F is 10 and G is 14: a component of each output, or M2 with another that makes up for it. */
  @Test
  void polybox_outputsWrongBothWays_hasEveryPairThatHitsBoth() throws Exception {
    assertEquals(
        Set.of(
            Set.of("M1", "M3"),
            Set.of("M1", "A2"),
            Set.of("A1", "M3"),
            Set.of("A1", "A2"),
            Set.of("M2", "M1"),
            Set.of("M2", "A1"),
            Set.of("M2", "M3"),
            Set.of("M2", "A2")),
        diagnoses(suspicion(10, 14)));
  }

  /** F and G are both 10: M2 alone is in both. */
  @Test
  void polybox_outputsWrongAlike_isTheSharedComponent() throws Exception {
    assertEquals(Set.of(Set.of("M2")), diagnoses(suspicion(10, 10)));
  }

  /** A size of 6 explains what is 5 and 6 too little, but not 7: it would be less than nothing. */
  @Test
  void size_belowAtAndAboveWhatItCanLose_isSuspectedUntilItWouldBeNegative() throws Exception {
    LinearForm size = terms.known(new Measurand("machines", "polybox", "", "size"), 6);
    for (int less : new int[] {5, 6, 7}) {
      Suspicion suspicion =
          SuspectSearch.of(
                  new CheckGroup(List.of(output(12 - less, size.plus(component("M1", 6)))), terms),
                  terms)
              .orElseThrow();
      assertEquals(
          less > 6 ? Set.of(Set.of("M1")) : Set.of(Set.of("size"), Set.of("M1")),
          diagnoses(suspicion));
    }
  }

  /** Worst case: the limits of a stack are the sums of all limits (common practice, no source). */
  @Test
  void range_ofAStack_isTheSumOfAllTolerances() {
    LinearForm stack = LinearForm.constant(1000);
    int[] tolerances = {10, 20, 5};
    for (int i = 0; i < tolerances.length; i++) {
      Unknown end = new Unknown.PartEnd("vise", "part " + i, Axis.X, true);
      LinearForm error = terms.error(end, tolerances[i]);
      stack = i == 1 ? stack.minus(error) : stack.plus(error);
    }
    assertEquals(
        new ValueRange(Optional.of(Rational.of(965)), Optional.of(Rational.of(1035))),
        terms.range(stack));
  }

  /**
   * R. E. Moore, R. B. Kearfott, M. J. Cloud, Introduction to Interval Analysis, SIAM 2009: sums
   * and multiples of intervals. From memory, no source seen.
   */
  @Test
  void bounds_addAndScale_asIntervalsDo() {
    assertEquals(bounds(-2, 6), bounds(1, 2).plus(bounds(-3, 4)));
    assertEquals(bounds(-6, -2), bounds(1, 3).times(Rational.of(-2)));
    assertEquals(bounds(-1, 1), bounds(3, 4).plus(bounds(3, 4).times(Rational.of(-1))));
  }

  private static ValueRange bounds(long lo, long hi) {
    return new ValueRange(Optional.of(Rational.of(lo)), Optional.of(Rational.of(hi)));
  }

  private static Set<Set<String>> diagnoses(Suspicion suspicion) {
    return suspicion.choices().stream()
        .map(
            choice ->
                choice.stream().map(one -> one.reading().column()).collect(Collectors.toSet()))
        .collect(Collectors.toSet());
  }

  private Suspicion suspicion(long f, long g) throws Exception {
    LinearForm shared = component("M2", 6);
    List<ExpectedGap> outputs =
        List.of(
            output(f, component("M1", 6).plus(shared).plus(component("A1", 0))),
            output(g, shared.plus(component("M3", 6)).plus(component("A2", 0))));
    return SuspectSearch.of(new CheckGroup(outputs, terms), terms).orElseThrow();
  }

  private LinearForm component(String name, long value) {
    return terms.placed(new Measurand("machines", "polybox", "", name), value);
  }

  private ExpectedGap output(long found, LinearForm form) throws Exception {
    Shop shop = ShopReader.read(HAND, Map.of()).shop().orElseThrow();
    Check check =
        new Check(
            shop.machines().get(0),
            shop.vises().get(0),
            Orientation.FRONT,
            0,
            0,
            "base",
            Optional.empty(),
            Check.Opening.CLOSED,
            true,
            Optional.of(Axis.Y),
            found,
            new Provenance(0, false, "", ""));
    return ExpectedGap.of(check, Axis.Y, form, terms);
  }
}
