package org.jawroom.plan.exact;

import java.math.BigInteger;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Demands;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;

/**
 * Branch and bound in whole numbers over aims that are sums over the machines, subject to the
 * pieces held: all aims at once, the order of the tables last.
 *
 * <p>A relaxation that misses jobs it must hold is branched on the fits that hold one of them, the
 * group with the fewest fits that may still lead to something better: each of them in turn is
 * taken, and excluded afterwards. A relaxation whose choice is worth less than itself, because the
 * aims are no sums there or something else is demanded, is not branched on; its worth remains as an
 * upper bound.
 */
public final class ExactSearch {

  /** Nodes times machines times columns: some seconds. */
  private static final long MOST_WORK = 20_000_000;

  private final Task task;
  private final Demands demands;
  private final List<Aim> aims;
  private final Worths worths;
  private final BooleanSupplier goesOn;
  private final Consumer<Choice> found;
  private Optional<Choice> best;
  private Optional<BigInteger> reached;
  private Optional<BigInteger> open = Optional.empty();
  private long nodes;

  private ExactSearch(
      Task task,
      Demands demands,
      List<Aim> aims,
      Optional<Choice> best,
      BooleanSupplier goesOn,
      Consumer<Choice> found) {
    this.task = task;
    this.demands = demands;
    this.aims = List.copyOf(aims);
    this.best = best;
    this.goesOn = goesOn;
    this.found = found;
    worths = new Worths(task, aims);
    reached = best.map(worths::of);
    long machines = task.cell().machines().size();
    nodes = MOST_WORK / Math.max(1, machines * (machines + task.cell().vises().size()));
  }

  /**
   * Searches for the best choice that meets the demands.
   *
   * @param best one that meets them, if one is known
   * @param goesOn asked before each step
   * @param found receives each better choice
   * @return empty if no choice is known
   */
  public static Optional<Bound> search(
      Task task,
      Demands demands,
      List<Aim> aims,
      Optional<Choice> best,
      BooleanSupplier goesOn,
      Consumer<Choice> found) {
    ExactSearch search = new ExactSearch(task, demands, aims, best, goesOn, found);
    Holding holding = Holding.of(task, demands.reached().getOrDefault(Aim.HELD, 0L));
    Relaxation root = search.root();
    search.reseat(root, holding);
    search.branch(root, holding);
    return search.best.map(choice -> search.bound());
  }

  /** What an aim alone can be at most. */
  public static Bound ceiling(Task task, Aim aim) {
    Worths worths = new Worths(task, List.of(aim));
    long ceiling = worths.values(Relaxation.of(task, worths).worth())[0];
    return new Bound(List.of(aim), Map.of(aim, ceiling), false);
  }

  /**
   * The relaxation to start from: as long as that lowers its worth, kinds of which it sets out more
   * than there are count as set out whatever the machines have.
   */
  private Relaxation root() {
    Relaxation root = Relaxation.of(task, worths);
    Set<Integer> out = new HashSet<>();
    while (goesOn.getAsBoolean() && out.addAll(worths.beyondStock(root.choice()))) {
      Relaxation next = Relaxation.of(task, worths.withAllOut(out));
      if (next.worth().compareTo(root.worth()) >= 0) {
        break;
      }
      root = next;
    }
    return root;
  }

  private Bound bound() {
    BigInteger most = open.map(reached.orElseThrow()::max).orElse(reached.orElseThrow());
    long[] values = worths.values(most);
    Map<Aim, Long> ceilings = new EnumMap<>(Aim.class);
    for (int place = 0; place < values.length; place++) {
      ceilings.put(aims.get(place), values[place]);
    }
    return new Bound(aims, ceilings, most.equals(reached.orElseThrow()));
  }

  private boolean isBetter(BigInteger worth) {
    return reached.map(value -> worth.compareTo(value) > 0).orElse(true);
  }

  /** Whether to branch may lower the bound: better than what is known or has to be left open. */
  private boolean matters(BigInteger worth) {
    return isBetter(worth) && open.map(left -> worth.compareTo(left) > 0).orElse(true);
  }

  /**
   * Keeps of the best choice what holds the jobs and seats all other machines anew, as long as that
   * is better.
   */
  private void reseat(Relaxation root, Holding holding) {
    Optional<Choice> before = Optional.empty();
    while (!best.equals(before)) {
      before = best;
      Optional<Relaxation> kept = Optional.of(root);
      for (int fit : holding.needed(fits(best.orElseThrow())).stream().toArray()) {
        kept = kept.flatMap(relaxation -> relaxation.with(fit));
      }
      kept.map(Relaxation::choice).ifPresent(this::take);
    }
  }

  private BitSet fits(Choice choice) {
    BitSet fits = new BitSet();
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      if (choice.fitOf(machine) != Choice.BARE) {
        fits.set(choice.fitOf(machine));
      }
    }
    return fits;
  }

  private void branch(Relaxation relaxation, Holding holding) {
    if (!matters(relaxation.worth())) {
      return;
    }
    if (nodes <= 0 || !goesOn.getAsBoolean()) {
      leave(relaxation.worth());
      return;
    }
    nodes--;
    Choice choice = relaxation.choice();
    List<Holding.Held> missed = holding.missed(fits(choice));
    if (missed.isEmpty()) {
      take(choice);
      leave(relaxation.worth());
    } else {
      branch(relaxation, holding, missed);
    }
  }

  private void leave(BigInteger worth) {
    open = Optional.of(open.map(worth::max).orElse(worth));
  }

  private void take(Choice choice) {
    if (demands.areMetBy(task, choice) && isBetter(worths.of(choice))) {
      best = Optional.of(choice);
      reached = Optional.of(worths.of(choice));
      found.accept(choice);
    }
  }

  private void branch(Relaxation relaxation, Holding holding, List<Holding.Held> missed) {
    BitSet promising = relaxation.promising(this::matters);
    Holding.Held group =
        missed.stream()
            .filter(one -> !holding.mayMiss(one))
            .min(Comparator.comparingInt(one -> common(one, promising)))
            .orElseGet(
                () ->
                    missed.stream()
                        .max(Comparator.comparingLong(Holding.Held::quantity))
                        .orElseThrow());
    if (holding.mayMiss(group)) {
      relaxation.without(group.fits()).ifPresent(rest -> branch(rest, holding.without(group)));
    }
    promising.and(group.fits());
    List<Integer> fits =
        promising.stream()
            .boxed()
            .sorted(Comparator.comparing(relaxation::worthWith).reversed())
            .toList();
    Optional<Relaxation> rest = Optional.of(relaxation);
    for (int fit : fits) {
      if (rest.isEmpty() || !matters(relaxation.worthWith(fit))) {
        return;
      }
      rest.get().with(fit).ifPresent(with -> branch(with, holding));
      BitSet one = new BitSet();
      one.set(fit);
      rest = rest.get().without(one);
    }
  }

  private static int common(Holding.Held group, BitSet fits) {
    BitSet common = (BitSet) group.fits().clone();
    common.and(fits);
    return common.cardinality();
  }
}
