package org.jawroom.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.ViseType;
import org.jawroom.plan.model.Wishes;
import org.jawroom.plan.model.Work;

/** Seeded small cells with many ties. */
public final class RandomCells {

  private RandomCells() {}

  public static CellSketch cell(long seed) {
    Random random = new Random(seed);
    List<PlanMachine> machines = new ArrayList<>();
    for (int machine = 2 + random.nextInt(3); machine > 0; machine--) {
      machines.add(new PlanMachine("m" + machines.size(), price(random, 0.2)));
    }
    List<ViseType> vises = new ArrayList<>();
    for (int vise = 2 + random.nextInt(4); vise > 0; vise--) {
      vises.add(
          !vises.isEmpty() && random.nextInt(6) == 0
              ? new ViseType(
                  "v" + vises.size(), 0, OptionalLong.empty(), OptionalInt.of(firstKind(vises)))
              : new ViseType("v" + vises.size(), random.nextInt(4), price(random, 0.5)));
    }
    double density = 0.3 + 0.6 * random.nextDouble();
    List<Fit> fits = new ArrayList<>();
    for (int machine = 0; machine < machines.size(); machine++) {
      for (int vise = 0; vise < vises.size(); vise++) {
        if (random.nextDouble() < density) {
          fits.add(
              new Fit(
                  new Pick(machine, vise),
                  random.nextInt(3) > 0,
                  1 + random.nextInt(3),
                  50L * random.nextInt(4),
                  25L * random.nextInt(4)));
        }
      }
    }
    if (random.nextBoolean()) {
      addSets(random, fits);
    }
    List<Work> jobs = new ArrayList<>();
    double holding = 0.15 + 0.4 * random.nextDouble();
    for (int job = random.nextInt(7); job > 0; job--) {
      Set<Pick> heldBy = new HashSet<>();
      fits.stream()
          .filter(fit -> random.nextDouble() < holding)
          .forEach(fit -> heldBy.add(fit.pick()));
      jobs.add(new Work("j" + jobs.size(), 1 + random.nextInt(4), heldBy));
    }
    Wishes wishes = Wishes.none();
    if (random.nextBoolean()) {
      wishes =
          wishes.withBuying(
              random.nextBoolean()
                  ? OptionalLong.empty()
                  : OptionalLong.of(random.nextInt(9) * 100));
    }
    if (random.nextBoolean()) {
      Map<Integer, List<Integer>> keep = new HashMap<>();
      for (int machine = 0; machine < machines.size(); machine++) {
        if (random.nextInt(4) > 0) {
          int first = random.nextInt(vises.size() + 1) - 1;
          int second = random.nextInt(vises.size());
          keep.put(
              machine,
              random.nextInt(3) > 0 || first == second ? List.of(first) : List.of(first, second));
        }
      }
      wishes = wishes.keeping(keep);
    }
    return new CellSketch(new CellModel(machines, vises, fits, jobs), wishes);
  }

  private static int firstKind(List<ViseType> vises) {
    return vises.get(vises.size() - 1).formOf().orElse(vises.size() - 1);
  }

  /** Some sets of two or three kinds that stand there alone, with amounts of their own. */
  private static void addSets(Random random, List<Fit> fits) {
    Set<Pick> sets = new LinkedHashSet<>();
    for (Fit one : fits) {
      for (Fit other : fits) {
        if (one.machine() == other.machine()
            && one.vises().get(0) < other.vises().get(0)
            && random.nextInt(3) == 0) {
          sets.add(new Pick(one.machine(), List.of(one.vises().get(0), other.vises().get(0))));
        }
      }
    }
    for (Pick two : List.copyOf(sets)) {
      for (Fit third : fits) {
        if (two.machine() == third.machine()
            && two.vises().get(1) < third.vises().get(0)
            && random.nextInt(4) == 0) {
          List<Integer> three = new ArrayList<>(two.vises());
          three.addAll(third.vises());
          sets.add(new Pick(two.machine(), three));
        }
      }
    }
    for (Pick set : sets) {
      fits.add(
          new Fit(set, random.nextInt(3) > 0, 1, 50L * random.nextInt(6), 25L * random.nextInt(6)));
    }
  }

  private static OptionalLong price(Random random, double often) {
    return random.nextDouble() < often
        ? OptionalLong.of(100L * (1 + random.nextInt(5)))
        : OptionalLong.empty();
  }
}
