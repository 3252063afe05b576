package org.jawroom.app.run;

import org.jawroom.shop.Shop;

/**
 * The pairings of a shop, machines then vises in input order, split into runs of vises on one
 * machine.
 *
 * @param length the largest number of vises in a run
 */
public record PairingRuns(Shop shop, int length) {
  public PairingRuns {
    if (length < 1) {
      throw new IllegalArgumentException("length of a run is not positive: " + length);
    }
  }

  private int ofMachine() {
    return (shop.vises().size() + length - 1) / length;
  }

  /** The number of runs. */
  int count() {
    return Math.multiplyExact(shop.machines().size(), ofMachine());
  }

  /** The number of pairings. */
  long pairings() {
    return (long) shop.machines().size() * shop.vises().size();
  }

  /** The index of a run's machine in input order, from 0. */
  int machine(int run) {
    return run / ofMachine();
  }

  /** The index of a run's first vise in input order, from 0. */
  int firstVise(int run) {
    return run % ofMachine() * length;
  }

  /** The index after that of its last vise. */
  int endOfVises(int run) {
    return Math.min(shop.vises().size(), firstVise(run) + length);
  }
}
