package org.jawroom.report.tally;

import org.jawroom.shop.Shop;

/**
 * The pairings of consecutive machines with consecutive vises, as indices in input order from 0;
 * ends are excluded.
 */
public record ShopBlock(int machine, int endOfMachines, int vise, int endOfVises) {
  public ShopBlock {
    if (machine < 0 || endOfMachines < machine || vise < 0 || endOfVises < vise) {
      throw new IllegalArgumentException(
          "machines " + machine + " to " + endOfMachines + ", vises " + vise + " to " + endOfVises);
    }
  }

  /** All pairings of a shop. */
  public static ShopBlock of(Shop shop) {
    return new ShopBlock(0, shop.machines().size(), 0, shop.vises().size());
  }

  /** The number of machines. */
  public int machines() {
    return endOfMachines - machine;
  }

  /** The number of vises. */
  public int vises() {
    return endOfVises - vise;
  }

  /** The number of pairings. */
  public long pairings() {
    return (long) machines() * vises();
  }
}
