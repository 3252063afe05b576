package org.jawroom.app.choice;

import java.io.PrintWriter;
import java.util.Optional;
import org.jawroom.shop.Shop;
import org.jawroom.shop.vise.Vise;

/** The shop with a contiguous range of its vises. */
public final class ViseRange {
  private ViseRange() {}

  /** As {@link MachineRange#of} does with machines. */
  public static Optional<Shop> of(Shop shop, String range, PrintWriter err) {
    return new NamedRange<>(shop.vises(), Vise::name, new Pairs(shop, err)::vise)
        .of(range, new Pairs(shop, NamedRange.SILENT)::vise, err)
        .map(shop::withVises);
  }
}
