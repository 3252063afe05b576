package org.jawroom.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Shopping;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Pick;
import org.jawroom.plan.model.PlanProgress;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Unheld;
import org.jawroom.plan.model.Wishes;
import org.jawroom.plan.model.Work;

/**
 * Finds, for each job not held, the cheapest purchase with which it is held together with all jobs
 * the plan holds. The plan's own purchases count as stock.
 */
final class UnheldRemedies {

  private final CellModel cell;
  private final List<Integer> held;
  private final Wishes wishes;

  UnheldRemedies(CellModel cell, List<Purchase> purchases, List<Integer> held, Wishes wishes) {
    this.cell = Shopping.after(cell, purchases);
    this.held = held;
    this.wishes = wishes;
  }

  /** An entry per job that is not {@code held}, marked as not searched for. */
  static List<Unheld> notSought(CellModel cell, List<Integer> held) {
    Set<Integer> there = new HashSet<>(held);
    return IntStream.range(0, cell.jobs().size())
        .filter(job -> !there.contains(job))
        .mapToObj(job -> new Unheld(job, Unheld.Remedy.NOT_SOUGHT, List.of(), 0, false))
        .toList();
  }

  /**
   * One entry per job not held.
   *
   * @param soFar receives the list after each job, with the remaining jobs not searched for yet
   */
  List<Unheld> all(Consumer<List<Unheld>> soFar) {
    Map<Set<Pick>, Unheld> same = new HashMap<>();
    List<Unheld> all = new ArrayList<>(notSought(cell, held));
    soFar.accept(all);
    for (int place = 0; place < all.size(); place++) {
      int job = all.get(place).job();
      wishes.listener().accept(new PlanProgress(Aim.REMEDY, place + 1, all.size()));
      Unheld one = same.computeIfAbsent(cell.jobs().get(job).heldBy(), picks -> of(job));
      all.set(place, new Unheld(job, one.remedy(), one.purchases(), one.cost(), one.proven()));
      soFar.accept(all);
    }
    return all;
  }

  private Unheld of(int job) {
    if (cell.jobs().get(job).heldBy().isEmpty()) {
      return without(job, Unheld.Remedy.NOTHING_HOLDS);
    }
    List<Work> jobs = new ArrayList<>();
    held.forEach(one -> jobs.add(cell.jobs().get(one)));
    jobs.add(cell.jobs().get(job));
    CellModel wanted = new CellModel(cell.machines(), cell.vises(), cell.fits(), jobs);
    Task task = new Task(wanted, true, OptionalLong.empty(), Optional.empty());
    long quantity = jobs.stream().mapToLong(Work::quantity).sum();
    if (task.ceiling(Aim.HELD) < quantity) {
      return without(job, Unheld.Remedy.NOTHING_ON_SALE);
    }
    Cheapest cheapest =
        new Cheapest(task, new Demands().reach(Aim.HELD, quantity), wishes.remainingMillis());
    return switch (cheapest.state()) {
      case FOUND -> {
        List<Purchase> list = Shopping.list(task, cheapest.choice());
        yield new Unheld(job, Unheld.Remedy.BUY, list, Shopping.cost(list), cheapest.isProven());
      }
      case NONE -> without(job, Unheld.Remedy.NOTHING_ON_SALE);
      case UNKNOWN -> new Unheld(job, Unheld.Remedy.NOT_SOUGHT, List.of(), 0, false);
    };
  }

  private static Unheld without(int job, Unheld.Remedy remedy) {
    return new Unheld(job, remedy, List.of(), 0, true);
  }
}
