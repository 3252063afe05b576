package org.jawroom.advice.remedy;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Applied;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * No riser height or guard move is missed: for every amount on a grid that makes a pairing fit,
 * there is a remedy of that kind with no greater amount. {@code -Dremedies.seeds=500} tries more
 * shops.
 */
class RemedyLeastTest {
  private static final int SEEDS = Integer.getInteger("remedies.seeds", 40) / 4 + 1;
  private static final long TOOTH = 7 * Length.MM + 13 * MonotoneSearch.GRAIN;
  private static final long FAR = 300 * Length.MM;
  private static final long HIGHEST = 200 * Length.MM;
  private static final List<String> GAPS =
      List.of("door", "rear cover", "left guard", "right guard");

  private int raised;
  private int moved;

  @Test
  void remedies_randomShops_noLessServes() {
    for (Profile profile : Profile.values()) {
      check(profile);
    }
    assertTrue(raised >= 50 && moved >= 200, raised + " raised, " + moved + " moved");
  }

  private void check(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Settings settings = shop.settings();
      Outcome outcome = Pairing.solve(settings, RandomShops.machine(shop), RandomShops.vise(shop));
      boolean missed =
          outcome.bestMargin().isPresent()
              && outcome.bestMargin().getAsLong() < 0
              && outcome.verdict() != Verdict.UNKNOWN
              && outcome.missing().isEmpty();
      if (missed) {
        String input = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
        long first = (1 + new SplittableRandom(seed).nextInt(700)) * MonotoneSearch.GRAIN;
        List<Remedy> remedies =
            Advisor.advise(settings, outcome.machine(), outcome.vise()).remedies();
        raising(settings, outcome, remedies, first, input);
        moving(settings, outcome, remedies, first, input);
      }
    }
  }

  private void raising(
      Settings settings, Outcome outcome, List<Remedy> remedies, long first, String input) {
    for (long height = first; height <= HIGHEST; height += TOOTH) {
      Setup riser = Setup.onRiser(height);
      if (Model.of(settings, outcome.machine(), outcome.vise(), riser).isClear()) {
        atMost(remedies, RemedyKind.RAISE, "", height, input);
        raised++;
        return;
      }
    }
  }

  private void moving(
      Settings settings, Outcome outcome, List<Remedy> remedies, long first, String input) {
    Machine machine = outcome.machine();
    for (Side side : Side.values()) {
      if (machine.gap(side).isKnown()) {
        moving(settings, outcome, remedies, GAPS.get(side.ordinal()), List.of(), first, input);
      }
    }
    for (Guard guard : machine.guardRows()) {
      List<Direction> ways = guard.side().isPresent() ? List.of() : List.of(Direction.values());
      moving(settings, outcome, remedies, guard.name(), ways, first, input);
    }
  }

  /** Without a direction it moves outward. */
  private void moving(
      Settings settings,
      Outcome outcome,
      List<Remedy> remedies,
      String guard,
      List<Direction> ways,
      long first,
      String input) {
    for (int i = 0; i < Math.max(1, ways.size()); i++) {
      Optional<Direction> way = ways.isEmpty() ? Optional.empty() : Optional.of(ways.get(i));
      for (long by = first; by <= FAR; by += TOOTH) {
        if (fitsMoved(settings, outcome.machine(), outcome.vise(), guard, way, by)) {
          atMost(remedies, RemedyKind.MOVE, guard, by, input);
          moved++;
          break;
        }
      }
    }
  }

  private static boolean fitsMoved(
      Settings settings,
      Machine machine,
      Vise vise,
      String guard,
      Optional<Direction> way,
      long by) {
    Guard moved =
        machine.guards().stream().filter(one -> one.name().equals(guard)).findFirst().orElseThrow();
    Remedy move =
        new Remedy(
            RemedyKind.MOVE, Optional.of(moved), way, OptionalLong.of(by), Verdict.FITS, null);
    Applied applied = Applied.of(settings, machine, vise, move, 0);
    return Model.of(settings, applied.machine(), vise, Setup.PLAIN).isClear();
  }

  private static void atMost(
      List<Remedy> remedies, RemedyKind kind, String guard, long amount, String input) {
    assertTrue(
        remedies.stream()
            .anyMatch(
                remedy ->
                    remedy.kind() == kind
                        && remedy.guard().map(Guard::name).orElse("").equals(guard)
                        && remedy.amount().orElseThrow() <= amount),
        () ->
            kind
                + " "
                + guard
                + " by "
                + amount
                + " serves, listed are "
                + remedies
                + "\n"
                + input);
  }
}
