package org.jawroom.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;
import org.jawroom.reference.proof.FreeSpaces;
import org.jawroom.reference.proof.OverlayFreeSpace;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.space.Rect;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The solver's free space against polygon overlay (JTS, a general-purpose library of computational
 * geometry). The decomposition of the solver's own rectangles and the overlay of the reference's
 * boxes must have the same area, and a position must be found exactly where some is left.
 */
class FreeSpaceOverlayTest {
  private static final long SEEDS = 40;

  @ParameterizedTest
  @EnumSource(value = Profile.class, mode = EnumSource.Mode.EXCLUDE, names = "BLANKS")
  void find_randomShops_agreesWithPolygonOverlay(Profile profile) {
    int compared = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine = RandomShops.machine(shop);
      Vise vise = RandomShops.vise(shop);
      Model model = Model.of(shop.settings(), machine, vise, Setup.PLAIN);
      List<Region> regions = model.regions();
      if (!model.blanks().isEmpty()) {
        continue;
      }
      List<FreeSpaces> others = FreeSpaces.of(shop.settings(), machine, vise, 0);
      String input = profile + " " + seed + "\n" + ShopCsv.text(shop);
      assertEquals(others.size(), regions.size(), input);
      for (Region region : regions) {
        FreeSpaces other =
            others.stream()
                .filter(
                    o -> o.turn() == region.turn() && o.mount().equals(region.fastening().name()))
                .findFirst()
                .orElseThrow();
        compare(region, vise, other, () -> region.turn() + " " + input);
        compared++;
      }
    }
    assertTrue(
        2 * compared > SEEDS || profile.name().contains("BLANKS"),
        profile + ": compared " + compared);
  }

  private static void compare(Region region, Vise vise, FreeSpaces other, Supplier<String> input) {
    MarginField field = region.field(vise.opening());
    FreeSpaces ours =
        new FreeSpaces(
            region.turn(),
            region.fastening().name(),
            region.places().rectangles().stream()
                .map(p -> new Rect(p.x().lo(), p.x().hi(), p.y().lo(), p.y().hi()))
                .toList(),
            field.bounds().stream()
                .filter(pair -> pair.f() < 0 && pair.a() < pair.b() && pair.c() < pair.d())
                .map(pair -> new Rect(pair.a(), pair.b(), pair.c(), pair.d()))
                .toList());
    double overlay = OverlayFreeSpace.area(other.region(), other.forbidden());
    assertEquals(overlay, ours.cellArea(), 1e-9 * overlay, input);

    Optional<Place> found =
        Optional.ofNullable(region.space(vise.opening()).find(0, Window.EVERYWHERE));
    if (overlay > 0) {
      assertTrue(found.isPresent(), input);
    }
    // No area is left: at most lines and points of exact contact.
    found.ifPresent(place -> assertTrue(field.margin(place.x(), place.y()) >= 0, input));
  }
}
