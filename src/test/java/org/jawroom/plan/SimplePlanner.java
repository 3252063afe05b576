package org.jawroom.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Stage;
import org.jawroom.plan.model.ViseType;
import org.jawroom.plan.model.Wishes;
import org.jawroom.plan.model.Work;

/**
 * Exhaustive search over every assignment of kinds and counts to machines; it shares only the
 * records with the planner.
 */
final class SimplePlanner {

  /** A fit and a count per machine, in machine order; a null fit means none. */
  private record Trial(List<Fit> fits, List<Integer> counts) {}

  private final CellModel cell;
  private final Wishes wishes;
  private final List<Trial> trials = new ArrayList<>();

  SimplePlanner(CellSketch asked) {
    cell = asked.cell();
    wishes = asked.wishes();
    extend(new Trial(List.of(), List.of()));
  }

  private void extend(Trial trial) {
    int machine = trial.fits().size();
    if (machine == cell.machines().size()) {
      trials.add(trial);
      return;
    }
    extend(with(trial, null, 0));
    for (Fit fit : cell.fits()) {
      for (int count = 1; fit.machine() == machine && count <= fit.most(); count++) {
        extend(with(trial, fit, count));
      }
    }
  }

  private static Trial with(Trial trial, Fit fit, int count) {
    List<Fit> fits = new ArrayList<>(trial.fits());
    fits.add(fit);
    List<Integer> counts = new ArrayList<>(trial.counts());
    counts.add(count);
    return new Trial(fits, counts);
  }

  /** The values of the best plan in order of preference, then its machines as text. */
  String best() {
    return trials.stream()
        .filter(trial -> isPossible(trial, wishes.buy() && !cell.jobs().isEmpty(), wishes.buy()))
        .filter(trial -> wishes.budget().isEmpty() || cost(trial) <= wishes.budget().getAsLong())
        .max(Comparator.comparing(this::numbers, SimplePlanner::compare))
        .map(trial -> asText(trial))
        .orElseThrow();
  }

  /** Extra vises are never bought: each purchase stands on a machine of its own. */
  private boolean isPossible(Trial trial, boolean newMachines, boolean newVises) {
    for (int machine = 0; machine < cell.machines().size(); machine++) {
      if (trial.fits().get(machine) != null
          && !newMachines
          && cell.machines().get(machine).price().isPresent()) {
        return false;
      }
    }
    for (int vise = 0; vise < cell.vises().size(); vise++) {
      ViseType kind = cell.vises().get(vise);
      long machines = used(trial, vise);
      boolean more = machines > kind.stock();
      if (more && (!newVises || kind.price().isEmpty())) {
        return false;
      }
      if (out(trial, vise) > Math.max(kind.stock(), machines)) {
        return false;
      }
    }
    return true;
  }

  private long used(Trial trial, int vise) {
    return trial.fits().stream().mapToLong(fit -> fit == null ? 0 : of(fit, vise)).sum();
  }

  /** Vises of a kind in a fit, turned or not. */
  private long of(Fit fit, int kind) {
    return fit.vises().stream()
        .filter(vise -> cell.vises().get(vise).formOf().orElse(vise) == kind)
        .count();
  }

  private long out(Trial trial, int vise) {
    long out = 0;
    for (int machine = 0; machine < trial.fits().size(); machine++) {
      Fit fit = trial.fits().get(machine);
      out += fit == null ? 0 : of(fit, vise) * trial.counts().get(machine);
    }
    return out;
  }

  private long bought(Trial trial, int vise) {
    return Math.max(0, used(trial, vise) - cell.vises().get(vise).stock());
  }

  private long boughtMachine(Trial trial, int machine) {
    return trial.fits().get(machine) != null && cell.machines().get(machine).price().isPresent()
        ? 1
        : 0;
  }

  private long cost(Trial trial) {
    long cost = 0;
    for (int vise = 0; vise < cell.vises().size(); vise++) {
      cost += bought(trial, vise) * cell.vises().get(vise).price().orElse(0);
    }
    for (int machine = 0; machine < cell.machines().size(); machine++) {
      cost += boughtMachine(trial, machine) * cell.machines().get(machine).price().orElse(0);
    }
    return cost;
  }

  private boolean holds(Trial trial, Work job) {
    return trial.fits().stream().anyMatch(fit -> fit != null && job.heldBy().contains(fit.pick()));
  }

  private long changes(Trial trial) {
    long changes = 0;
    for (int machine = 0; machine < trial.fits().size(); machine++) {
      List<Integer> off =
          new ArrayList<>(wishes.keep().orElseThrow().getOrDefault(machine, List.of()));
      Fit fit = trial.fits().get(machine);
      List<Integer> on = new ArrayList<>(fit == null ? List.of() : fit.vises());
      on.removeAll(off);
      off.removeAll(fit == null ? List.of() : fit.vises());
      // One for each exchange, and one for each that is put on or taken off besides.
      int exchanged = Math.min(on.size(), off.size());
      changes += exchanged + (on.size() - exchanged) + (off.size() - exchanged);
    }
    return changes;
  }

