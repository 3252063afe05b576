package org.jawroom.reference.random;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Length;
import org.jawroom.reference.random.RandomShops.Feature;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/**
 * Seeded shops of many machines and many vises, each vise generated for every machine; about a
 * quarter of the pairings still have no mount.
 */
public final class CrossedShops {
  private static final long WIDE = 18 * Length.MM;

  private CrossedShops() {}

  /**
   * A shop whose machines have {@code boxes} box guards each, around and on the table, besides
   * their gap guards. With equal seeds, other counts give the same tables and vises, and fewer
   * boxes are a subset of more.
   */
  public static Shop shop(long seed, int machines, int vises, int boxes) {
    Set<Feature> features = EnumSet.noneOf(Feature.class);
    List<MachineDraft> drafts = new ArrayList<>();
    List<Machine> mills = new ArrayList<>();
    for (int i = 0; i < machines; i++) {
      MachineDraft mill = RandomMachines.draft(new Dice(seed * 1_009 + i, false), features);
      mill.name = "mill " + (i + 1);
      mill.guards.clear();
      RandomMachines.addBoxes(new Dice(seed * 2_003 + i, false), features, mill, boxes);
      drafts.add(mill);
      mills.add(mill.build());
    }
    List<Vise> all = new ArrayList<>();
    for (int i = 0; i < vises; i++) {
      MachineDraft mill = drafts.get(i % machines);
      Dimension slots = mill.slotWidth;
      // Holes for the bolts of most machines.
      mill.slotWidth = Dimension.of(Math.max(WIDE, slots.length()));
      ViseDraft vise = RandomVises.draft(new Dice(seed * 3_001 + i, false), features, mill);
      mill.slotWidth = slots;
      vise.name = "vise " + (i + 1);
      all.add(vise.build());
    }
    return new Shop(Settings.DEFAULTS, mills, all, List.of());
  }
}
