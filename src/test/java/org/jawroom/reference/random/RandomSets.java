package org.jawroom.reference.random;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** Seeded random sets of one to four vises, of up to three kinds, on a random machine. */
public final class RandomSets {
  private static final int KINDS = 3;
  private static final int MOST = 4;

  private RandomSets() {}

  /** A shop of one machine and one set of its vises. */
  public static Shop shop(Profile profile, long seed) {
    Random random = new Random(seed * 31 + profile.ordinal());
    Shop shop = RandomShops.shop(profile, seed, KINDS);
    Machine machine = RandomShops.machine(shop);
    if (!profile.isOfImpossibleSize()) {
      machine = longer(random, machine);
    }
    List<Vise> vises = new ArrayList<>();
    int kinds = 1 + random.nextInt(KINDS);
    for (int i = 0; i < kinds; i++) {
      vises.add(vise(random, shop.vises().get(i), RandomShops.vise(shop)));
    }
    if (random.nextInt(4) == 0) {
      int opened = random.nextInt(kinds);
      RandomRanges.Opened open = RandomRanges.open(machine, vises.get(opened), seed, 0);
      machine = open.machine();
      vises.set(opened, open.vise());
    }
    List<ViseSet.Member> members = new ArrayList<>();
    int left = MOST - kinds;
    for (Vise vise : vises) {
      int more = random.nextInt(3) == 0 ? random.nextInt(left + 1) : 0;
      left -= more;
      members.add(new ViseSet.Member(vise, 1 + more));
    }
    ViseSet set = new ViseSet("set", members, List.of());
    Settings settings =
        shop.settings().toBuilder().spacing(spacing(random, shop.settings())).build();
    if (random.nextInt(3) == 0) {
      settings = touching(random, settings, machine, set);
    }
    return new Shop(
        settings, List.of(machine), vises, List.of(), List.of(), List.of(), List.of(set));
  }

  /** Mostly longer along its slots, so that several vises have room. */
  private static Machine longer(Random random, Machine machine) {
    int times = 1 + random.nextInt(3);
    boolean alongX = machine.slots().direction() == Axis.X;
    return machine.toBuilder()
        .table(
            machine.tableLength() * (alongX ? times : 1),
            machine.tableWidth() * (alongX ? 1 : times))
        .build();
  }

  /** Mostly with the mounts of the vise that was made for the machine. */
  private static Vise vise(Random random, Vise own, Vise made) {
    Vise vise = random.nextInt(10) < 8 ? own.toBuilder().mounts(made.mounts()).build() : own;
    Orientation[] turns = Orientation.values();
    return switch (random.nextInt(4)) {
      case 0 -> vise.withTurns(EnumSet.allOf(Orientation.class));
      case 1 ->
          vise.withTurns(
              EnumSet.of(turns[random.nextInt(turns.length)], turns[random.nextInt(turns.length)]));
      default -> vise;
    };
  }

  private static long spacing(Random random, Settings settings) {
    return switch (random.nextInt(4)) {
      case 0 -> 0;
      case 1 -> random.nextInt(60) * Length.MM;
      default -> settings.clearance();
    };
  }

  /** The least margin or gap of the row used up, to within a nanometre. */
  private static Settings touching(Random random, Settings settings, Machine machine, ViseSet set) {
    SetOutcome found = SetPairing.solve(settings, machine, set);
    long off = (random.nextInt(4) - 2) * Length.NANOMETRE;
    long by = Length.floorTo(found.least().orElse(0), Length.NANOMETRE) + off;
    return settings.toBuilder()
        .clearance(Math.max(0, settings.clearance() + by))
        .spacing(Math.max(0, settings.spacing() + by))
        .build();
  }
}
