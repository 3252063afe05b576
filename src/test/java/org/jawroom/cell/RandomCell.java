package org.jawroom.cell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jawroom.reference.random.RandomJobs;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** Random shops of a few machines, vises and jobs, some of them for sale. */
public final class RandomCell {
  private static final int PAIRS = 3;

  private RandomCell() {}

  /** Deterministic for a seed. */
  public static Shop shop(Profile profile, long seed) {
    Random random = new Random(seed * 31 + profile.ordinal());
    List<Machine> machines = new ArrayList<>();
    List<Vise> vises = new ArrayList<>();
    List<Job> jobs = new ArrayList<>();
    Shop first = RandomJobs.shop(profile, seed * PAIRS);
    for (int pair = 0; pair < PAIRS; pair++) {
      Shop one = RandomJobs.shop(profile, seed * PAIRS + pair);
      boolean candidate = pair > 0 && random.nextInt(3) == 0;
      machines.add(
          machine(
              one.machines().get(0),
              "mill " + pair,
              candidate,
              candidate ? Optional.of(price(random)) : Optional.empty()));
      vises.add(
          vise(
              one.vises().get(0),
              "vise " + pair,
              random.nextInt(2),
              random.nextInt(4) > 0 ? Optional.of(price(random)) : Optional.empty()));
      jobs.add(job(one.jobs().get(0), "job " + pair, 1 + random.nextInt(5)));
    }
    return new Shop(first.settings(), machines, vises, jobs);
  }

  private static BigDecimal price(Random random) {
    return BigDecimal.valueOf(1 + random.nextInt(60_000), random.nextBoolean() ? 2 : 0);
  }

  public static Machine machine(
      Machine m, String name, boolean candidate, Optional<BigDecimal> price) {
    return m.toBuilder().name(name).candidate(candidate).price(price).build();
  }

  public static Vise vise(Vise v, String name, int quantity, Optional<BigDecimal> price) {
    return v.toBuilder().name(name).quantity(quantity).price(price).build();
  }

  private static Job job(Job j, String name, int quantity) {
    return new Job(
        name,
        j.length(),
        j.width(),
        j.height(),
        j.grip(),
        j.mass(),
        j.toolLength(),
        j.jawsAlong(),
        List.of(),
        quantity);
  }
}
