package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingPairing;
import org.jawroom.reference.model.RefGuard;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMachine;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefVise;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Turned vises looked at opening by opening: where the solver says that nothing is hit, no polygon
 * of the second solver's parts, turned by JTS, comes nearer to a guard than it may.
 */
class TurnedTwinTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int SEEDS = 60;
  private static final int OPENINGS = 4;

  /** More than any guard is off; beyond it double loses half-nanometres. */
  private static final double FAR = 1L << 42;

  /** More than the rounding of JTS, much less than a half-nanometre. */
  private static final double ROUNDING = 0.01;

  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {
        "PLAIN",
        "FEW_GUARDS",
        "BOTH_JAWS",
        "CLUTTERED",
        "SHAPE_PARTS",
        "TOLERANCES",
        "LOW_HANDLE",
        "SHORTEST_TOOL",
        "OTHER_MOVES",
        "STRAPPED"
      })
  void solve_turnedVise_neverFitsWhereATruePolygonHits(Profile profile) {
    int clear = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine = RandomShops.machine(shop);
      Vise square = RandomShops.vise(shop);
      Random dice = new Random(seed);
      long tenths = 10 + dice.nextInt(890);
      BigDecimal angle = BigDecimal.valueOf(dice.nextBoolean() ? tenths : -tenths, 1);
      long pivot = (long) (dice.nextDouble() * 150 * Length.MM);
      Vise turned = square.turned(new Swivel(square.name(), angle, pivot, OptionalLong.empty()));
      Outcome outcome = Pairing.solve(shop.settings(), machine, turned);
      if (outcome.verdict() == Verdict.FITS || outcome.verdict() == Verdict.AWKWARD) {
        clear++;
        Recommendation place = outcome.recommended().orElseThrow();
        Stand there = new Stand(place.handleTo(), place.x(), place.y());
        look(shop, machine, square, turned, there, square.opening(), profile + " " + seed);
        around(shop, machine, square, turned, place, dice, profile + " " + seed);
      }
    }
    assertTrue(clear > 5, () -> profile + ": too little compared");
  }

  /** Limited to some openings, no polygon hits at any of them, at that place or standing there. */
  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {"PLAIN", "FEW_GUARDS", "BOTH_JAWS", "CLUTTERED", "SHAPE_PARTS", "TOLERANCES"})
  void solve_limitedTurnedVise_neverHitsAtAUsableOpening(Profile profile) {
    int limited = 0;
    int stand = 0;
    for (long seed = 0; seed < 4 * SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine = RandomShops.machine(shop);
      Vise square = RandomShops.vise(shop);
      Random dice = new Random(seed);
      BigDecimal angle = BigDecimal.valueOf(dice.nextInt(1, 90) * (dice.nextBoolean() ? 1L : -1));
      Vise turned =
          square.turned(new Swivel(square.name(), angle, 40 * Length.MM, OptionalLong.empty()));
      Outcome outcome = Pairing.solve(shop.settings(), machine, turned);
      String which = profile + " " + seed;
      if (outcome.verdict() == Verdict.LIMITED) {
        limited++;
        Recommendation place = outcome.recommended().orElseThrow();
        Stand there = new Stand(place.handleTo(), place.x(), place.y());
        Interval usable = outcome.usableOpening().orElseThrow();
        assertTrue(usable.length() >= shop.settings().leastOpening(), which);
        assertEquals(usable, place.openings(), which);
        look(shop, machine, square, turned, there, usable, which);
      }
      if (outcome.recommended().isPresent()) {
        stand += stands(shop, machine, square, turned, outcome.recommended().get(), which);
      }
    }
    int all = limited;
    int there = stand;
    assertTrue(all > 3 && there > 3, () -> profile + ": too little compared: " + all + " " + there);
  }

  /** The same of a vise that stands at a place; 1 if it is limited there. */
  private static int stands(
      Shop shop, Machine machine, Vise square, Vise turned, Recommendation place, String which) {
    StandingOutcome found =
        StandingPairing.solve(
            shop.settings(),
            new Standing(
                machine,
                turned,
                TapedPlace.of(machine, turned, place.handleTo(), place.x(), place.y()),
                place.mount(),
                new Provenance(0, true, "", "")));
    if (found.says() != StandingOutcome.Says.LIMITED) {
      return 0;
    }
    Stand there = new Stand(place.handleTo(), place.x(), place.y());
    Interval usable = found.usable().orElseThrow();
    assertTrue(usable.length() >= shop.settings().leastOpening(), which);
    look(shop, machine, square, turned, there, usable, which + " at");
    return 1;
  }

  /** Standing near the recommended place it fits only where no true polygon hits, either. */
  private static void around(
      Shop shop,
      Machine machine,
      Vise square,
      Vise turned,
      Recommendation place,
      Random dice,
      String which) {
    for (int i = 0; i < 3; i++) {
      long x = place.x() + (i == 0 ? 0 : dice.nextInt(-60, 61) * Length.MM);
      long y = place.y() + (i == 0 ? 0 : dice.nextInt(-1, 2) * Length.MM / 2);
      Standing standing =
          new Standing(
              machine,
              turned,
              TapedPlace.of(machine, turned, place.handleTo(), x, y),
              place.mount(),
              new Provenance(0, true, "", ""));
      StandingOutcome found = StandingPairing.solve(shop.settings(), standing);
      if (i == 0) {
        assertEquals(StandingOutcome.Says.FITS, found.says(), which);
      }
      if (found.says() == StandingOutcome.Says.FITS) {
        Stand there = new Stand(place.handleTo(), x, y);
        look(shop, machine, square, turned, there, square.opening(), which + " at");
      }
    }
  }

  /** Square and turned side by side: true polygons of neighbours keep the spacing. */
  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {"PLAIN", "FEW_GUARDS", "BOTH_JAWS", "TOLERANCES", "SLOTS_ALONG_Y"})
  void set_squareAndTurned_neverFitsWhereTruePolygonsAreTooNear(Profile profile) {
    int clear = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine =
          RandomShops.machine(shop).toBuilder().table(2000 * Length.MM, 2000 * Length.MM).build();
      Vise square = RandomShops.vise(shop);
      BigDecimal angle = BigDecimal.valueOf(new Random(seed).nextInt(1, 90));
      Vise turned = square.turned(new Swivel(square.name(), angle, 0, OptionalLong.empty()));
      SetOutcome found =
          SetPairing.solve(
              shop.settings(),
              machine,
              new ViseSet(
                  "set",
                  List.of(new ViseSet.Member(square, 1), new ViseSet.Member(turned, 1)),
                  List.of()));
      if (found.fits() == SetOutcome.Fits.YES) {
        clear++;
        apart(shop, machine, square, found, profile + " " + seed);
      }
    }
    assertTrue(clear > 3, () -> profile + ": too little compared");
  }

  private static void apart(
      Shop shop, Machine machine, Vise square, SetOutcome found, String which) {
    SetOutcome.Stand left = found.stands().get(0);
    SetOutcome.Stand right = found.stands().get(1);
    for (SetOutcome.Stand stand : found.stands()) {
      if (stand.vise().isTurned()) {
        Recommendation place = stand.place();
        Stand there = new Stand(place.handleTo(), place.x(), place.y());
        look(shop, machine, square, stand.vise(), there, square.opening(), which);
      }
    }
    boolean alongX = machine.slots().direction() == Axis.X;
    for (Covered one : covered(square, left)) {
      for (Covered other : covered(square, right)) {
        Envelope from = one.ground().getEnvelopeInternal();
        Envelope to = other.ground().getEnvelopeInternal();
        double gap = alongX ? to.getMinX() - from.getMaxX() : to.getMinY() - from.getMaxY();
        assertTrue(
            one.isHandle() && other.isHandle()
                || gap >= shop.settings().spacing() - 2 * ROUNDING - 1,
            () -> which + ": " + gap);
      }
    }
  }

  /** What a part covers of the table, open and closed. */
  private record Covered(boolean isHandle, Geometry ground) {}

  private static List<Covered> covered(Vise square, SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    Stand there = new Stand(place.handleTo(), place.x(), place.y());
    long min = square.opening().lo();
    long max = square.opening().hi();
    List<Covered> covered = new ArrayList<>();
    for (RefPart part : RefVise.body(square, RefLevel.WORST, EnumSet.noneOf(Column.class))) {
      for (long s : List.of(min, max)) {
        Span u = part.u(s, s, min, max);
        Geometry still = JTS.toGeometry(new Envelope(u.lo(), u.hi(), part.v().lo(), part.v().hi()));
        Geometry moved = stand.vise().swivel().map(by -> moved(still, by)).orElse(still);
        covered.add(new Covered(part.isHandle(), on(there, moved)));
      }
    }
    return covered;
  }

  /** Where a vise stands. */
  private record Stand(Orientation handleTo, long x, long y) {}

  private static Geometry moved(Geometry still, Swivel swivel) {
    return AffineTransformation.rotationInstance(
            Math.toRadians(swivel.angle().doubleValue()), swivel.pivot(), 0)
        .transform(still);
  }

  private static void look(
      Shop shop,
      Machine machine,
      Vise square,
      Vise turned,
      Stand place,
      Interval openings,
      String which) {
    Swivel swivel = turned.swivel().orElseThrow();
    EnumSet<Column> missing = EnumSet.noneOf(Column.class);
    List<RefGuard> guards = RefMachine.guards(shop.settings(), machine, square, missing);
    long min = square.opening().lo();
    long max = square.opening().hi();
    for (RefPart part : RefVise.body(square, RefLevel.WORST, missing)) {
      for (int i = 0; i <= OPENINGS; i++) {
        long s = openings.lo() + openings.length() / OPENINGS * i;
        Span u = part.u(s, s, min, max);
        Geometry still = JTS.toGeometry(new Envelope(u.lo(), u.hi(), part.v().lo(), part.v().hi()));
        Geometry moved = moved(still, swivel);
        boolean stands = part.name().equals("base");
        boolean isRow =
            square.parts().stream().anyMatch(row -> row.name().equals(part.name()))
                && !part.isHandle();
        for (RefGuard guard : guards) {
          for (boolean cutting : List.of(true, false)) {
            if (stands || isRow) {
              clear(on(place, still), part, guard, cutting, which);
            }
            // The casting above the base plate turns, too.
            clear(on(place, moved), part, guard, cutting, which);
          }
        }
      }
    }
  }

  private static void clear(
      Geometry at, RefPart part, RefGuard guard, boolean cutting, String which) {
    RefGuard.Block block = guard.block(cutting);
    if (block == null || part.w(cutting) == null) {
      return;
    }
    boolean meetsTable = part.isHandle() ? !cutting : part.w(cutting).lo() < 0;
    if (guard.isTable() && !meetsTable) {
      return;
    }
    long need = guard.clearance() + guard.tolerance() + part.tolerance();
    if (part.w(cutting).gap(block.z()) >= need) {
      return;
    }
    double off = need - ROUNDING;
    Envelope near =
        new Envelope(
            Math.max(-FAR, block.x().lo() - off),
            Math.min(FAR, block.x().hi() + off),
            Math.max(-FAR, block.y().lo() - off),
            Math.min(FAR, block.y().hi() + off));
    assertFalse(
        at.intersects(JTS.toGeometry(near)),
        () -> which + ": " + part.name() + " to " + guard.name() + " cutting " + cutting);
  }

  /** From the vise frame to the table frame. */
  private static Geometry on(Stand place, Geometry inVise) {
    Orientation turn = place.handleTo();
    boolean along = turn.uAxis() == Axis.X;
    return new AffineTransformation(
            along ? turn.uSign() : 0,
            along ? 0 : turn.vSign(),
            place.x(),
            along ? 0 : turn.uSign(),
            along ? turn.vSign() : 0,
            place.y())
        .transform(inVise);
  }
}
