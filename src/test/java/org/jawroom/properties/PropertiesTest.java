package org.jawroom.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalLong;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What must hold of any shop, whatever its numbers; {@code -Dproperties.seeds=500} tries more of
 * them.
 */
class PropertiesTest {
  private static final int SEEDS = Integer.getInteger("properties.seeds", 40);
  private static final long MORE = 3 * Length.MM;

  @ParameterizedTest
  @EnumSource(Profile.class)
  void bestMargin_moreClearanceOrTolerance_isNeverMore(Profile profile) {
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Case now = new Case(profile, seed);
      Settings s = now.shop.settings();
      Settings asking =
          s.toBuilder().clearance(s.clearance() + MORE).handRoom(s.handRoom() + MORE).build();
      compared += now.neverRoomier(Pairing.solve(asking, now.machine, now.vise), "clearance");
      Machine vague =
          now.machine.withProvenance(
              now.machine.provenance().withTolerance(now.machine.provenance().tolerance() + MORE));
      compared += now.neverRoomier(Pairing.solve(s, vague, now.vise), "machine tolerance");
      Vise loose =
          now.vise.withProvenance(
              now.vise.provenance().withTolerance(now.vise.provenance().tolerance() + MORE));
      compared += now.neverRoomier(Pairing.solve(s, now.machine, loose), "vise tolerance");
    }
    assertTrue(20 * compared > SEEDS, profile + ": compared " + compared);
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void bestMargin_thickerJaws_isNeverMore(Profile profile) {
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Case now = new Case(profile, seed);
      Dimension fixed = thicker(now.vise.jaws().fixedThickness());
      Dimension moving = thicker(now.vise.jaws().movingThickness());
      Vise thick = now.vise.withJaws(now.vise.jaws().withThickness(fixed, moving));
      compared += now.neverRoomier(Pairing.solve(now.shop.settings(), now.machine, thick), "jaws");
    }
    assertTrue(20 * compared > SEEDS, profile + ": compared " + compared);
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void bestMargin_narrowerGap_isNeverMore(Profile profile) {
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Case now = new Case(profile, seed);
      for (Side side : Side.values()) {
        Dimension gap = now.machine.gap(side);
        if (gap.isKnown()) {
          Machine tight = now.machine.withGap(side, Dimension.of(gap.length() - MORE));
          compared +=
              now.neverRoomier(Pairing.solve(now.shop.settings(), tight, now.vise), side + " gap");
        }
      }
    }
    assertTrue(20 * compared > SEEDS, profile + ": compared " + compared);
  }

  /**
   * Boxes only: a taped gap is measured at the end of travel, so with more travel it is another
   * machine's.
   */
  @ParameterizedTest
  @EnumSource(Profile.class)
  void bestMargin_moreTravelAmongBoxes_isNeverMore(Profile profile) {
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Case now = new Case(profile, seed);
      Machine boxes =
          now.machine.toBuilder()
              .gaps(Sides.all(Dimension.NONE))
              .guardRows(now.machine.guardRows().stream().filter(g -> g.side().isEmpty()).toList())
              .build();
      OptionalLong less = Pairing.solve(now.shop.settings(), boxes, now.vise).bestMargin();
      OptionalLong more =
          Pairing.solve(now.shop.settings(), Farther.of(boxes, MORE), now.vise).bestMargin();
      if (less.isPresent() && more.isPresent()) {
        assertTrue(more.getAsLong() <= less.getAsLong(), now.input("travel"));
        compared++;
      }
    }
    assertTrue(20 * compared > SEEDS, profile + ": compared " + compared);
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void outcome_mirroredLeftToRight_isTheMirrorImage(Profile profile) {
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Case now = new Case(profile, seed);
      Outcome mirrored =
          Pairing.solve(now.shop.settings(), Mirror.machine(now.machine), Mirror.vise(now.vise));
      assertEquals(printed(now.outcome), printed(mirrored), now.input("mirror"));
      compared += now.outcome.recommended().isPresent() ? 1 : 0;
    }
    assertTrue(20 * compared > SEEDS, profile + ": compared " + compared);
  }

  /** What a mirror leaves as it is. */
  private static String printed(Outcome outcome) {
    return outcome.verdict()
        + " "
        + outcome.bestMargin()
        + " "
        + outcome.usableOpening()
        + " "
        + outcome.missing().size()
        + outcome
            .recommended()
            .map(p -> " " + p.y() + " " + p.reachShortfall() + " " + p.limit().map(l -> l.margin()))
            .orElse("");
  }

  private static Dimension thicker(Dimension thickness) {
    return thickness.isKnown() ? Dimension.of(thickness.length() + MORE) : thickness;
  }

  /** A random pairing and what it comes to. */
  private static final class Case {
    private final String name;
    private final Shop shop;
    private final Machine machine;
    private final Vise vise;
    private final Outcome outcome;

    Case(Profile profile, long seed) {
      name = profile + " seed " + seed;
      shop = RandomShops.shop(profile, seed);
      machine = RandomShops.machine(shop);
      vise = RandomShops.vise(shop);
      outcome = Pairing.solve(shop.settings(), machine, vise);
    }

    String input(String what) {
      return what + " " + name + "\n" + ShopCsv.text(shop);
    }

    /** 1 if margins were compared, else 0. */
    int neverRoomier(Outcome other, String what) {
      OptionalLong before = outcome.bestMargin();
      OptionalLong after = other.bestMargin();
      if (NeverBetter.blank(outcome) || NeverBetter.blank(other)) {
        return 0;
      }
      // Whether bolts line up and whether there is anything to hit does not hang on what is changed
      // here.
      assertEquals(before.isPresent(), after.isPresent(), input(what));
      if (before.isPresent() && NeverBetter.isOfOneKind(outcome, other)) {
        assertTrue(after.getAsLong() <= before.getAsLong(), input(what));
        return 1;
      }
      return 0;
    }
  }
}
