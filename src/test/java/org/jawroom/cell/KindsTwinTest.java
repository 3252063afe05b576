package org.jawroom.cell;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Solving;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.set.SetJobs;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.plan.Planner;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Wishes;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Plans of up to three kinds on a table against trying every assignment of every set of vises, with
 * jobs, masses, comfort, stock and what stands there now counted anew, on small random shops.
 */
class KindsTwinTest {
  private static final int CASES = 60;

  private final Map<String, Integer> met = new TreeMap<>();

  @Test
  void plan_smallShops_asTryingEverySetOnEveryMachineDoes() {
    for (int seed = 0; seed < CASES; seed++) {
      Random random = new Random(seed);
      Shop shop = shop(random);
      int kinds = 2 + random.nextInt(2);
      Optional<Map<Integer, List<Integer>>> keep =
          random.nextBoolean() ? Optional.empty() : Optional.of(keep(random, shop));
      ShopCell cell = cell(shop, kinds);
      Wishes wishes = keep.map(Wishes.none()::keeping).orElse(Wishes.none());
      Plan plan = Planner.plan(cell.cell(), wishes);
      Best best = new Best(shop, kinds, keep.orElse(Map.of()));
      String paste =
          "seed " + seed + ", " + kinds + " kinds, keep " + keep + "\n" + ShopCsv.text(shop);
      assertTrue(plan.isProven(), paste);
      assertEquals(best.value(keep.isPresent()), values(plan, keep.isPresent()), paste);
      count(shop, cell, plan, best);
    }
    for (String seen :
        List.of(
            "two kinds on a table",
            "three kinds on a table",
            "one kind beside",
            "more held than by one kind each",
            "held alone but not in the row",
            "too heavy together",
            "no room side by side",
            "not comfortable together")) {
      assertTrue(met.getOrDefault(seen, 0) >= 5, () -> seen + " in " + met);
    }
  }

  private static ShopCell cell(Shop shop, int kinds) {
    List<CellPairing> pairings = Solving.cell(shop, 1, Progress.on(new PrintWriter(System.err)));
    return ShopCell.of(shop, pairings, kinds, Solving.sets(shop, pairings, kinds, 1));
  }

  private static List<Long> values(Plan plan, boolean keeps) {
    List<Long> values = new ArrayList<>();
    for (Aim aim : List.of(Aim.HELD, Aim.EQUIPPED, Aim.GOOD, Aim.OPENING, Aim.JAW)) {
      values.add(plan.value(aim).orElseThrow());
    }
    if (keeps) {
      values.add(plan.value(Aim.CHANGES).orElseThrow());
    }
    return values;
  }

  private void count(Shop shop, ShopCell cell, Plan plan, Best best) {
    plan.machines().forEach(one -> met(one.fit().vises().size() + " vises"));
    met.put("two kinds on a table", met.getOrDefault("2 vises", 0));
    met.put("three kinds on a table", met.getOrDefault("3 vises", 0));
    met.put("one kind beside", met.getOrDefault("1 vises", 0));
    Plan single = Planner.plan(ShopCell.of(shop, cell.pairings()).cell(), Wishes.none());
    if (single.value(Aim.HELD).orElseThrow() < plan.value(Aim.HELD).orElseThrow()) {
      met("more held than by one kind each");
    }
    best.met.forEach((what, times) -> met.merge(what, times, Integer::sum));
    assertEquals(best.sets, cell.sets().size());
  }

  private void met(String what) {
    met.merge(what, 1, Integer::sum);
  }

  /** What a set of vises on a machine is worth. */
  private record Load(List<Integer> vises, Set<Integer> jobs, long good, long opening, long jaw) {}

  /** The best values of all assignments. */
  private static final class Best {
    final Map<String, Integer> met = new TreeMap<>();
    int sets;
    private final Shop shop;
    private final Map<Integer, List<Integer>> before;
    private final List<List<Load>> loads = new ArrayList<>();
    private long[] best = {-1};

    Best(Shop shop, int kinds, Map<Integer, List<Integer>> before) {
      this.shop = shop;
      this.before = before;
      for (Machine machine : shop.machines()) {
        List<Load> all = new ArrayList<>();
        for (int bits = 1; bits < 1 << shop.vises().size(); bits++) {
          List<Integer> vises = new ArrayList<>();
          for (int vise = 0; vise < shop.vises().size(); vise++) {
            if ((bits >> vise & 1) == 1) {
              vises.add(vise);
            }
          }
          if (vises.size() == 1) {
            alone(machine, vises).ifPresent(all::add);
          } else if (vises.size() <= kinds) {
            Optional<Load> load = together(machine, vises);
            load.ifPresent(all::add);
            sets += load.isPresent() ? 1 : 0;
          }
        }
        loads.add(all);
      }
      assign(new ArrayList<>());
    }

    List<Long> value(boolean keeps) {
      return Arrays.stream(best).limit(keeps ? 6 : 5).boxed().toList();
    }

