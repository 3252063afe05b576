package org.jawroom.placement.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.clearance.Limit;
import org.jawroom.clearance.PartRole;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.space.Place;
import org.jawroom.reference.RandomShops;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.reference.ShopCsv;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Sides;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Compares the inspection with the outcome, which is verified against the reference elsewhere. */
class InspectionTest {
  private static final int SEEDS = 40;

  @ParameterizedTest
  @EnumSource(Profile.class)
  void everything_randomShops_goesWithTheOutcome(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Outcome outcome =
          Pairing.solve(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
      if (outcome.recommended().isPresent()) {
        Recommendation reported = outcome.recommended().get();
        Inspection closer =
            Pairing.solved(shop.settings(), outcome.machine(), outcome.vise())
                .inspection()
                .orElseThrow();
        String input = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
        reach(reported, closer, input);
        layout(outcome, reported, closer.layout(), input);
        choices(outcome, reported, closer, input);
        assertEquals(reported.limit(), closer.pairs().stream().findFirst(), input);
      }
    }
  }

  private static void reach(Recommendation reported, Inspection closer, String input) {
    Sides<Long> sides = closer.reachShort();
    long most =
        Stream.of(sides.front(), sides.rear(), sides.left(), sides.right())
            .mapToLong(Long::longValue)
            .max()
            .orElseThrow();
    assertEquals(reported.reachShortfall(), most, input);
    Layout layout = closer.layout();
    assertEquals(
        reported.reachShortfall(), layout.reach().shortfall(layout.workArea(), 0, 0), input);
  }

  private static void layout(
      Outcome outcome, Recommendation reported, Layout layout, String input) {
    assertTrue(layout.parts().stream().noneMatch(p -> p.part().role() == PartRole.BOLT), input);
    reported
        .limit()
        .filter(limit -> limit.part().role() != PartRole.BOLT)
        .ifPresent(limit -> assertEquals(1, standing(layout, limit), input));
    reported
        .limit()
        .ifPresent(
            limit ->
                assertTrue(
                    layout.guards().stream().anyMatch(guard -> guard.equals(limit.guard())),
                    input));
    assertEquals(reported.slots().size(), layout.bolts().size(), input);
    for (int i = 0; i < reported.slots().size(); i++) {
      Place bolt = layout.bolts().get(i);
      boolean alongX = outcome.machine().slots().direction() == Axis.X;
      assertEquals(
          layout.slotCentres().get(reported.slots().get(i) - 1),
          alongX ? bolt.y() : bolt.x(),
          input);
    }
  }

  private static long standing(Layout layout, Limit limit) {
    return layout.parts().stream()
        .filter(part -> part.part().equals(limit.part()))
        .filter(part -> part.swept().equals(limit.partBox()))
        .count();
  }

  /** Among clear places: bolted before clamped, settable, least shortfall, largest margin. */
  private static boolean isPreferred(
      Alternative other, long margin, Recommendation reported, long best) {
    boolean clamped = other.mount().equals(Fastening.CLAMPS);
    if (clamped != reported.fastening().clamped()) {
      return !clamped;
    }
    if (other.settable() != reported.settable()) {
      return other.settable();
    }
    if (other.reachShortfall() != reported.reachShortfall()) {
      return other.reachShortfall() < reported.reachShortfall();
    }
    return margin > best;
  }

  private static void choices(
      Outcome outcome, Recommendation reported, Inspection closer, String input) {
    if (outcome.verdict() == Verdict.FITS || outcome.verdict() == Verdict.NO_PLACE) {
      Optional<Limit> most = closer.roomiest().map(Roomiest::limit).orElse(reported.limit());
      assertEquals(
          outcome.bestMargin().isPresent()
              ? Optional.of(outcome.bestMargin().getAsLong())
              : Optional.empty(),
          most.map(Limit::margin),
          input);
    }
    Set<List<Object>> seen = new HashSet<>();
    seen.add(List.of(reported.handleTo(), reported.mount()));
    for (Alternative other : closer.others()) {
      assertTrue(seen.add(List.of(other.turn(), other.mount())), input);
      assertEquals(other.turn(), other.best().handleTo(), input);
      assertEquals(other.mount(), other.best().mount(), input);
      long margin = other.margin().orElse(Long.MAX_VALUE);
      long best = reported.limit().map(Limit::margin).orElse(Long.MAX_VALUE);
      assertFalse(
          best < 0
              ? margin > best
                  || margin == best && other.reachShortfall() < reported.reachShortfall()
              : margin >= 0 && isPreferred(other, margin, reported, best),
          input);
    }
  }
}
