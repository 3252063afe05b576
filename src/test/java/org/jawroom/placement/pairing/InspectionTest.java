package org.jawroom.placement.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Play;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Sides;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Compares the inspection with the outcome, which is verified against the reference elsewhere. */
class InspectionTest {
  private static final int SEEDS = 40;

  @ParameterizedTest
  @EnumSource(Profile.class)
  void everything_randomShops_goesWithTheOutcome(Profile profile) {
    int placed = 0;
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
        range(outcome, shop, reported, closer, input);
        assertEquals(reported.limit(), closer.pairs().stream().findFirst(), input);
        placed++;
      }
    }
    assertTrue(20 * placed > SEEDS, profile + ": placed " + placed);
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

  /** Each end of the range may be stood at, and so may places between; nothing beyond may. */
  private static void range(
      Outcome outcome, Shop shop, Recommendation reported, Inspection closer, String input) {
    assertEquals(reported.play().isPresent(), closer.range().isPresent(), input);
    if (closer.range().isEmpty()) {
      return;
    }
    Play range = closer.range().get();
    Standing standing = new Standing(shop, outcome, reported);
    walked(standing, -1, 0, range.left(), input + " left");
    walked(standing, 1, 0, range.right(), input + " right");
    walked(standing, 0, -1, range.front(), input + " front");
    walked(standing, 0, 1, range.rear(), input + " rear");
  }

  private static void walked(Standing standing, int dx, int dy, long way, String input) {
    for (int step = 0; step <= 8; step++) {
      long off = way / 8 * step + way % 8 * step / 8;
      assertTrue(standing.serves(dx * off, dy * off), input + " serves at " + off);
    }
    assertFalse(standing.serves(dx * (way + 1), dy * (way + 1)), input + " beyond " + way);
  }

  /** Whether a place beside the recommended one serves as well, by the definitions. */
  private record Standing(
      Region region,
      PreparedMachine machine,
      Recommendation reported,
      Rectangle reach,
      Rectangle workArea) {

    Standing(Shop shop, Outcome outcome, Recommendation reported) {
      this(
          region(shop, outcome, reported),
          PreparedMachine.of(shop.settings(), outcome.machine(), Setup.PLAIN),
          reported,
          layout(shop, outcome).reach(),
          layout(shop, outcome).workArea());
    }

    private static Layout layout(Shop shop, Outcome outcome) {
      return Pairing.solved(shop.settings(), outcome.machine(), outcome.vise())
          .inspection()
          .orElseThrow()
          .layout();
    }

    private static Region region(Shop shop, Outcome outcome, Recommendation reported) {
      Model model = Model.of(shop.settings(), outcome.machine(), outcome.vise(), Setup.PLAIN);
      List<Region> regions =
          outcome.verdict() == Verdict.FITS ? model.regionsWithHandRoom() : model.regions();
      return regions.stream()
          .filter(
              region ->
                  region.turn() == reported.handleTo()
                      && region.fastening().equals(reported.fastening()))
          .findFirst()
          .orElseThrow();
    }

    boolean serves(long dx, long dy) {
      long x = reported.x() + dx;
      long y = reported.y() + dy;
      long tap = reported.settable() ? machine.settings().tapRoom() : 0;
      return region.placesIn(reported.slots(), machine).orElseThrow().contains(x, y)
          && (!reported.settable()
              || region.settable(machine).orElseThrow().rectangles().stream()
                  .anyMatch(strip -> strip.contains(x, y)))
          && reach.shortfall(workArea, dx, dy) <= reported.reachShortfall()
          && region.pairs().stream().allMatch(pair -> isClear(pair, tap, x, y));
    }

    private boolean isClear(Pair pair, long tap, long x, long y) {
      Box part = pair.part().over(reported.openings(), region.turn()).at(x, y);
      Box guard = pair.guard().box();
      long beside = Math.max(gap(part.x(), guard.x()), gap(part.y(), guard.y()));
      return Math.max(beside - tap, gap(part.z(), guard.z())) >= pair.required() + pair.tolerance();
    }

    private static long gap(Interval one, Interval other) {
      return Math.max(other.lo() - one.hi(), one.lo() - other.hi());
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