    private Optional<Load> alone(Machine machine, List<Integer> one) {
      Vise vise = shop.vises().get(one.get(0));
      CellPairing pairing = CellPairing.solve(shop.settings(), machine, vise, shop.jobs());
      Set<Integer> jobs = new HashSet<>();
      for (int job = 0; job < shop.jobs().size(); job++) {
        if (JobPairing.solve(shop.settings(), machine, vise, shop.jobs().get(job)).isHeld()) {
          jobs.add(job);
        }
      }
      return pairing.isChoice()
          ? Optional.of(
              new Load(
                  one,
                  jobs,
                  pairing.isGood(shop.settings()) ? 1 : 0,
                  pairing.usableOpening(),
                  vise.jaws().width()))
          : Optional.empty();
    }

    private Optional<Load> together(Machine machine, List<Integer> several) {
      List<Vise> vises = several.stream().map(shop.vises()::get).toList();
      BigDecimal mass = BigDecimal.ZERO;
      for (Vise vise : vises) {
        Outcome alone =
            SetPairing.solve(shop.settings(), machine, set(List.of(vise))).stands().stream()
                .findFirst()
                .map(SetOutcome.Stand::placed)
                .orElse(null);
        if (alone == null
            || alone.verdict() != Verdict.FITS && alone.verdict() != Verdict.AWKWARD
            || machine.noseMax().length() <= vise.top()) {
          return Optional.empty();
        }
        mass = mass.add(vise.mass().orElse(BigDecimal.ZERO));
      }
      if (machine.maxLoad().isPresent() && mass.compareTo(machine.maxLoad().get()) > 0) {
        met.merge("too heavy together", 1, Integer::sum);
        return Optional.empty();
      }
      SetOutcome row = SetPairing.solve(shop.settings(), machine, set(vises));
      if (row.fits() != SetOutcome.Fits.YES) {
        met.merge("no room side by side", 1, Integer::sum);
        return Optional.empty();
      }
      Set<Integer> jobs = new HashSet<>();
      PreparedMachine prepared = PreparedMachine.of(shop.settings(), machine, Setup.PLAIN);
      for (int job = 0; job < shop.jobs().size(); job++) {
        Job one = shop.jobs().get(job);
        boolean inRow = false;
        boolean alone = false;
        for (int at = 0; at < vises.size(); at++) {
          inRow |= !SetJobs.held(prepared, row, at, List.of(one)).isEmpty();
          alone |= JobPairing.solve(shop.settings(), machine, vises.get(at), one).isHeld();
        }
        if (inRow) {
          jobs.add(job);
        }
        met.merge("held alone but not in the row", alone && !inRow ? 1 : 0, Integer::sum);
      }
      long good = 1;
      long opening = 0;
      long jaw = 0;
      Settings settings = shop.settings();
      for (SetOutcome.Stand stand : row.stands()) {
        long gap = stand.nextGap().orElse(Long.MAX_VALUE / 2) - settings.spacing();
        if (!stand.place().settable()
            || stand.place().margin().isEmpty()
            || stand.place().margin().getAsLong() < settings.comfort()
            || gap < settings.comfort()
            || gap < settings.tapRoom()) {
          good = 0;
        }
        opening += stand.vise().opening().hi() - stand.vise().opening().lo();
        jaw += stand.vise().jaws().width();
      }
      met.merge("not comfortable together", good == 0 ? 1 : 0, Integer::sum);
      return Optional.of(new Load(several, jobs, good, opening, jaw));
    }

    private static ViseSet set(List<Vise> vises) {
      return new ViseSet(
          "set", vises.stream().map(vise -> new ViseSet.Member(vise, 1)).toList(), List.of());
    }

    private void assign(List<Optional<Load>> given) {
      if (given.size() == loads.size()) {
        weigh(given);
        return;
      }
      List<Optional<Load>> choices = new ArrayList<>();
      choices.add(Optional.empty());
      loads.get(given.size()).forEach(load -> choices.add(Optional.of(load)));
      for (Optional<Load> choice : choices) {
        given.add(choice);
        if (isInStock(given)) {
          assign(given);
        }
        given.remove(given.size() - 1);
      }
    }

    private boolean isInStock(List<Optional<Load>> given) {
      int[] used = new int[shop.vises().size()];
      given.forEach(one -> one.ifPresent(load -> load.vises().forEach(vise -> used[vise]++)));
      for (int vise = 0; vise < used.length; vise++) {
        if (used[vise] > shop.vises().get(vise).quantity()) {
          return false;
        }
      }
      return true;
    }

