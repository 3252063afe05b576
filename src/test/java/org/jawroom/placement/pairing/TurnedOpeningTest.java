package org.jawroom.placement.pairing;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.Predicate;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The usable opening of a turned vise, worked by hand and against every range. */
class TurnedOpeningTest {
  private static final long STEP = TurnedOpening.STEP;
  private static final Swivel THIRTY =
      new Swivel("vise", BigDecimal.valueOf(30), 50 * MM, OptionalLong.empty());

  /**
   * A door in front, and a moving jaw whose corner swings toward it: with the jaws kept to five
   * millimetres less, the door may be that much nearer, to the half-nanometre.
   */
  @Test
  void limited_byADoor_exactlyAsFarAsTheJawsMayOpen() {
    Settings settings = settings(0, 25 * MM);
    for (int steps = 0; steps <= 15; steps++) {
      long gap = gapFor(steps);
      assertUsable(steps, settings, gap, "at " + steps);
      assertUsable(steps, settings, gap + 1, "above " + steps);
      assertUsable(steps + 1, settings, gap - 1, "below " + steps);
    }
  }

  /** Fifteen steps leave 25 mm. */
  @Test
  void limited_toLessThanTheLeastOpening_isNoPlace() {
    long gap = gapFor(15);
    assertEquals(Verdict.LIMITED, solve(settings(0, 25 * MM), gap).verdict());
    assertEquals(Verdict.NO_PLACE, solve(settings(0, 25 * MM + 1), gap).verdict());
    assertEquals(Verdict.LIMITED, solve(settings(0, 25 * MM - 1), gap).verdict());
  }

  /** With 2 mm more at the door it can be tapped square, too; without, less opening allows it. */
  @Test
  void limited_settablePlace_comesBeforeMoreOpening() {
    Settings settings = settings(2 * MM, 25 * MM);
    Outcome at = solve(settings, gapFor(4) + 2 * MM);
    assertEquals(Optional.of(usable(4)), at.usableOpening());
    assertTrue(at.recommended().orElseThrow().settable());
    Outcome below = solve(settings, gapFor(4) + 2 * MM - 1);
    assertEquals(Optional.of(usable(5)), below.usableOpening());
    assertTrue(below.recommended().orElseThrow().settable());
    Outcome never = solve(settings, gapFor(15) + 2 * MM - 1);
    assertEquals(Optional.of(usable(15)), never.usableOpening());
    assertFalse(never.recommended().orElseThrow().settable());
  }

  /** What is said of the place is said of the usable opening alone. */
  @Test
  void limited_place_isDescribedOverTheUsableOpening() {
    SolvedPairing solved = solved(settings(0, 25 * MM), gapFor(3));
    Outcome outcome = solved.outcome();
    assertEquals(usable(3), outcome.recommended().orElseThrow().openings());
    assertEquals(0, outcome.recommended().get().margin().orElseThrow());
    assertTrue(outcome.bestMargin().orElseThrow() < -3 * MM, "that over the full opening");
    Inspection there = solved.inspection().orElseThrow();
    assertEquals(0, there.pairs().get(0).margin());
    assertEquals(
        Optional.of(Interval.of(0, 115 * MM)),
        there.layout().parts().stream()
            .filter(part -> part.part().name().equals("moving jaw"))
            .map(part -> part.part().outline().orElseThrow().square().x())
            .distinct()
            .reduce((one, other) -> Interval.of(0, 0)));
  }

  /**
   * Nobody has measured the door: where some values leave part of the opening, it is not hopeless.
   */
  @Test
  void open_gap_thatMayLeaveALimitedOpening_isUnknown() {
    Settings settings = settings(0, 25 * MM);
    long near = gapFor(15) - 10 * MM;
    Machine machine = machine(Dimension.within(near, gapFor(15)));
    assertEquals(Verdict.UNKNOWN, Pairing.solve(settings, machine, vise()).verdict());
    Machine nearer = machine(Dimension.within(near, gapFor(15) - 1));
    assertEquals(Verdict.NO_PLACE, Pairing.solve(settings, nearer, vise()).verdict());
    Machine farther = machine(Dimension.within(gapFor(3), gapFor(0)));
    Outcome limited = Pairing.solve(settings, farther, vise());
    assertEquals(Verdict.LIMITED, limited.verdict());
    assertEquals(Optional.of(usable(3)), limited.usableOpening());
  }

  private static void assertUsable(int steps, Settings settings, long gap, String which) {
    Outcome outcome = solve(settings, gap);
    if (steps == 0) {
      assertEquals(Verdict.FITS, outcome.verdict(), which);
    } else if (steps <= 15) {
      assertEquals(Verdict.LIMITED, outcome.verdict(), which);
      assertEquals(Optional.of(usable(steps)), outcome.usableOpening(), which);
    } else {
      assertEquals(Verdict.NO_PLACE, outcome.verdict(), which);
    }
  }

  private static Interval usable(int steps) {
    return Interval.of(0, 100 * MM - steps * STEP);
  }

