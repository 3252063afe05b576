package org.jawroom.reference.random;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.fixture.JobDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.vise.Vise;

/** Random shops with a few jobs, most of them near the limits of vise and machine. */
public final class RandomJobs {
  private static final int JOBS = 3;

  private RandomJobs() {}

  /** The shop of that profile and seed with jobs and a jaw play. Deterministic. */
  public static Shop shop(Profile profile, long seed) {
    Shop bare = RandomShops.shop(profile, seed);
    // Many widths end on the same grid as the openings, so that edges touch.
    Dice dice = new Dice(seed * 7919 + profile.ordinal(), profile.isInch());
    List<Job> jobs = new ArrayList<>();
    for (int number = 1; number <= JOBS; number++) {
      jobs.add(job("job " + number, dice, bare));
    }
    return new Shop(settings(bare.settings(), dice), bare.machines(), bare.vises(), jobs);
  }

  private static Job job(String name, Dice dice, Shop shop) {
    Vise vise = RandomShops.vise(shop);
    JobDraft job = new JobDraft();
    job.name = name;
    job.width =
        switch (dice.pick(10)) {
          case 0 -> vise.opening().hi();
          case 1 -> vise.opening().lo();
          case 2 -> Math.max(0, vise.opening().lo() - dice.mm(1, 20));
          case 3 -> vise.opening().hi() + dice.mm(0, 20);
          default -> vise.opening().lo() + share(vise.opening().length(), dice.pick(21));
        };
    job.length = dice.chance(70) ? dice.mm(10, 160) : dice.mm(100, 500);
    job.height = dice.chance(70) ? dice.mm(5, 80) : dice.mm(50, 250);
    job.grip = dice.perhaps(50, 0, dice.chance(20) ? 90 : 20);
    if (dice.chance(90)) {
      // Grams, to four decimals of a kilogram: the reader asks what 1.250 kg is.
      job.mass =
          Optional.of(BigDecimal.valueOf(10L * dice.pick(dice.chance(30) ? 400_000 : 100_000), 4));
    }
    if (dice.chance(90)) {
      job.tool = dice.dimension(10, dice.chance(30) ? 300 : 80);
    }
    if (dice.chance(30)) {
      job.jawsAlong = Optional.of(dice.chance(50) ? Axis.X : Axis.Y);
    }
    if (dice.chance(10)) {
      job.machines = List.of(RandomShops.machine(shop).name());
    }
    return job.build();
  }

  /** Twentieths of {@code whole}, to a whole nanometre. */
  private static long share(long whole, int twentieths) {
    return Length.floorTo(whole / 20 * twentieths, Length.NANOMETRE);
  }

  private static Settings settings(Settings d, Dice dice) {
    long play = dice.among(List.of(10L, 10L, 0L, 3L, 40L, 500L)) * Length.MM;
    long room = dice.among(List.of(2L, 2L, 0L, 5L, 20L)) * Length.MM;
    return d.toBuilder().jawPlay(play).loadRoom(room).build();
  }
}
