package org.jawroom.bench;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Length;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.pairing.BestPlacements;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.reference.proof.FreeSpaces;
import org.jawroom.reference.proof.SweptBoxes;
import org.jawroom.reference.random.CrossedShops;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The pairings of one seeded shop, taken apart beforehand for the solver and for each yardstick.
 */
final class Pairings {
  static final int MACHINES = 12;
  static final int VISES = 12;
  static final int COUNT = MACHINES * VISES;

  private static final long SEED = 1;

  private final ShopPairings every;
  private final BestPlacements places;
  private final List<List<SweptBoxes>> boxes = new ArrayList<>();
  private final List<List<FreeSpaces>> spaces = new ArrayList<>();
  private final List<Integer> openings = new ArrayList<>();

  Pairings(int boxesEach, boolean yardsticks) {
    Shop shop = CrossedShops.shop(SEED, MACHINES, VISES, boxesEach);
    this.every = ShopPairings.of(shop);
    this.places = new BestPlacements(asked(shop, 10_000 * Length.MM));
    if (yardsticks) {
      for (Machine machine : shop.machines()) {
        for (Vise vise : shop.vises()) {
          boxes.add(SweptBoxes.of(shop.settings(), machine, vise, false));
          spaces.add(FreeSpaces.of(shop.settings(), machine, vise, 0));
          openings.add((int) (vise.opening().length() / Length.MM) + 1);
        }
      }
      check();
    }
  }

  /** A grid that finds a place where the solver has none would show one of the two to be wrong. */
  private void check() {
    for (int i = 0; i < COUNT; i++) {
      // The grid asks for no hand room, without which a pairing is awkward.
      if (GridSweep.isClear(boxes.get(i)) && !solve(i).verdict().isClear()) {
        throw new IllegalStateException("pairing " + i + ": the grid has a place, the solver none");
      }
    }
  }

  /** The whole outcome of a pairing. */
  Outcome solve(int pairing) {
    return every.solve(pairing / VISES, pairing % VISES);
  }

  /** Best margin, recommended place and limiting pair; no part of an opening is wide enough. */
  long place(int pairing) {
    return places.ask(pairing / VISES, pairing % VISES);
  }

  List<SweptBoxes> boxes(int pairing) {
    return boxes.get(pairing);
  }

  List<FreeSpaces> spaces(int pairing) {
    return spaces.get(pairing);
  }

  /** How many openings 1 mm apart the vise has. */
  int openings(int pairing) {
    return openings.get(pairing);
  }

  private static Shop asked(Shop shop, long leastOpening) {
    Settings all = shop.settings();
    Settings settings = all.toBuilder().leastOpening(leastOpening).build();
    return new Shop(settings, shop.machines(), shop.vises(), shop.jobs());
  }
}
