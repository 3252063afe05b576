package org.jawroom.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.ViseType;
import org.jawroom.plan.model.Wishes;
import org.jawroom.plan.model.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cells too large for exhaustive search: with the tables reversed the solver branches differently
 * and must reach the same values. {@code -Dplan.mirrors=50} tries more.
 */
class MirrorTest {

  private static final int MACHINES = 7;
  private static final int VISES = 9;
  private static final int SEEDS = Integer.getInteger("plan.mirrors", 20);

  @Test
  void plan_tablesUpsideDown_reachesTheSameValues() {
    int bought = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      CellSketch asked = cell(new Random(seed));
      CellSketch mirrored = mirrored(asked);
      Plan plan = Planner.plan(asked.cell(), asked.wishes());
      assertEquals(
          plan.stages(),
          Planner.plan(mirrored.cell(), mirrored.wishes()).stages(),
          "seed " + seed + ": " + asked);
      bought += plan.purchases().isEmpty() ? 0 : 1;
    }
    assertTrue(bought > 0 && bought < SEEDS, bought + " of " + SEEDS + " buy");
  }

  /**
   * Upside down each has a feasible program that the library reports as infeasible: the first with
   * continuous columns and with whole ones, the second with sparse matrices, too.
   */
  @ParameterizedTest
  @ValueSource(longs = {17, 2239})
  void plan_programTakenForInfeasible_isProvenAllTheSame(long seed) {
    CellSketch mirrored = mirrored(cell(new Random(seed)));
    Plan plan = Planner.plan(mirrored.cell(), mirrored.wishes());
    assertTrue(plan.isUnique(), mirrored.toString());
  }

  /** Lengths in half-nanometres, far beyond what the solver of programs can prove. */
  @Test
  void plan_oneKindOnEachTable_isProvenAndTheSameUpsideDown() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      CellSketch asked = wide(new Random(seed));
      CellSketch mirrored = mirrored(asked);
      Plan plan = Planner.plan(asked.cell(), asked.wishes());
      String where = "seed " + seed + ": " + asked;
      assertTrue(plan.isProven() && plan.isUnique(), where);
      assertEquals(plan.stages(), Planner.plan(mirrored.cell(), mirrored.wishes()).stages(), where);
    }
  }

  private static CellSketch wide(Random random) {
    List<PlanMachine> machines = new ArrayList<>();
    List<ViseType> vises = new ArrayList<>();
    List<Fit> fits = new ArrayList<>();
    Map<Integer, List<Integer>> keep = new HashMap<>();
    for (int machine = 0; machine < MACHINES; machine++) {
      machines.add(new PlanMachine("m" + machine, OptionalLong.empty()));
      keep.put(machine, List.of(random.nextInt(VISES)));
    }
    for (int vise = 0; vise < VISES; vise++) {
      vises.add(new ViseType("v" + vise, random.nextInt(3), OptionalLong.empty()));
      for (int machine = 0; machine < MACHINES; machine++) {
        fits.add(
            new Fit(
                new Pick(machine, vise),
                random.nextInt(3) > 0,
                1,
                300_000_000 + random.nextInt(400_000_000),
                300_000_000 + random.nextInt(400_000_000)));
      }
    }
    List<Work> jobs = new ArrayList<>();
    for (int job = 0; job < 6; job++) {
      Set<Pick> heldBy = new HashSet<>();
      fits.stream().filter(fit -> random.nextInt(9) == 0).forEach(fit -> heldBy.add(fit.pick()));
      jobs.add(new Work("j" + job, 1 + random.nextInt(9), heldBy));
    }
    return new CellSketch(new CellModel(machines, vises, fits, jobs), Wishes.none().keeping(keep));
  }

  private static CellSketch cell(Random random) {
    List<PlanMachine> machines = new ArrayList<>();
    for (int machine = 0; machine < MACHINES; machine++) {
      machines.add(new PlanMachine("m" + machine, OptionalLong.empty()));
    }
    List<ViseType> vises = new ArrayList<>();
    List<Fit> fits = new ArrayList<>();
    for (int vise = 0; vise < VISES; vise++) {
      OptionalLong price =
          random.nextBoolean() ? OptionalLong.empty() : OptionalLong.of(300 + vise * 50);
      vises.add(new ViseType("v" + vise, random.nextInt(3), price));
      for (int machine = 0; machine < MACHINES; machine++) {
        if (random.nextInt(3) > 0) {
          fits.add(
              new Fit(
                  new Pick(machine, vise),
                  random.nextInt(3) > 0,
                  1 + random.nextInt(3),
                  100 + random.nextInt(40),
                  100 + vise));
        }
      }
    }
    for (int machine = 0; machine < MACHINES; machine++) {
      for (int vise = 1; vise < VISES; vise++) {
        if (random.nextInt(4) == 0) {
          Pick two = new Pick(machine, List.of(random.nextInt(vise), vise));
          fits.add(
              new Fit(two, random.nextInt(3) > 0, 1, 200 + random.nextInt(80), 200 + 2L * vise));
        }
      }
    }
    List<Work> jobs = new ArrayList<>();
    for (int job = 0; job < 20; job++) {
      Set<Pick> heldBy = new HashSet<>();
      fits.stream().filter(fit -> random.nextInt(12) == 0).forEach(fit -> heldBy.add(fit.pick()));
      jobs.add(new Work("j" + job, 1 + random.nextInt(9), heldBy));
    }
    Map<Integer, List<Integer>> keep = new HashMap<>();
    for (int machine = 0; machine < MACHINES; machine++) {
      keep.put(machine, List.of(random.nextInt(VISES)));
    }
    Wishes wishes = Wishes.none().keeping(keep);
    return new CellSketch(
        new CellModel(machines, vises, fits, jobs),
        random.nextBoolean() ? wishes.withBuying(OptionalLong.of(1000)) : wishes);
  }

  private static CellSketch mirrored(CellSketch asked) {
    List<PlanMachine> machines = new ArrayList<>(asked.cell().machines());
    List<ViseType> vises = new ArrayList<>(asked.cell().vises());
    Collections.reverse(machines);
    Collections.reverse(vises);
    List<Fit> fits =
        asked.cell().fits().stream()
            .map(
                fit ->
                    new Fit(mirrored(fit.pick()), fit.good(), fit.most(), fit.opening(), fit.jaw()))
            .toList();
    List<Work> jobs = new ArrayList<>();
    for (Work job : asked.cell().jobs()) {
      Set<Pick> heldBy = new HashSet<>();
      job.heldBy().forEach(pick -> heldBy.add(mirrored(pick)));
      jobs.add(new Work(job.name(), job.quantity(), heldBy));
    }
    Map<Integer, List<Integer>> keep = new HashMap<>();
    asked
        .wishes()
        .keep()
        .orElseThrow()
        .forEach((machine, now) -> keep.put(MACHINES - 1 - machine, mirrored(now)));
    return new CellSketch(new CellModel(machines, vises, fits, jobs), asked.wishes().keeping(keep));
  }

  private static Pick mirrored(Pick pick) {
    return new Pick(MACHINES - 1 - pick.machine(), mirrored(pick.vises()));
  }

  private static List<Integer> mirrored(List<Integer> vises) {
    return vises.stream().map(vise -> VISES - 1 - vise).sorted().toList();
  }
}
