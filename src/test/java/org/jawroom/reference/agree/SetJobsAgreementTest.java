package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.JobDraft;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetJobs;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.reference.model.RefJob;
import org.jawroom.reference.random.RandomSets;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefRowJob;
import org.jawroom.reference.solve.RefStand;
import org.jawroom.reference.space.Facing;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.MachineBuilder;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Jobs held by the vises of a row, from the solver and from {@link RefRowJob}, on random sets. Many
 * workpieces are as long as the neighbours allow, a nanometre longer or shorter. {@code
 * -Dsets.seeds=500} tries more seeds, {@code -Dsets.first=5000} others.
 */
class SetJobsAgreementTest {
  private static final int SEEDS = Integer.getInteger("sets.seeds", 50);
  private static final long FIRST = Long.getLong("sets.first", 0);
  private static final int JOBS = 6;

  private final Map<String, Integer> met = new ConcurrentHashMap<>();

  @Test
  void held_randomSets_asTheReferenceHasIt() {
    for (Profile profile : Profile.values()) {
      LongStream.range(FIRST, FIRST + AgreementTest.seeds(profile, SEEDS))
          .parallel()
          .forEach(seed -> compare(profile, seed));
    }
    for (String seen :
        List.of(
            "held",
            "held and touching",
            "not held for a nanometre",
            "not held for a neighbour",
            "not held for a taller neighbour",
            "not held for the load of all",
            "not held there, but elsewhere",
            "held along y",
            "held with something unchecked",
            "held with open readings")) {
      assertTrue(met.getOrDefault(seen, 0) >= 5, () -> seen + " in " + new TreeMap<>(met));
    }
  }

  private void compare(Profile profile, long seed) {
    Random random = new Random(seed);
    Shop shop = loaded(random, RandomSets.shop(profile, seed));
    Machine machine = RandomShops.machine(shop);
    SetOutcome row = SetPairing.solve(shop.settings(), machine, shop.sets().get(0));
    if (row.fits() != SetOutcome.Fits.YES || row.stands().size() < 2) {
      return;
    }
    List<RefStand> stands = row.stands().stream().map(SetJobsAgreementTest::stand).toList();
    List<Vise> vises = row.stands().stream().map(SetOutcome.Stand::vise).toList();
    RefRowJob reference = new RefRowJob(shop.settings(), machine, vises, stands);
    if (!reference.isComparable()) {
      return;
    }
    PreparedMachine prepared = PreparedMachine.of(shop.settings(), machine, Setup.PLAIN);
    for (int at = 0; at < vises.size(); at++) {
      List<Job> jobs = jobs(random, reference, machine, at);
      List<Job> held = SetJobs.held(prepared, row, at, jobs).stream().map(JobOutcome::job).toList();
      for (Job job : jobs) {
        boolean expected = reference.isHeld(at, job);
        int vise = at;
        assertEquals(
            expected,
            held.contains(job),
            () ->
                profile
                    + " seed "
                    + seed
                    + ": "
                    + vise
                    + " of "
                    + stands
                    + "\n"
                    + job
                    + "\n"
                    + ShopCsv.text(shop));
        JobOutcome alone = JobPairing.solve(shop.settings(), machine, vises.get(at), job);
        assertTrue(!expected || alone.isHeld(), () -> "held in a row, not alone: " + job);
        count(reference, machine, at, job, expected, alone);
      }
      for (JobOutcome one : SetJobs.held(prepared, row, at, jobs)) {
        Recommendation place = row.stands().get(at).place();
        assertEquals(stands.get(at), stand(one.place().orElseThrow()));
        assertEquals(place.slots(), one.place().orElseThrow().slots());
        met("held with something unchecked", !one.unchecked().isEmpty());
        met("held with open readings", !one.open().isEmpty());
      }
    }
  }

  private void count(
      RefRowJob reference, Machine machine, int at, Job job, boolean held, JobOutcome alone) {
    long spare =
        reference.leastGap(at, new RefJob(reference.vises().get(at), job))
            - reference.settings().spacing();
    // Of a row at the spacing some gap is as small.
    RefRowJob close = reference.withSpacing(0);
    met("held", held);
    met("held and touching", held && spare == 0);
    met("held along y", held && machine.slots().direction() == Axis.Y);
    met("not held there, but elsewhere", !held && alone.isHeld());
    met("not held for a neighbour", !held && spare < 0 && close.isHeld(at, job));
    met(
        "not held for a nanometre",
        !held && spare < 0 && spare >= -Length.NANOMETRE && close.isHeld(at, job));
    met("not held for the load of all", !held && reference.withoutMasses().isHeld(at, job));
    met("not held for a taller neighbour", reference.isHeldButForHeads(at, job));
  }

