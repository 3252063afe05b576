package org.jawroom.reference.proof;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefMount;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefChoice;
import org.jawroom.reference.solve.RefChoice.Spot;
import org.jawroom.reference.solve.RefOpening;
import org.jawroom.reference.solve.RefReach;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Shop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tests that no sampled position or opening beats the reference's result. */
class RefSearchTest {

  @ParameterizedTest
  @EnumSource(Profile.class)
  void recommended_placesTried_noneIsBetter(Profile profile) {
    SplittableRandom random = new SplittableRandom(11);
    int judged = 0;
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
        assertTrue(
            order(model, choice).compare(tried, best) >= 0,
            () -> tried + " not " + best + "\n" + text);
        judged++;
      }
    }
    assertTrue(judged > 0 || profile.name().contains("BLANKS"), profile + ": none judged");
  }

  /** The first preferences, best first; the margin counts only among clear positions. */
  private static Comparator<Spot> order(RefModel model, RefChoice choice) {
    ToLongFunction<Spot> below = spot -> Math.max(0, -margin(model, spot));
    Predicate<Spot> clear = spot -> below.applyAsLong(spot) == 0;
    return Comparator.comparingLong(below)
        .thenComparing(spot -> clear.test(spot) && spot.region().mount().clamps())
        .thenComparing(spot -> clear.test(spot) && !settable(model, spot))
        .thenComparingLong(
            spot -> new RefReach(model).shortfall(spot.region().turn(), spot.x(), spot.y()))
        .thenComparingLong(spot -> -margin(model, spot));
  }

  /** Straight from the definition, slot by slot. */
  private static boolean settable(RefModel model, Spot spot) {
    long tap = model.settings.tapRoom();
    for (RefPair.Field field : model.fields(spot.region(), model.wholeOpening())) {
      long x = Math.max(field.aX() - spot.x(), spot.x() - field.bX());
      long y = Math.max(field.aY() - spot.y(), spot.y() - field.bY());
      if (Math.max(Math.max(x, y) - tap, field.flat()) < 0) {
        return false;
      }
    }
    return anySlots(model, spot, List.of());
  }

  private static boolean anySlots(RefModel model, Spot spot, List<Integer> chosen) {
    RefMount mount = spot.region().mount();
    RefRegion left = mount.holdsIn(spot.region().turn(), chosen);
    if (left.within(new Span(spot.x(), spot.x()), new Span(spot.y(), spot.y())).isEmpty()) {
      return false;
    }
    if (chosen.size() == mount.studs().size()) {
      return movable(left.xs().get(0), spot.x(), model.settings.tapRoom())
          && movable(left.ys().get(0), spot.y(), model.settings.tapRoom());
    }
    return IntStream.rangeClosed(1, mount.slots().count())
        .anyMatch(
            slot ->
                anySlots(model, spot, Stream.concat(chosen.stream(), Stream.of(slot)).toList()));
  }

  private static boolean movable(Span left, long at, long tap) {
    boolean inTheMiddle = Math.abs(left.lo() + left.hi() - 2 * at) <= 1;
    return left.hi() - left.lo() < 2 * tap
        ? inTheMiddle
        : left.lo() <= at - tap && at + tap <= left.hi();
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
  @ValueSource(booleans = {false, true})
  void widest_openingsTried_noneIsWider(boolean settable) {
    SplittableRandom random = new SplittableRandom(12);
    int wider = 0;
    int found = 0;
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 12; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        RefModel model = model(shop);
        Span whole = model.wholeOpening();
        if (!model.missing.isEmpty() || whole.lo() == whole.hi()) {
          continue;
        }
        String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
        RefOpening.Range widest = new RefOpening(model, settable).widest();
        for (Span tried : wider(random, whole, widest)) {
          assertFalse(
              isClear(model, tried, settable), () -> tried + " is wider than " + widest + text);
          wider++;
        }
        if (widest != null && widest.from().ceil() <= widest.to().floor()) {
          Span most = new Span(widest.from().ceil(), widest.to().floor());
          assertTrue(isClear(model, most, settable), () -> most + "\n" + text);
          found++;
        }
      }
    }
    assertTrue(wider > 5000 && found > 100, wider + " wider, " + found + " found");
  }

  private static boolean isClear(RefModel model, Span openings, boolean settable) {
    RefChoice choice = new RefChoice(model, openings);
    return settable ? choice.somewhereSettable() : choice.somewhereClear();
  }

  /** Ranges a little wider than the widest found, half of them near it. */
  private static List<Span> wider(SplittableRandom random, Span whole, RefOpening.Range widest) {
    long width = widest == null ? 0 : widest.width().floor() + 1;
    List<Span> tried = new ArrayList<>();
    for (int i = 0; i < 60 && width <= whole.hi() - whole.lo(); i++) {
      long from = random.nextLong(whole.lo(), whole.hi() - width + 1);
      if (widest != null && i % 2 == 0) {
        long near = widest.from().floor() + random.nextLong(-5, 6);
        from = Math.max(whole.lo(), Math.min(whole.hi() - width, near));
      }
      tried.add(new Span(from, from + width));
    }
    return tried;
  }

  private static RefModel model(Shop shop) {
    return new RefModel(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop), false);
  }
}
