package org.jawroom.reference.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.space.FreeCells;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

/** Compares our decomposition of free space with polygon overlay by the Java Topology Suite. */
class OverlayFreeSpaceTest {

  @Test
  void area_randomRectangles_asCellsHaveIt() {
    SplittableRandom random = new SplittableRandom(5);
    for (int round = 0; round < 300; round++) {
      List<Rect> forbidden =
          Stream.generate(() -> rect(random)).limit(1 + random.nextInt(12)).toList();
      FreeSpaces ours = new FreeSpaces(null, "", List.of(new Rect(0, 30, 0, 20)), forbidden);

      assertEquals(
          OverlayFreeSpace.area(ours.region(), forbidden), ours.cellArea(), () -> "" + forbidden);
    }
  }

  private static Rect rect(SplittableRandom random) {
    int x = random.nextInt(-5, 30);
    int y = random.nextInt(-5, 20);
    return new Rect(x, x + random.nextInt(1, 20), y, y + random.nextInt(1, 15));
  }

  @Test
  void area_randomShops_asCellsHaveIt() {
    int compared = 0;
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 25; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        for (FreeSpaces spaces :
            FreeSpaces.of(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop), 0)) {
          double overlay = OverlayFreeSpace.area(spaces.region(), spaces.forbidden());
          assertEquals(
              overlay,
              spaces.cellArea(),
              1e-9 * overlay,
              () -> spaces.turn() + "\n" + ShopCsv.text(shop));
          compared += overlay > 0 ? 1 : 0;
        }
      }
    }
    int some = compared;
    assertTrue(some > 100, () -> "only " + some + " had free area");
  }

  @Test
  void cells_onePointLeftBetweenOpenRectangles_isFree() {
    List<Rect> around =
        List.of(
            new Rect(-1, 5, -1, 5),
            new Rect(-1, 5, 5, 11),
            new Rect(5, 11, -1, 5),
            new Rect(5, 11, 5, 11),
            new Rect(-1, 5, 4, 6),
            new Rect(5, 11, 4, 6),
            new Rect(4, 6, -1, 5),
            new Rect(4, 6, 5, 11));
    List<Span> region = List.of(new Span(0, 10));

    assertEquals(List.of(new Rect(5, 5, 5, 5)), FreeCells.of(region, region, around));
    assertFalse(FreeCells.isEmpty(region, region, around));
    assertEquals(0, OverlayFreeSpace.area(List.of(new Rect(0, 10, 0, 10)), around));
  }
}
