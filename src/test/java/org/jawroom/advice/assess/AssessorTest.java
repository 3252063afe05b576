package org.jawroom.advice.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.blank.Relation;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.fixture.TestShop;
import org.jawroom.geometry.Length;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessorTest {
  private static final long LESS = Length.MM / 20;
  private static Shop shop;
  private static Assessment assessment;

  @BeforeAll
  static void assess() throws Exception {
    shop = AssessShop.read();
    assessment = AssessShop.assess(shop);
  }

  @Test
  void onlyHere_everyMachine_isWhatTryingEveryPairingFinds() {
    List<Assessed> all = new ArrayList<>(assessment.candidates());
    all.addAll(assessment.owned());
    int found = 0;
    for (Assessed one : all) {
      List<String> expected = new ArrayList<>();
      for (Job job : shop.jobs()) {
        boolean owned = false;
        for (Machine machine : shop.machines()) {
          owned |= !machine.candidate() && !machine.equals(one.machine()) && holds(machine, job);
        }
        if (holds(one.machine(), job) && !owned) {
          expected.add(job.name());
        }
      }
      found += expected.size();
      assertEquals(expected, one.onlyHere().stream().map(Job::name).toList(), one.machine().name());
    }
    assertTrue(found > 1, "only " + found);
  }

  private static boolean holds(Machine machine, Job job) {
    return shop.vises().stream()
        .filter(vise -> vise.quantity() > 0)
        .anyMatch(vise -> JobPairing.solve(shop.settings(), machine, vise, job).isHeld());
  }

  @Test
  void vises_ofQuantityZero_areNotCounted() {
    assertEquals(3, assessment.kinds());
    assertEquals(3, candidate("known offer").vises().size());
  }

  /** Its screw, 300 long, meets the door; swung by 80 degrees it lies along the table. */
  @Test
  void viseOnASwivelBase_isOneKindAndTurnedOnlyWhereItHasNoPlaceSquare(@TempDir Path folder)
      throws Exception {
    Shop swivels =
        TestShop.in(folder)
            .machine("tight", "status", "candidate")
            .machine("roomy", "status", "candidate", "front_gap", "300")
            .machine("owned", "front_gap", "-200")
            .vise("long", LONG)
            .job("block")
            .read()
            .shop()
            .orElseThrow();
    assertEquals(3, swivels.vises().size());

    Assessment found = AssessShop.assess(swivels);

    assertEquals(1, found.kinds());
    assertEquals(List.of("long"), found.homeless().stream().map(Vise::name).toList());
    Assessed tight = found.candidates().get(0);
    assertEquals(List.of("long @80"), tight.clear().stream().map(Vise::name).toList());
    assertEquals(1, tight.vises().size());
    assertTrue(tight.isClear(swivels.vises().get(0)));
    // What it holds at an angle does not speak for the machine.
    assertEquals(List.of(), tight.held());
    Assessed roomy = found.candidates().get(1);
    assertEquals(List.of("long"), roomy.clear().stream().map(Vise::name).toList());
    assertEquals(List.of("roomy"), names(found.better().best()));
  }

  private static final String[] LONG = {
    "turns",
    "front",
    "swivel_angles",
    "80",
    "swivel_u",
    "0",
    "jaw_width",
    "80",
    "opening_max",
    "60",
    "base_width",
    "100",
    "rear_reach",
    "60",
    "front_reach",
    "90",
    "fixed_jaw_thickness",
    "20",
    "moving_jaw_thickness",
    "20",
    "rear_projection_closed",
    "none",
    "rear_projection_open",
    "none",
    "front_projection_closed",
    "300",
    "front_projection_open",
    "300",
    "screw_height",
    "40",
    "screw_diameter",
    "24",
    "handle_radius",
    "none",
    "bolt_u",
    "0",
    "bolt_spacing",
    "60",
    "bolt_hole_u",
    "16",
    "bolt_hole_v",
    "16"
  };

  @Test
  void vises_verdicts_areTheSolvers() {
    for (Verdict verdict : Verdict.values()) {
      List<Vise> expected =
          shop.vises().stream()
              .filter(vise -> vise.quantity() > 0)
              .filter(
                  vise ->
                      ReferencePairing.solve(shop.settings(), machine("known offer"), vise)
                              .verdict()
                          == verdict)
              .toList();
      assertEquals(expected, candidate("known offer").vises(verdict), verdict.code());
    }
  }

  @Test
  void homeless_fitOnNoOwnedMachine() {
    for (Vise vise : shop.vises()) {
      boolean fits =
          shop.machines().stream()
              .filter(machine -> !machine.candidate())
              .anyMatch(
                  machine -> Pairing.solve(shop.settings(), machine, vise).verdict().isClear());
      assertEquals(!fits && vise.quantity() > 0, assessment.homeless().contains(vise), vise.name());
    }
  }

  @Test
  void better_moreJobsThatNoOwnedMachineHolds_isDecidedByThem() {
    BetterBuy better = assessment.better();
    assertEquals(List.of("known offer"), names(better.best()));
    assertEquals(Optional.of(BetterBuy.Criterion.JOBS), better.decidedBy());
    // Its jobs are unknown, so it may tie in jobs; then vises decide.
    assertEquals(List.of("blank offer"), names(better.rivals()));
  }

  @Test
  void better_oneMachine_isItWithoutAReason() {
    BetterBuy alone = AssessShop.assess(shop, "known offer").better();
    assertEquals(List.of("known offer"), names(alone.best()));
    assertEquals(Optional.empty(), alone.decidedBy());
  }

  @Test
  void better_equalInEverything_isATie() {
    Assessed one = candidate("known offer");
    BetterBuy tie = BetterBuy.of(List.of(one, one));
    assertEquals(2, tie.best().size());
    assertEquals(Optional.empty(), tie.decidedBy());
  }

  /** Equal but for the best vise: its opening decides, then its jaw, never its margin. */
  @Test
  void better_equalInJobsAndVises_isTheOneWithTheLargestUsefulVise() {
    Assessed one = candidate("known offer");
    PairingMerit best = one.best().orElseThrow();
    Assessed opening = withBest(one, best, 1, 0, 0);
    Assessed jaw = withBest(one, best, 0, 1, 0);
    Assessed margin = withBest(one, best, 0, 0, 1);

    assertEquals(
        new BetterBuy(List.of(opening), Optional.of(BetterBuy.Criterion.OPENING), List.of()),
        BetterBuy.of(List.of(jaw, one, opening)));
    assertEquals(
        new BetterBuy(List.of(jaw), Optional.of(BetterBuy.Criterion.JAW), List.of()),
        BetterBuy.of(List.of(one, jaw, margin)));
    assertEquals(2, BetterBuy.of(List.of(one, margin)).best().size());
  }

  private static Assessed withBest(
      Assessed one, PairingMerit best, long opening, long jaw, long margin) {
    return new Assessed(
        one.machine(),
        one.vises(),
        Optional.of(
            new PairingMerit(
                best.outcome(),
                best.pieces(),
                best.bolted(),
                best.settable(),
                best.comfortable(),
                best.reachShortfall(),
                best.opening() + opening,
                best.jaw() + jaw,
                best.margin() + margin)),
        one.held(),
        one.unchecked(),
        one.inDoubt(),
        one.unknown(),
        one.barred(),
        one.onlyHere(),
        one.perhapsOnlyHere(),
        one.nuts(),
        one.room(),
        one.roomAtZero(),
        one.roomBlanks(),
        one.stack(),
        one.questions());
  }

  /** "long" opens 200 and "plain" 120; on the known offer both fit, bolted, with room to spare. */
  @Test
  void best_onTheKnownOffer_isTheWidestThatHoldsTheMost() {
    PairingMerit best = candidate("known offer").best().orElseThrow();
    assertEquals("long", best.outcome().vise().name());
    assertEquals(mm(200), candidate("known offer").opening());
    assertEquals(mm(150), candidate("known offer").jaw());
    assertTrue(candidate("blank offer").best().isEmpty());
    assertEquals(0, candidate("blank offer").opening());
  }

  @Test
  void unchecked_maxLoadBlank_isEveryJobHeld() {
    List<Machine> machines =
        shop.machines().stream()
            .map(
                machine ->
                    machine.name().equals("known offer")
                        ? machine.toBuilder().maxLoad(Optional.empty()).build()
                        : machine)
            .toList();
    Assessment blank =
        AssessShop.assess(new Shop(shop.settings(), machines, shop.vises(), shop.jobs()));

    Assessed offer = named(blank.candidates(), "known offer");
    assertEquals(candidate("known offer").held(), offer.held());
    assertEquals(offer.held(), offer.unchecked());
    assertEquals(List.of(), candidate("known offer").unchecked());
  }

  @Test
  void assess_ownedMachine_isNotAmongTheOwned() {
    Assessment owned = AssessShop.assess(shop, "small mill");
    assertEquals(List.of("small mill"), names(owned.candidates()));
    assertEquals(List.of("narrow mill"), names(owned.owned()));
  }

  @Test
  void nuts_bySlots_goOnlyWhereTheSlotIsAsWide() {
    assertEquals(
        List.of(
            new NutFit(List.of("narrow mill"), mm(12), NutFit.Fit.LOOSE, mm(2)),
            new NutFit(List.of("small mill"), mm(14), NutFit.Fit.FITS, 0)),
        candidate("known offer").nuts());
    assertEquals(
        List.of(new NutFit(List.of("small mill"), mm(14), NutFit.Fit.TOO_WIDE, 0)),
        owned("narrow mill").nuts());
  }

  @Test
  void stack_noseLessToolAndClearance() {
    // 600 − 150 of the longest job's tool − 6.
    assertEquals(mm(444), candidate("known offer").stack().getAsLong());
    assertTrue(candidate("blank offer").stack().isEmpty());
  }

  /** A gap known within bounds is asked for like a blank one, its limits within the range. */
  @Test
  void questions_range_isAskedWithLimitsWithinIt() {
    Machine offer = machine("known offer").withGap(Side.REAR, Dimension.within(mm(-200), mm(500)));
    List<Advice> advice =
        shop.vises().stream().map(vise -> Advisor.advise(shop.settings(), offer, vise)).toList();

    List<Question> questions = new Questions(shop.settings(), offer, advice, Map.of()).all();

    assertEquals(List.of(Column.REAR_GAP), questions.stream().map(Question::column).toList());
    List<Question.Change> limited =
        questions.get(0).changes().stream()
            .filter(change -> change.relation() == Relation.AT_LEAST)
            .toList();
    assertFalse(limited.isEmpty());
    for (Question.Change change : limited) {
      long limit = change.limit().getAsLong();
      assertTrue(change.alone() && mm(-200) < limit && limit <= mm(500), change::toString);
      assertTrue(goes(change, offer.withGap(Side.REAR, Dimension.of(limit))), change::toString);
      assertFalse(
          goes(change, offer.withGap(Side.REAR, Dimension.of(limit - LESS))), change::toString);
    }
  }

  /** From the sure value on it fits even with the other range at its worst, its least. */
  @Test
  void questions_twoRanges_haveAValueThatIsSure() {
    Machine offer =
        machine("known offer")
            .withGap(Side.REAR, Dimension.within(mm(-200), mm(500)))
            .withGap(Side.FRONT, Dimension.within(mm(-100), mm(210)));
    List<Advice> advice =
        shop.vises().stream().map(vise -> Advisor.advise(shop.settings(), offer, vise)).toList();
    Machine worst = offer.withGap(Side.FRONT, Dimension.of(mm(-100)));

    List<Question.Change> sure =
        new Questions(shop.settings(), offer, advice, Map.of())
            .all().stream()
                .filter(question -> question.column() == Column.REAR_GAP)
                .flatMap(question -> question.changes().stream())
                .filter(change -> change.sure().isPresent())
                .toList();

    assertFalse(sure.isEmpty());
    assertTrue(
        sure.stream().anyMatch(change -> !change.sure().equals(change.limit())), sure::toString);
    for (Question.Change change : sure) {
      long least = change.sure().getAsLong();
      assertFalse(change.alone(), change::toString);
      assertTrue(goes(change, worst.withGap(Side.REAR, Dimension.of(least))), change::toString);
      assertFalse(
          goes(change, worst.withGap(Side.REAR, Dimension.of(least - LESS))), change::toString);
    }
  }

  @Test
  void questions_everyBlank_isAsked() {
    assertEquals(
        List.of(Column.REAR_GAP, Column.NOSE_MAX, Column.MAX_LOAD, Column.GUARD_GAP),
        candidate("blank offer").questions().stream().map(Question::column).toList());
    assertEquals(List.of(), candidate("known offer").questions());
  }

  /**
   * The limit, typed in with every other blank at its best, changes the answer; 0.05 mm less does
   * not.
   */
  @Test
  void questions_limitsOfGaps_areWhereTheAnswerChanges() {
    int checked = 0;
    for (Question question : candidate("blank offer").questions()) {
      if (BlankGaps.isGap(question.column())) {
        for (Question.Change change : question.changes()) {
          if (change.relation() == Relation.AT_LEAST) {
            checked++;
            long limit = change.limit().getAsLong();
            assertTrue(goes(change, atBest(question, limit)), change::toString);
            assertFalse(goes(change, atBest(question, limit - LESS)), change::toString);
          }
        }
      }
    }
    assertTrue(checked > 4, "only " + checked);
  }

  @Test
  void questions_limitsOfNoseAndLoad_areWhereTheAnswerChanges() {
    int checked = 0;
    for (Question question : candidate("blank offer").questions()) {
      for (Question.Change change : question.changes()) {
        if (question.column() == Column.NOSE_MAX) {
          checked++;
          long limit = change.limit().getAsLong();
          assertTrue(goes(change, known(limit, new BigDecimal(9999))), change::toString);
          assertFalse(goes(change, known(limit - LESS, new BigDecimal(9999))), change::toString);
        } else if (question.column() == Column.MAX_LOAD) {
          checked++;
          BigDecimal load = change.kilograms().orElseThrow();
          BigDecimal less = load.subtract(new BigDecimal("0.001"));
          assertTrue(goes(change, known(mm(9999), load)), change::toString);
          assertFalse(goes(change, known(mm(9999), less)), change::toString);
        }
      }
    }
    assertTrue(checked > 3, "only " + checked);
  }

  private static boolean goes(Question.Change change, Machine filled) {
    if (!change.job()) {
      Vise vise =
          shop.vises().stream()
              .filter(one -> one.name().equals(change.subject()))
              .findFirst()
              .orElseThrow();
      return ReferencePairing.solve(shop.settings(), filled, vise).verdict() == Verdict.FITS;
    }
    Job job =
        shop.jobs().stream()
            .filter(one -> one.name().equals(change.subject()))
            .findFirst()
            .orElseThrow();
    return shop.vises().stream()
        .filter(vise -> vise.quantity() > 0)
        .map(vise -> JobPairing.solve(shop.settings(), filled, vise, job).verdict())
        .anyMatch(verdict -> verdict == JobVerdict.HELD);
  }

  /** The half unknown offer with one gap filled in and every other blank at its best. */
  private static Machine atBest(Question question, long gap) {
    Machine filled = known(mm(9999), new BigDecimal(9999));
    if (question.column() == Column.REAR_GAP) {
      return filled.withGap(Side.REAR, Dimension.of(gap));
    }
    List<Guard> guards =
        filled.guardRows().stream()
            .map(
                guard ->
                    guard.name().equals(question.reading().measurand().item())
                        ? guard.withGap(Dimension.of(gap))
                        : guard)
            .toList();
    return filled.withGuardRows(guards);
  }

  /** Every blank gap far off, with the given nose and load. */
  private static Machine known(long noseMax, BigDecimal load) {
    Machine offer = machine("blank offer");
    return offer.toBuilder()
        .description("")
        .candidate(true)
        .gap(Side.REAR, Dimension.of(mm(9999)))
        .nose(offer.noseMin(), Dimension.of(noseMax))
        .maxLoad(Optional.of(load))
        .guardRows(
            offer.guardRows().stream().map(guard -> guard.withGap(Dimension.of(mm(9999)))).toList())
        .build();
  }

  private static Machine machine(String name) {
    return shop.machines().stream()
        .filter(machine -> machine.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Assessed candidate(String name) {
    return named(assessment.candidates(), name);
  }

  private static Assessed owned(String name) {
    return named(assessment.owned(), name);
  }

  private static Assessed named(List<Assessed> machines, String name) {
    return machines.stream()
        .filter(one -> one.machine().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> names(List<Assessed> machines) {
    return machines.stream().map(one -> one.machine().name()).toList();
  }

  private static long mm(long millimetres) {
    return millimetres * Length.MM;
  }
}
