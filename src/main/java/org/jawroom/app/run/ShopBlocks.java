package org.jawroom.app.run;

import org.jawroom.report.tally.ShopBlock;
import org.jawroom.shop.Shop;

/**
 * The pairings of a shop, split into bands of machines and these into blocks of vises, all in input
 * order.
 *
 * @param machines the largest number of machines in a block
 * @param vises the largest number of vises in a block
 */
record ShopBlocks(Shop shop, int machines, int vises) {
  ShopBlocks {
    if (machines < 1 || vises < 1) {
      throw new IllegalArgumentException("blocks of " + machines + " × " + vises);
    }
  }

  private int inBand() {
    return upward(shop.vises().size(), vises);
  }

  /** The number of blocks. */
  int count() {
    return Math.multiplyExact(upward(shop.machines().size(), machines), inBand());
  }

  /** The number of pairings. */
  long pairings() {
    return ShopBlock.of(shop).pairings();
  }

  /** The block of that number, from 0. */
  ShopBlock block(int number) {
    int machine = number / inBand() * machines;
    int vise = number % inBand() * vises;
    return new ShopBlock(
        machine,
        Math.min(shop.machines().size(), machine + machines),
        vise,
        Math.min(shop.vises().size(), vise + vises));
  }

  private static int upward(int all, int ofEach) {
    return (all + ofEach - 1) / ofEach;
  }
}
