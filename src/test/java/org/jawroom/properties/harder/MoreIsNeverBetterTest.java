package org.jawroom.properties.harder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ObjLongConsumer;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.properties.NeverBetter;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** More to hit, to hold or to doubt never makes a pairing better. */
class MoreIsNeverBetterTest {
  private static final List<Long> AMOUNTS =
      List.of(Length.NANOMETRE, Length.MM / 2, 7 * Length.MM, 40 * Length.MM);

  /** Enough shops to find one on which each hardening bites. */
  private static final int SHOPS_TO_BITE = 1000;

  private static List<Hardening> hardenings() {
    List<Hardening> all = new ArrayList<>(MachineHardenings.all());
    all.addAll(ViseHardenings.all());
    all.addAll(SettingHardenings.all());
    return all;
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_harderShop_isNoBetter(Profile profile) {
    List<Hardening> hardenings = hardenings();
    Seeds.each(
        profile,
        (seed, shop) -> {
          for (int i = 0; i < hardenings.size(); i++) {
            Pair pair = Pair.of(hardenings.get(i), shop, seed + i);
            Outcome easier = pair.easier.solve();
            Outcome harder = pair.harder.solve();
            NeverBetter.complaint(easier, harder)
                .ifPresent(complaint -> fail(pair.text(complaint)));
          }
        });
  }

  @ParameterizedTest
  @MethodSource("hardenings")
  void solve_someHarderShop_isWorse(Hardening hardening) {
    for (int i = 0; i < SHOPS_TO_BITE; i++) {
      Profile profile = Profile.values()[i % Profile.values().length];
      Pair pair = Pair.of(hardening, ShopDraft.of(RandomShops.shop(profile, i)), i + i / 4);
      if (NeverBetter.complaint(pair.harder.solve(), pair.easier.solve()).isPresent()) {
        return;
      }
    }
    fail("it never made anything worse, so it shows nothing");
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_allClearancesMore_bestMarginIsSoMuchLess(Profile profile) {
    assertSoMuchLess(
        profile,
        (shop, more) -> {
          shop.settings.clearance += more;
          shop.settings.handRoom += more;
          shop.mill.guards.replaceAll(
              ShopChange.guard(guard -> guard.clearance = plus(guard.clearance, more)));
        });
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_allTolerancesOfTheMachineMore_bestMarginIsSoMuchLess(Profile profile) {
    assertSoMuchLess(
        profile,
        (shop, more) -> {
          shop.mill.tolerance += more;
          shop.mill.guards.replaceAll(
              ShopChange.guard(guard -> guard.tolerance = plus(guard.tolerance, more)));
        });
  }

  private static void assertSoMuchLess(Profile profile, ObjLongConsumer<ShopDraft> change) {
    AtomicInteger compared = new AtomicInteger();
    Seeds.each(
        profile,
        (seed, shop) -> {
          ShopDraft changed = shop.copy();
          change.accept(changed, amount(seed));
          if (assertSoMuchLess(amount(seed), shop.solve(), changed.solve())) {
            compared.incrementAndGet();
          }
        });
    assertTrue(
        compared.get() > 0 || profile.name().contains("BLANKS"), profile + ": none compared");
  }

  /** Whether margins were compared. */
  private static boolean assertSoMuchLess(long less, Outcome before, Outcome after) {
    if (NeverBetter.blank(before) || NeverBetter.blank(after)) {
      return false;
    }
    assertEquals(
        before.bestMargin().isPresent(), after.bestMargin().isPresent(), "has a best margin");
    if (before.bestMargin().isPresent() && NeverBetter.isOfOneKind(before, after)) {
      assertEquals(
          before.bestMargin().getAsLong() - less, after.bestMargin().getAsLong(), "best margin");
      return true;
    }
    return false;
  }

  private static OptionalLong plus(OptionalLong length, long more) {
    return length.isPresent() ? OptionalLong.of(length.getAsLong() + more) : length;
  }

  private static long amount(long pick) {
    return AMOUNTS.get((int) (pick % AMOUNTS.size()));
  }

  /** The two shops that a hardening makes of one. */
  private record Pair(Hardening hardening, ShopDraft easier, ShopDraft harder) {

    static Pair of(Hardening hardening, ShopDraft shop, long chance) {
      long by = amount(chance);
      int pick = (int) (chance / AMOUNTS.size());
      ShopDraft easier = shop.copy();
      hardening.easier().change(easier, by, pick);
      ShopDraft harder = shop.copy();
      hardening.harder().change(harder, by, pick);
      return new Pair(hardening, easier, harder);
    }

    String text(String complaint) {
      return hardening
          + ": "
          + complaint
          + "\neasier\n"
          + ShopCsv.text(easier.shop())
          + "\nharder\n"
          + ShopCsv.text(harder.shop())
          + "\nmade of";
    }
  }
}
