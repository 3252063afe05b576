package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefCounts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Compares the number of vises on one table from the solver with that of {@link RefCounts}, on the
 * shops of {@link AgreementTest}; {@code -Dcounts.seeds=50000} tries more.
 */
class CountAgreementTest {
  private static final int SEEDS = Integer.getInteger("counts.seeds", 1_000);

  @ParameterizedTest
  @EnumSource(Profile.class)
  void sideBySide_randomShops_asManyAsTheReferenceHas(Profile profile) {
    List<String> wrong =
        LongStream.range(0, AgreementTest.seeds(profile, SEEDS))
            .parallel()
            .mapToObj(seed -> wrong(profile, seed, new AtomicInteger()))
            .flatMap(Optional::stream)
            .toList();
    assertEquals(List.of(), wrong.stream().limit(1).toList(), () -> wrong.size() + " are wrong");
  }

  @Test
  void shops_ofAllKinds_oftenHaveRoomForSeveral() {
    AtomicInteger several = new AtomicInteger();
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 20; seed++) {
        wrong(profile, seed, several);
      }
    }
    assertTrue(several.get() > Profile.values().length, "only " + several);
  }

  private static Optional<String> wrong(Profile profile, long seed, AtomicInteger several) {
    Shop shop = RandomShops.shop(profile, seed);
    Settings settings = shop.settings();
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    SolvedPairing solved = Pairing.solved(settings, machine, vise);
    Outcome outcome = solved.outcome();
    if (!outcome.verdict().isClear()) {
      return Optional.empty();
    }
    if (!new RefModel(settings, machine, vise, false).missing.isEmpty()) {
      return Optional.empty();
    }
    RefCounts counts = new RefCounts(settings, machine, vise);
    SideBySide found = solved.sideBySide();
    int most = counts.most();
    several.addAndGet(most > 1 ? 1 : 0);
    boolean right =
        found.count() == most
            && counts.stand(found.handleTo().orElseThrow(), found.mount(), found.positions());
    return right
        ? Optional.empty()
        : Optional.of(
            profile + " seed " + seed + ": " + most + ", not " + found + "\n" + ShopCsv.text(shop));
  }
}