  private void met(String what, boolean here) {
    met.merge(what, here ? 1 : 0, Integer::sum);
  }

  /** With masses and a load, often with a head and vises of different heights. */
  private static Shop loaded(Random random, Shop shop) {
    boolean hasHead = random.nextInt(3) == 0;
    List<ViseSet.Member> members = new ArrayList<>();
    for (ViseSet.Member member : shop.sets().get(0).members()) {
      Vise vise = member.vise();
      Base base = vise.base();
      long higher = hasHead ? random.nextInt(30) * Length.MM : 0;
      members.add(
          new ViseSet.Member(
              vise.toBuilder()
                  .mass(kilograms(random, 40))
                  .base(
                      new Base(
                          base.bedHeight() + higher,
                          base.width(),
                          base.rearReach(),
                          base.frontReach()))
                  .build(),
              member.count()));
    }
    MachineBuilder machine = RandomShops.machine(shop).toBuilder().maxLoad(kilograms(random, 200));
    Settings settings = shop.settings();
    if (hasHead) {
      Box above = new Box(Interval.ALL, Interval.ALL, Interval.of(0, Length.ENDLESS));
      machine
          .nose(Dimension.of(0), Dimension.of(600 * Length.MM))
          .guardRows(
              List.of(Guards.box("head", "", new Axes(false, false, true), When.CUTTING, above)));
      settings =
          settings.toBuilder()
              .shortestTool(OptionalLong.of((20 + random.nextInt(100)) * Length.MM))
              .build();
    }
    return new Shop(
        settings,
        List.of(machine.build()),
        members.stream().map(ViseSet.Member::vise).toList(),
        List.of(),
        List.of(),
        List.of(),
        List.of(new ViseSet("set", members, List.of())));
  }

  private static Optional<BigDecimal> kilograms(Random random, int most) {
    return random.nextInt(4) == 0
        ? Optional.empty()
        : Optional.of(BigDecimal.valueOf(1 + random.nextInt(most)));
  }

  private static List<Job> jobs(Random random, RefRowJob row, Machine machine, int at) {
    List<Job> jobs = new ArrayList<>();
    Vise vise = row.vises().get(at);
    for (int number = 1; number <= JOBS; number++) {
      JobDraft job = new JobDraft();
      job.name = "job " + number;
      long most = vise.opening().hi() - row.settings().loadRoom();
      job.width =
          Length.floorTo(
              Math.max(
                  0, vise.opening().lo() + (most - vise.opening().lo()) / 4 * random.nextInt(5)),
              Length.NANOMETRE);
      job.height = (5 + random.nextInt(60)) * Length.MM;
      job.length = (5 + random.nextInt(100)) * Length.MM;
      if (random.nextInt(3) > 0) {
        job.mass = Optional.of(BigDecimal.valueOf(random.nextInt(60)));
      }
      if (random.nextInt(3) == 0) {
        job.tool = Dimension.of((10 + random.nextInt(60)) * Length.MM);
      }
      if (random.nextInt(4) == 0) {
        job.jawsAlong = Optional.of(random.nextBoolean() ? Axis.X : Axis.Y);
      }
      if (random.nextInt(3) > 0) {
        touching(random, row, machine, at, job);
      }
      jobs.add(job.build());
    }
    return jobs;
  }

  /** As long, or nearly, as the nearer neighbour leaves room for. */
  private static void touching(
      Random random, RefRowJob row, Machine machine, int at, JobDraft job) {
    boolean alongX = machine.slots().direction() == Axis.X;
    if (Facing.of(row.stands().get(at).turn()).alongX() == alongX) {
      return;
    }
    job.length = 0;
    long spare = row.leastGap(at, new RefJob(row.vises().get(at), job.build()));
    long half = spare - row.settings().spacing() + (random.nextInt(3) - 1) * Length.NANOMETRE / 2;
    if (half > 0 && Length.isBounded(half)) {
      job.length = 2 * half;
    }
  }

  private static RefStand stand(SetOutcome.Stand stand) {
    return stand(stand.place());
  }

  private static RefStand stand(Recommendation place) {
    return new RefStand(place.handleTo(), place.mount(), place.x(), place.y());
  }
}