  private List<Long> aims(Trial trial) {
    List<Fit> chosen = trial.fits().stream().filter(fit -> fit != null).toList();
    List<Long> aims = new ArrayList<>();
    long equipped = chosen.size();
    boolean jobs = !cell.jobs().isEmpty();
    aims.add(
        jobs
            ? cell.jobs().stream().filter(job -> holds(trial, job)).mapToLong(Work::quantity).sum()
            : equipped);
    if (wishes.buy()) {
      aims.add(-cost(trial));
    }
    if (jobs) {
      aims.add(equipped);
    }
    aims.add(chosen.stream().filter(Fit::good).count());
    aims.add(chosen.stream().mapToLong(Fit::opening).sum());
    aims.add(chosen.stream().mapToLong(Fit::jaw).sum());
    if (wishes.keep().isPresent()) {
      aims.add(-changes(trial));
    }
    long out = 0;
    for (int machine = 0; machine < trial.fits().size(); machine++) {
      Fit fit = trial.fits().get(machine);
      out += fit == null ? 0 : (long) trial.counts().get(machine) * fit.vises().size();
    }
    aims.add(out);
    return aims;
  }

  /**
   * The aims, then the tie-breaks that make the best plan unique: the earliest vises, then the most
   * on the first machines.
   */
  private List<Long> numbers(Trial trial) {
    List<Long> numbers = aims(trial);
    trial.fits().forEach(fit -> numbers.add(order(fit)));
    trial.counts().forEach(count -> numbers.add((long) count));
    return numbers;
  }

  /** Greater for earlier vises; a word in an alphabet with a blank before the first letter. */
  private static long order(Fit fit) {
    long order = 0;
    for (int place = 0; place < 4; place++) {
      order =
          order * 100
              - (fit == null ? 99 : place < fit.vises().size() ? 1 + fit.vises().get(place) : 0);
    }
    return order;
  }

  private static int compare(List<Long> one, List<Long> other) {
    for (int place = 0; place < one.size(); place++) {
      int order = Long.compare(one.get(place), other.get(place));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  private String asText(Trial trial) {
    StringBuilder text = new StringBuilder(aims(trial).toString());
    for (int machine = 0; machine < trial.fits().size(); machine++) {
      Fit fit = trial.fits().get(machine);
      if (fit != null) {
        text.append(' ')
            .append(trial.counts().get(machine))
            .append("x")
            .append(fit.vises())
            .append("@")
            .append(machine);
      }
    }
    return text.toString();
  }

  /** The cheapest purchases with which these jobs are held; {@code none} if there are none. */
  String cheapest(List<Integer> jobs) {
    return trials.stream()
        .filter(trial -> isPossible(trial, true, true))
        .filter(trial -> jobs.stream().allMatch(job -> holds(trial, cell.jobs().get(job))))
        .map(this::purchases)
        .min(SimplePlanner::compare)
        .map(List::toString)
        .orElse("none");
  }

  /** Money, things, then the count of each item, the last of the tables first. */
  private List<Long> purchases(Trial trial) {
    List<Long> items = new ArrayList<>();
    for (int machine = cell.machines().size() - 1; machine >= 0; machine--) {
      items.add(boughtMachine(trial, machine));
    }
    for (int vise = cell.vises().size() - 1; vise >= 0; vise--) {
      items.add(bought(trial, vise));
    }
    items.add(0, items.stream().mapToLong(item -> item).sum());
    items.add(0, cost(trial));
    return items;
  }

  /** A list of purchases in the format of {@link #cheapest}. */
  String asText(List<Purchase> list) {
    long[] items = new long[cell.machines().size() + cell.vises().size()];
    for (Purchase one : list) {
      int machines = cell.machines().size();
      int place =
          one.what() == Purchase.What.MACHINE
              ? machines - 1 - one.index()
              : items.length - 1 - one.index();
      items[place] += one.count();
    }
    List<Long> numbers = new ArrayList<>();
    for (long item : items) {
      numbers.add(item);
    }
    numbers.add(0, list.stream().mapToLong(Purchase::count).sum());
    numbers.add(0, list.stream().mapToLong(Purchase::price).sum());
    return numbers.toString();
  }

  /** A plan in the format of {@link #best}. */
  static String asText(Plan plan) {
    StringBuilder text =
        new StringBuilder(
            plan.stages().stream()
                .filter(stage -> stage.aim() != Aim.ORDER)
                .map(Stage::value)
                .toList()
                .toString());
    plan.machines()
        .forEach(
            one ->
                text.append(' ')
                    .append(one.count())
                    .append("x")
                    .append(one.fit().vises())
                    .append("@")
                    .append(one.fit().machine()));
    return text.toString();
  }

  /** The cell with purchases added to the inputs and no wishes. */
  static SimplePlanner after(CellModel cell, List<Purchase> purchases) {
    List<ViseType> vises = new ArrayList<>(cell.vises());
    List<PlanMachine> machines = new ArrayList<>(cell.machines());
    for (Purchase one : purchases) {
      if (one.what() == Purchase.What.VISE) {
        ViseType old = vises.get(one.index());
        vises.set(one.index(), new ViseType(old.name(), old.stock() + one.count(), old.price()));
      } else {
        machines.set(one.index(), new PlanMachine("bought", OptionalLong.empty()));
      }
    }
    return new SimplePlanner(
        new CellSketch(new CellModel(machines, vises, cell.fits(), cell.jobs()), Wishes.none()));
  }

  /** The largest quantity held with the stock alone. */
  long held() {
    Optional<Long> most =
        trials.stream()
            .filter(trial -> isPossible(trial, false, false))
            .map(
                trial ->
                    cell.jobs().stream()
                        .filter(job -> holds(trial, job))
                        .mapToLong(Work::quantity)
                        .sum())
            .max(Comparator.naturalOrder());
    return most.orElseThrow();
  }
}
