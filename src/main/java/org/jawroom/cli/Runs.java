package org.jawroom.cli;

import java.util.List;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/**
 * The pairings of a shop, machines then vises in input order, cut into runs of vises on one
 * machine.
 *
 * @param length the most vises of a run
 */
record Runs(Shop shop, int length) {
  Runs {
    if (length < 1) {
      throw new IllegalArgumentException("runs of " + length);
    }
  }

  private int ofMachine() {
    return (shop.vises().size() + length - 1) / length;
  }

  /** How many runs there are. */
  int count() {
    return Math.multiplyExact(shop.machines().size(), ofMachine());
  }

  /** How many pairings there are. */
  long pairings() {
    return (long) shop.machines().size() * shop.vises().size();
  }

  /** The machine of a run. */
  Machine machine(int run) {
    return shop.machines().get(run / ofMachine());
  }

  /** The vises of a run. */
  List<Vise> vises(int run) {
    int first = run % ofMachine() * length;
    return shop.vises().subList(first, Math.min(shop.vises().size(), first + length));
  }
}
