package org.jawroom.reference;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.reference.RefChoice.Spot;
import org.jawroom.shop.Shop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Tests that no sampled position or opening beats the reference's result. */
class RefSearchTest {

  @ParameterizedTest
  @EnumSource(Profile.class)
  void recommended_placesTried_noneIsBetter(Profile profile) {
    SplittableRandom random = new SplittableRandom(11);
    for (long seed = 0; seed < 12; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      RefModel model = model(shop);
      if (model.regions.isEmpty() || !model.missing.isEmpty()) {
        continue;
      }
      Span openings = model.wholeOpening();
      RefChoice choice = new RefChoice(model, openings);
      Spot best = choice.recommended();
      long most = choice.bestMargin();
      String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
      for (int i = 0; i < 200; i++) {
        RefRegion region = model.regions.get(random.nextInt(model.regions.size()));
        Spot tried = new Spot(region, within(random, region.xs()), within(random, region.ys()));

        assertTrue(margin(model, tried) <= most, () -> tried + " has more room\n" + text);
        assertFalse(better(model, choice, tried, best), () -> tried + " not " + best + "\n" + text);
      }
    }
  }

  /** Compares by the first three preferences; the margin counts only among clear positions. */
  private static boolean better(RefModel model, RefChoice choice, Spot a, Spot b) {
    long marginA = margin(model, a);
    long marginB = margin(model, b);
    long shortA = choice.shortfall(a);
    long shortB = choice.shortfall(b);
    if (marginB < 0) {
      return marginA > marginB || marginA == marginB && shortA < shortB;
    }
    return marginA >= 0 && (shortA < shortB || shortA == shortB && marginA > marginB);
  }

  private static long within(SplittableRandom random, List<Span> spans) {
    Span span = spans.get(random.nextInt(spans.size()));
    long grain = random.nextInt(4) == 0 ? 1 : Length.MM;
    long at = span.lo() + random.nextLong((span.hi() - span.lo()) / grain + 1) * grain;
    return random.nextInt(5) == 0 ? span.hi() : at;
  }

  private static long margin(RefModel model, Spot spot) {
    long margin = RefMargin.NO_LIMIT;
    for (RefPair.Field field : model.fields(spot.region(), model.wholeOpening())) {
      margin = Math.min(margin, field.margin(spot.x(), spot.y()));
    }
    return margin;
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void widest_openingsTried_noneIsWider(Profile profile) {
    SplittableRandom random = new SplittableRandom(12);
    for (long seed = 0; seed < 12; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      RefModel model = model(shop);
      ReferenceOutcome outcome =
          ReferencePairing.solve(
              shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
      boolean limited = outcome.verdict() == Verdict.LIMITED;
      if (!limited && (outcome.verdict() != Verdict.NO_PLACE || !model.missing.isEmpty())) {
        continue;
      }
      Span whole = model.wholeOpening();
      RefOpening.Range widest = new RefOpening(model).widest();
      long width = widest == null ? 0 : widest.width().floor() + 1;
      for (int i = 0; i < 60 && width <= whole.hi() - whole.lo(); i++) {
        long from = random.nextLong(whole.lo(), whole.hi() - width + 1);
        if (limited && i % 2 == 0) {
          // Samples near the result, where an error shows first.
          long near = widest.from().floor() + random.nextLong(-5, 6);
          from = Math.max(whole.lo(), Math.min(whole.hi() - width, near));
        }
        Span wider = new Span(from, from + width);
        assertFalse(
            new RefChoice(model, wider).somewhereClear(),
            () -> wider + " is wider than " + widest + "\n" + profile + ShopCsv.text(shop));
      }
      if (widest != null && widest.from().ceil() <= widest.to().floor()) {
        Span found = new Span(widest.from().ceil(), widest.to().floor());
        assertTrue(new RefChoice(model, found).somewhereClear(), () -> "" + found);
      }
    }
  }

  private static RefModel model(Shop shop) {
    return new RefModel(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop), false);
  }
}