    private void weigh(List<Optional<Load>> given) {
      Set<Integer> held = new HashSet<>();
      long[] value = new long[6];
      for (int machine = 0; machine < given.size(); machine++) {
        List<Integer> was = before.getOrDefault(machine, List.of());
        List<Integer> now = given.get(machine).map(Load::vises).orElse(List.of());
        long stays = was.stream().filter(now::contains).count();
        value[5] -= Math.max(was.size(), now.size()) - stays;
        if (given.get(machine).isPresent()) {
          Load load = given.get(machine).get();
          held.addAll(load.jobs());
          value[1]++;
          value[2] += load.good();
          value[3] += load.opening();
          value[4] += load.jaw();
        }
      }
      value[0] = held.stream().mapToLong(job -> shop.jobs().get(job).quantity()).sum();
      if (before.isEmpty()) {
        value[5] = 0;
      }
      if (Arrays.compare(value, best) > 0) {
        best = value;
      }
    }
  }

  private static Map<Integer, List<Integer>> keep(Random random, Shop shop) {
    Map<Integer, List<Integer>> keep = new TreeMap<>();
    for (int machine = 0; machine < shop.machines().size(); machine++) {
      List<Integer> there = new ArrayList<>();
      for (int vise = 0; vise < shop.vises().size(); vise++) {
        if (random.nextInt(3) == 0) {
          there.add(vise);
        }
      }
      if (!there.isEmpty()) {
        keep.put(machine, there);
      }
    }
    return keep.isEmpty() ? Map.of(0, List.of(0)) : keep;
  }

  private static Shop shop(Random random) {
    List<Machine> machines = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      machines.add(machine("m" + i, random));
    }
    List<Vise> vises = new ArrayList<>();
    for (int i = 0; i < 3 + random.nextInt(2); i++) {
      vises.add(vise("v" + i, random));
    }
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(4); i++) {
      jobs.add(job("j" + i, random, machines));
    }
    return new Shop(Settings.DEFAULTS, machines, vises, jobs);
  }

  private static Machine machine(String name, Random random) {
    MachineDraft draft = new MachineDraft();
    draft.name = name;
    draft.tableLength = (300 + 2 * random.nextInt(300)) * MM;
    draft.tableWidth = 300 * MM;
    draft.travelX = (600 + 2 * random.nextInt(300)) * MM;
    draft.travelY = 400 * MM;
    draft.slotCount = 1;
    draft.slotWidth = Dimension.of(14 * MM);
    draft.leftGap = Dimension.of((random.nextInt(40) - 20) * MM);
    draft.rightGap = Dimension.of((random.nextInt(40) - 20) * MM);
    draft.rearGap = Dimension.of((100 + random.nextInt(60)) * MM);
    draft.noseMin = Dimension.of(0);
    draft.noseMax = Dimension.of((60 + random.nextInt(300)) * MM);
    draft.maxLoad =
        random.nextInt(3) == 0
            ? Optional.empty()
            : Optional.of(BigDecimal.valueOf(20 + random.nextInt(60)));
    return draft.build();
  }

  private static Vise vise(String name, Random random) {
    ViseDraft draft = new ViseDraft();
    draft.name = name;
    draft.turns =
        random.nextInt(3) == 0
            ? EnumSet.of(Orientation.FRONT, Orientation.RIGHT)
            : EnumSet.of(Orientation.FRONT);
    draft.jawWidth = (40 + 2 * random.nextInt(60)) * MM;
    draft.jawHeight = 30 * MM;
    draft.bedHeight = (30 + 10 * random.nextInt(3)) * MM;
    draft.openingMin = random.nextInt(3) * 30 * MM;
    draft.openingMax = draft.openingMin + (30 + 10 * random.nextInt(3)) * MM;
    draft.baseWidth = Dimension.of((60 + 2 * random.nextInt(80)) * MM);
    draft.rearReach = Dimension.of((20 + random.nextInt(40)) * MM);
    draft.frontReach = Dimension.of((60 + random.nextInt(60)) * MM);
    draft.fixedJaw = Dimension.of(10 * MM);
    draft.movingJaw = Dimension.of(10 * MM);
    draft.boltSpacing = Dimension.of(20 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(18 * MM);
    draft.holeV = Dimension.of(18 * MM);
    draft.boltGrip = OptionalLong.of(10 * MM);
    draft.mass =
        random.nextInt(4) == 0
            ? Optional.empty()
            : Optional.of(BigDecimal.valueOf(5 + random.nextInt(25)));
    return draft.build().toBuilder().quantity(1 + random.nextInt(2)).build();
  }

  private static Job job(String name, Random random, List<Machine> machines) {
    List<String> only =
        random.nextBoolean()
            ? List.of()
            : List.of(machines.get(random.nextInt(machines.size())).name());
    return new Job(
        name,
        (20 + 2 * random.nextInt(random.nextBoolean() ? 40 : 150)) * MM,
        (5 + 10 * random.nextInt(11)) * MM,
        30 * MM,
        OptionalLong.empty(),
        Optional.of(BigDecimal.ONE),
        Dimension.of(20 * MM),
        Optional.empty(),
        only,
        1 + random.nextInt(5));
  }
}
