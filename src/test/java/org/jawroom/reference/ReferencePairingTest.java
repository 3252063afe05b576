package org.jawroom.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Compares the reference with the shop worked by hand: margins to 0.002 mm, openings to 0.01 mm.
 */
class ReferencePairingTest {

  @ParameterizedTest(name = "{0} × {1}")
  @CsvSource({
    "roomy,plain,fits,39.650,20.000,0.000,0.000,150.000",
    "roomy,six inch,fits,33.075,6.975,0.000,0.000,152.400",
    "roomy,six inch handle,fits,18.650,6.975,0.000,0.000,152.400",
    "roomy,six inch full swing,no place,-20.875,-20.875,,,",
    "roomy,centred,fits,72.650,38.000,0.000,0.000,120.000",
    "roomy,wide bolts,no mount,,,,,",
    "exact,plain,limited,-11.475,,,45.300,150.000",
    "exact,six inch,fits,0.000,0.000,0.000,0.000,152.400",
    "exact,six inch handle,fits,0.000,0.000,0.000,0.000,152.400",
    "exact,six inch full swing,fits,0.000,0.000,0.000,0.000,152.400",
    "exact,centred,fits,42.525,42.525,0.000,0.000,120.000",
    "exact,wide bolts,no mount,,,,,",
    "exact-taped,plain,limited,-13.063,,,51.570,150.000",
    "exact-taped,six inch,measure,-1.588,-1.588,,,",
    "exact-taped,six inch handle,measure,-1.588,-1.588,,,",
    "exact-taped,six inch full swing,measure,-1.588,-1.588,,,",
    "exact-taped,centred,fits,40.937,40.937,0.000,0.000,120.000",
    "exact-taped,wide bolts,no mount,,,,,",
    "tight,plain,limited,-11.475,,,45.300,150.000",
    "tight,six inch,limited,-9.525,,,76.200,152.400",
    "tight,six inch handle,limited,-9.525,,,76.200,152.400",
    "tight,six inch full swing,limited,-9.525,,,76.200,152.400",
    "tight,centred,fits,39.575,39.575,0.000,0.000,120.000",
    "tight,wide bolts,no mount,,,,,",
    "tighter,plain,limited,-12.950,,,102.240,150.000",
    "tighter,six inch,no place,-19.050,-19.050,,,",
    "tighter,six inch handle,no place,-19.050,-19.050,,,",
    "tighter,six inch full swing,no place,-19.050,-19.050,,,",
    "tighter,centred,fits,30.050,30.050,0.000,0.000,120.000",
    "tighter,wide bolts,no mount,,,,,",
    "not-measured,plain,unknown,,,,,",
    "not-measured,six inch,unknown,,,,,",
    "not-measured,six inch handle,unknown,,,,,",
    "not-measured,six inch full swing,unknown,,,,,",
    "not-measured,centred,unknown,,,,,",
    "not-measured,wide bolts,no mount,,,,,",
  })
  void solve_shopWorkedByHand(
      String machineName,
      String viseName,
      String verdict,
      Double bestMargin,
      Double margin,
      Double shortfall,
      Double from,
      Double to) {
    Shop shop = ExampleShop.shop();
    Machine machine =
        shop.machines().stream().filter(m -> m.name().equals(machineName)).findFirst().get();
    Vise vise = shop.vises().stream().filter(v -> v.name().equals(viseName)).findFirst().get();

    ReferenceOutcome outcome = ReferencePairing.solve(shop.settings(), machine, vise);

    assertEquals(verdict, outcome.verdict().code());
    if (bestMargin != null) {
      near(bestMargin, outcome.bestMargin(), 0.002);
    }
    if (margin != null) {
      near(margin, outcome.recommended().get().margin(), 0.002);
    }
    if (shortfall != null) {
      near(shortfall, OptionalLong.of(outcome.recommended().get().reachShortfall()), 0.002);
    }
    if (from != null) {
      near(from, OptionalLong.of(outcome.usable().get().printed().lo()), 0.01);
      near(to, OptionalLong.of(outcome.usable().get().printed().hi()), 0.01);
    }
  }

  private static void near(double millimetres, OptionalLong length, double within) {
    double off = Math.abs(length.getAsLong() - millimetres * Length.MM);
    assertTrue(off <= within * Length.MM, () -> millimetres + " mm, but " + length);
  }
}