  /** The gap at which the moving jaw, its jaws kept to so many steps less, just clears the door. */
  private static long gapFor(int steps) {
    Rectangle jaw =
        new Rectangle(Interval.of(0, 130 * MM - steps * STEP), Interval.around(0, 75 * MM));
    long reach = THIRTY.turned(jaw).hull().x().hi();
    // Its bolt, 50 mm from the origin toward the door, stands in the slot in the middle of the
    // table.
    return reach - 50 * MM + 6 * MM - 150 * MM;
  }

  private static Settings settings(long tapRoom, long leastOpening) {
    return Settings.builder().clearance(6 * MM).tapRoom(tapRoom).leastOpening(leastOpening).build();
  }

  private static Outcome solve(Settings settings, long gap) {
    return solved(settings, gap).outcome();
  }

  private static SolvedPairing solved(Settings settings, long gap) {
    return Pairing.solved(settings, machine(Dimension.of(gap)), vise());
  }

  private static Machine machine(Dimension frontGap) {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 1000 * MM;
    draft.tableWidth = 300 * MM;
    draft.travelX = 500 * MM;
    draft.travelY = 300 * MM;
    draft.slotCount = 1;
    draft.slotWidth = Dimension.of(14 * MM);
    draft.turns = EnumSet.of(Orientation.FRONT);
    draft.frontGap = frontGap;
    return draft.build();
  }

  private static Vise vise() {
    ViseDraft draft = new ViseDraft();
    draft.jawWidth = 150 * MM;
    draft.jawHeight = 45 * MM;
    draft.bedHeight = 70 * MM;
    draft.openingMax = 100 * MM;
    draft.baseWidth = Dimension.of(100 * MM);
    draft.rearReach = Dimension.of(30 * MM);
    draft.frontReach = Dimension.of(60 * MM);
    draft.fixedJaw = Dimension.of(20 * MM);
    draft.movingJaw = Dimension.of(30 * MM);
    draft.boltSpacing = Dimension.of(80 * MM);
    draft.boltU = Dimension.of(50 * MM);
    draft.holeU = Dimension.of(12 * MM);
    draft.holeV = Dimension.of(12 * MM);
    return draft.build().turned(THIRTY);
  }

  /** Of any clear ranges, those within them clear, too, the widest, and of equals the first. */
  @Test
  void widest_ofRandomClearRanges_isThatOfTryingAll() {
    int found = 0;
    int none = 0;
    for (long seed = 0; seed < 3000; seed++) {
      Random dice = new Random(seed);
      Interval full = Interval.of(dice.nextInt(50), 50 + dice.nextInt(60 * (int) MM));
      long least = dice.nextInt(30 * (int) MM);
      List<Interval> clear = new ArrayList<>();
      for (int i = dice.nextInt(4); i > 0; i--) {
        long lo = full.lo() + (long) (dice.nextDouble() * full.length());
        clear.add(
            Interval.of(
                dice.nextInt(3) == 0 ? full.lo() : lo,
                lo + (long) (dice.nextDouble() * (full.hi() - lo + 1))));
      }
      Predicate<Interval> isClear =
          range -> clear.stream().anyMatch(one -> one.lo() <= range.lo() && range.hi() <= one.hi());
      Optional<Interval> expected = all(full, least, isClear);
      assertEquals(
          expected,
          TurnedOpening.widest(full, least, isClear),
          () -> full + " least " + least + " clear " + clear);
      found += expected.isPresent() ? 1 : 0;
      none += expected.isPresent() ? 0 : 1;
    }
    assertTrue(found > 300 && none > 300, found + " " + none);
  }

  /** Every range of a model, judged by itself. */
  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {"PLAIN", "FEW_GUARDS", "BOTH_JAWS", "CLUTTERED", "SHAPE_PARTS"})
  void of_randomTurnedVises_isThatOfTryingAll(Profile profile) {
    int limited = 0;
    for (long seed = 0; seed < 110; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Vise square = RandomShops.vise(shop);
      int degrees = new Random(seed).nextInt(1, 90);
      Vise turned =
          square.turned(
              new Swivel(
                  square.name(), BigDecimal.valueOf(degrees), 40 * MM, OptionalLong.empty()));
      Model model = Model.of(shop.settings(), RandomShops.machine(shop), turned, Setup.PLAIN);
      long least = shop.settings().leastOpening();
      Optional<Interval> settable =
          all(turned.opening(), least, range -> model.within(range).isSettable(range));
      Optional<Interval> any =
          all(turned.opening(), least, range -> model.within(range).isClear(range));
      assertEquals(
          settable.or(() -> any), TurnedOpening.of(model), profile + " " + seed + " @" + degrees);
      limited += any.filter(range -> !range.equals(turned.opening())).isPresent() ? 1 : 0;
    }
    int all = limited;
    assertTrue(all > 3, () -> profile + ": too few limited: " + all);
  }

  private static Optional<Interval> all(Interval full, long least, Predicate<Interval> isClear) {
    for (long out = 0; full.length() - out * STEP >= least && full.length() >= out * STEP; out++) {
      for (long below = 0; below <= out; below++) {
        Interval range = Interval.of(full.lo() + below * STEP, full.hi() - (out - below) * STEP);
        if (isClear.test(range)) {
          return Optional.of(range);
        }
      }
    }
    return Optional.empty();
  }
}
