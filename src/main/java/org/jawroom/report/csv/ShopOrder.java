package org.jawroom.report.csv;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.shop.Shop;

/**
 * Puts batches in shop order: machines, then vises. Blocks come in bands of some machines, the
 * first machines first, and in a band the first vises first; what cannot go on yet waits.
 */
public final class ShopOrder {
  private final int vises;
  private final List<List<Batch>> band = new ArrayList<>();

  public ShopOrder(Shop shop) {
    this.vises = shop.vises().size();
  }

  /** Takes the next block; returns the batches that follow those returned before. */
  public List<Batch> next(SolvedBlock solved) {
    if (solved.batches().size() == 1) {
      return solved.batches();
    }
    band.add(solved.batches());
    if (solved.block().endOfVises() < vises) {
      return List.of();
    }
    List<Batch> next = new ArrayList<>();
    for (int machine = 0; machine < solved.batches().size(); machine++) {
      for (List<Batch> ofBlock : band) {
        next.add(ofBlock.get(machine));
      }
    }
    band.clear();
    return next;
  }
}
