package org.jawroom.spark;

import java.util.List;
import java.util.TreeSet;
import org.jawroom.clearance.Setup;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;

/**
 * The pairings of a shop in bounded memory: {@link ShopPairings} keeps every machine and every vise
 * prepared, about 20 kB each, which a million vises would fill an executor with. Here as many vises
 * are kept prepared as fit into a quarter of the memory; the others are prepared each time, which
 * doubles the time of a pairing. Several threads may use it at a time.
 */
final class Catalogue {

  /** The memory that a prepared vise takes, and the part of all memory that they may fill. */
  private static final long EACH = 20_000;

  private static final int QUARTER = 4;

  private final Shop shop;
  private final TreeSet<Long> threads = new TreeSet<>();

  /** Filled as vises are asked for; two threads may prepare the same one, which does no harm. */
  private final PreparedVise[] kept;

  private Catalogue(Shop shop, int most) {
    this.shop = shop;
    this.kept = new PreparedVise[Math.min(shop.vises().size(), most)];
    for (int i = 0; i < shop.machines().size(); i++) {
      threads.addAll(machine(i).threads());
    }
  }

  static Catalogue of(Shop shop) {
    long fit = Runtime.getRuntime().maxMemory() / QUARTER / EACH;
    return of(shop, (int) Math.min(Integer.MAX_VALUE, fit));
  }

  /** The same with at most {@code most} vises kept prepared. */
  static Catalogue of(Shop shop, int most) {
    return new Catalogue(shop, most);
  }

  Shop shop() {
    return shop;
  }

  /** Prepares a machine, given by its index in input order. */
  PreparedMachine machine(int index) {
    Machine machine = shop.machines().get(index);
    return PreparedMachine.of(shop.settings(), machine, Setup.PLAIN);
  }

  /** Solves a vise, given by its index in input order, on a machine of the same catalogue. */
  SolvedPairing solved(PreparedMachine machine, int vise) {
    return SolvedPairing.of(machine, prepared(machine, vise));
  }

  private PreparedVise prepared(PreparedMachine machine, int vise) {
    if (vise >= kept.length) {
      return PreparedVise.on(machine, shop.vises().get(vise));
    }
    PreparedVise known = kept[vise];
    if (known == null) {
      known = PreparedVise.of(shop.settings(), shop.vises().get(vise), 0, List.copyOf(threads));
      kept[vise] = known;
    }
    return known;
  }
}
