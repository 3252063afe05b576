package org.jawroom.reference.random;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.random.RandomShops.Feature;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/**
 * Generated shops of any size for benchmarks: one guard per machine besides its gaps, no blanks,
 * about a quarter of the pairings without a mount. Equal size and seed give equal shops, and a
 * smaller shop has the same first machines and vises.
 */
public final class BigShop {
  private static final Set<Feature> MACHINES = EnumSet.of(Feature.FEW_GUARDS);
  private static final Set<Feature> VISES = EnumSet.noneOf(Feature.class);

  private BigShop() {}

  /**
   * Writes the tables of such a shop: {@code BigShop MACHINES VISES FOLDER SEED}.
   *
   * @throws IOException if {@code FOLDER}, created if necessary, cannot be written to
   */
  public static void main(String[] args) throws IOException {
    Shop shop = shop(Integer.parseInt(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[3]));
    write(shop, Path.of(args[2]));
  }

  /** {@code machine 0001} and so on; {@code vise 0001} and so on. */
  public static Shop shop(int machines, int vises, long seed) {
    List<Machine> mills = new ArrayList<>(machines);
    for (int i = 1; i <= machines; i++) {
      MachineDraft mill = mill(new Dice(seed * 7_000_003 + i, false));
      mill.name = "machine %04d".formatted(i);
      mills.add(mill.build());
    }
    List<Vise> kinds = new ArrayList<>(vises);
    for (int i = 1; i <= vises; i++) {
      Dice dice = new Dice(seed * 9_000_011 - i, false);
      ViseDraft vise = RandomVises.draft(dice, VISES, mill(dice));
      vise.name = "vise %04d".formatted(i);
      kinds.add(vise.build());
    }
    return new Shop(Settings.DEFAULTS, mills, kinds, List.of());
  }

  /** Writes the tables of {@code shop} into {@code folder}, created if necessary. */
  public static void write(Shop shop, Path folder) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, String> file : ShopCsv.files(shop).entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
  }

  /**
   * Uses the most common slots, so that a vise made for one machine often fits another; all slots
   * lie on the table.
   */
  private static MachineDraft mill(Dice dice) {
    MachineDraft mill = RandomMachines.draft(dice, MACHINES);
    mill.guards.subList(1, mill.guards.size()).clear();
    mill.slotPositions = List.of();
    mill.slotFirst = OptionalLong.empty();
    mill.slotPitch = dice.dimension(50, 80);
    mill.slotWidth = Dimension.of(dice.among(List.of(14L, 16L, 16L, 18L)) * Length.MM);
    long across = mill.slotDirection == Axis.X ? mill.tableWidth : mill.tableLength;
    long most = 1 + (across - mill.slotWidth.length() - Length.MM) / mill.slotPitch.length();
    mill.slotCount = (int) Math.max(1, Math.min(mill.slotCount, most));
    return mill;
  }
}
