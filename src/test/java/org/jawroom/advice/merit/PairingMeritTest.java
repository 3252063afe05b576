package org.jawroom.advice.merit;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToLongFunction;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PairingMeritTest {

  private static Made made(Verdict verdict, String margin) {
    return made(vise("v"), verdict, margin);
  }

  private static Made made(Vise vise, Verdict verdict, String margin) {
    return new Made(machine("m"), vise, verdict)
        .best(verdict == Verdict.LIMITED ? "-1" : margin)
        .limit(margin, "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY)
        .usable("0", "150.07");
  }

  private static Vise jaw(String width) {
    return vise("v", width, "0", "150.07", Dimension.NONE, CALIPER);
  }

  private static PairingMerit merit(Outcome outcome, long pieces) {
    return PairingMerit.of(Settings.DEFAULTS, outcome, pieces).orElseThrow();
  }

  private static PairingMerit merit(Made made) {
    return merit(made.done(), 0);
  }

  private static void assertBetter(PairingMerit better, PairingMerit worse) {
    for (var order : List.of(PairingMerit.OF_VISES, PairingMerit.OF_MACHINES)) {
      assertTrue(order.compare(better, worse) > 0, better + "\n" + worse);
      assertTrue(order.compare(worse, better) < 0, better + "\n" + worse);
    }
  }

  private static void assertBetterViseOnly(PairingMerit better, PairingMerit worse) {
    assertTrue(PairingMerit.OF_VISES.compare(better, worse) > 0);
    assertTrue(PairingMerit.OF_VISES.compare(worse, better) < 0);
    assertTrue(PairingMerit.OF_MACHINES.compare(better, worse) < 0);
  }

  private static void assertNever(Outcome outcome) {
    assertEquals(Optional.empty(), PairingMerit.of(Settings.DEFAULTS, outcome, 9));
  }

  /** Each criterion against everything that comes after it. */
  @Test
  void order_eachCriterion_goesBeforeAllThatFollow() {
    assertBetter(
        merit(made(Verdict.LIMITED, "0").usable("0", "25").clamped().notSettable().done(), 2),
        merit(made(jaw("200"), Verdict.FITS, "9").done(), 1));
    assertBetter(
        merit(made(Verdict.FITS, "0").usable("0", "1").clamped().notSettable().shortfall("9")),
        merit(made(jaw("200"), Verdict.AWKWARD, "9")));
    assertBetter(
        merit(made(Verdict.AWKWARD, "0").usable("0", "1").clamped().notSettable().shortfall("9")),
        merit(made(jaw("200"), Verdict.LIMITED, "9")));
    assertBetter(
        merit(made(Verdict.FITS, "0").usable("0", "1").notSettable().shortfall("9")),
        merit(made(jaw("200"), Verdict.FITS, "9").clamped()));
    assertBetter(
        merit(made(Verdict.FITS, "0").usable("0", "1").shortfall("9")),
        merit(made(jaw("200"), Verdict.FITS, "9").notSettable()));
    assertBetter(
        merit(made(Verdict.FITS, "3").usable("0", "1").shortfall("9")),
        merit(made(jaw("200"), Verdict.FITS, "2.999999")));
    assertBetter(
        merit(made(Verdict.FITS, "3").usable("0", "1")),
        merit(made(jaw("200"), Verdict.FITS, "9").shortfall("0.000001")));
    assertBetterViseOnly(
        merit(made(jaw("100"), Verdict.FITS, "3").usable("0", "100.000001")),
        merit(made(jaw("200"), Verdict.FITS, "9").usable("0", "100")));
    assertBetterViseOnly(
        merit(made(jaw("100.000001"), Verdict.FITS, "3")),
        merit(made(jaw("100"), Verdict.FITS, "9")));
    assertBetter(merit(made(Verdict.FITS, "3.000001")), merit(made(Verdict.FITS, "3")));
  }

  /** Of the limited ones, too, the usable opening decides before the margin. */
  @Test
  void order_ofTheLimited_isTheWidestOpening() {
    assertBetterViseOnly(
        merit(made(Verdict.LIMITED, "3").usable("0", "99")),
        merit(made(Verdict.LIMITED, "4").usable("0", "98")));
  }

  @Test
  void comfortable_belowAtAndAboveTheSetting() {
    assertFalse(merit(made(Verdict.FITS, "2.999999")).comfortable());
    assertTrue(merit(made(Verdict.FITS, "3")).comfortable());
    assertTrue(merit(made(Verdict.FITS, "3.000001")).comfortable());
    Settings none = Settings.builder().comfort(0).build();
    assertTrue(PairingMerit.isComfortable(none, made(Verdict.FITS, "0").done()));
    assertFalse(PairingMerit.isComfortable(none, made(Verdict.NO_PLACE, "-0.000001").done()));
  }

  @Test
  void of_tooHeavyOrWithoutRoomOverTheJaws_isNeverTheBest() {
    assertNever(made(Verdict.FITS, "9").load("-0.001").done());
    assertEquals(0, merit(made(Verdict.FITS, "9").load("0")).pieces());
    assertNever(made(Verdict.FITS, "9").room("-1").done());
    assertNever(made(Verdict.FITS, "9").room("0").done());
    assertEquals(mm("9"), merit(made(Verdict.FITS, "9").room("0.000001")).margin());
  }

  @Test
  void of_heldAgainstNothing_isNeverTheBest() {
    assertNever(
        new Made(machine("m"), vise("v"), Verdict.FITS).at(Orientation.FRONT, "0", "0").done());
  }

  @ParameterizedTest
  @EnumSource(
      value = Verdict.class,
      names = {"MEASURE", "NO_PLACE", "NO_MOUNT", "UNKNOWN"})
  void of_anyOtherVerdict_isNeverTheBest(Verdict verdict) {
    assertNever(made(verdict, "9").done());
  }

  @Test
  void bestFirst_ofEqualOnes_isInInputOrder() {
    Outcome first = made(Verdict.FITS, "4").nose("100").done();
    Outcome second = made(Verdict.FITS, "4").nose("200").done();
    Outcome best = made(Verdict.FITS, "5").done();
    assertEquals(
        List.of(best, first, second),
        PairingMerit.bestFirst(
            Settings.DEFAULTS, List.of(first, second, best), PairingMerit.OF_VISES));
  }

  /** Random pairings with many ties; the twin strikes out, criterion by criterion. */
  @Test
  void best_ofRandomPairings_isTheOneThatStrikingOutLeaves() {
    Random random = new Random(19);
    for (int round = 0; round < 2000; round++) {
      List<PairingMerit> merits = new ArrayList<>();
      List<Outcome> outcomes = new ArrayList<>();
      for (int i = 2 + random.nextInt(7); i > 0; i--) {
        Outcome outcome = random(random);
        PairingMerit.of(Settings.DEFAULTS, outcome, random.nextInt(2))
            .filter(merit -> outcomes.stream().noneMatch(other -> other.equals(outcome)))
            .ifPresent(
                merit -> {
                  merits.add(merit);
                  outcomes.add(outcome);
                });
      }
      assertEquals(strikeOut(merits, true), first(merits, PairingMerit.OF_VISES), "round " + round);
      assertEquals(
          strikeOut(merits, false), first(merits, PairingMerit.OF_MACHINES), "round " + round);
    }
  }

  private static Outcome random(Random random) {
    Verdict verdict = Verdict.values()[random.nextInt(Verdict.values().length)];
    Made made =
        made(jaw(random.nextBoolean() ? "100" : "150"), verdict, 2 + random.nextInt(3) + "")
            .shortfall(random.nextInt(3) == 0 ? "1" : "0")
            .usable("0", random.nextBoolean() ? "50" : "60")
            .room(random.nextInt(8) == 0 ? "0" : "1")
            .load(random.nextInt(8) == 0 ? "-1" : "0");
    if (random.nextInt(4) == 0) {
      made.clamped();
    }
    return (random.nextInt(4) == 0 ? made.notSettable() : made).done();
  }

  private static Optional<PairingMerit> first(
      List<PairingMerit> merits, Comparator<PairingMerit> order) {
    return merits.stream().sorted(order.reversed()).findFirst();
  }

  private static Optional<PairingMerit> strikeOut(List<PairingMerit> merits, boolean widths) {
    List<PairingMerit> left = new ArrayList<>(merits);
    strike(left, PairingMerit::pieces);
    strike(
        left,
        one ->
            switch (one.outcome().verdict()) {
              case FITS -> 3;
              case AWKWARD -> 2;
              case LIMITED -> 1;
              default -> throw new AssertionError(one.outcome().verdict());
            });
    strike(left, one -> one.outcome().recommended().orElseThrow().fastening().clamped() ? 0 : 1);
    strike(left, one -> one.outcome().recommended().orElseThrow().settable() ? 1 : 0);
    strike(left, one -> one.outcome().margin().getAsLong() >= mm("3") ? 1 : 0);
    strike(left, one -> -one.outcome().recommended().orElseThrow().reachShortfall());
    if (widths) {
      strike(left, one -> one.outcome().usableOpening().map(Interval::length).orElseThrow());
      strike(left, one -> one.outcome().vise().jaws().width());
    }
    strike(left, one -> one.outcome().margin().getAsLong());
    return left.stream().findFirst();
  }

  private static void strike(List<PairingMerit> left, ToLongFunction<PairingMerit> criterion) {
    long best = left.stream().mapToLong(criterion).max().orElse(0);
    left.removeIf(one -> criterion.applyAsLong(one) < best);
  }
}
