package org.jawroom.plan.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * The options of a planning run.
 *
 * @param buy whether the plan may buy; remedies for jobs not held consider purchases in any case
 * @param budget the most that may be spent, in the smallest coin; only with {@code buy}
 * @param keep the vises now on each machine, as cell indices, no kind twice; a machine without an
 *     entry is bare; {@link #GONE} stands for each kind that is no longer in the cell
 * @param remainingMillis time left, queried before each call of the solver; 0 or less: none
 * @param listener receives each step as it begins
 * @param found receives each new incumbent plan; its unproven aims are marked, and remedies not
 *     searched for yet are {@link Unheld.Remedy#NOT_SOUGHT}
 */
public record Wishes(
    boolean buy,
    OptionalLong budget,
    Optional<Map<Integer, List<Integer>>> keep,
    LongSupplier remainingMillis,
    Consumer<PlanProgress> listener,
    Consumer<Plan> found) {

  /** Marks a kept kind that the cell no longer has. */
  public static final int GONE = -1;

  public Wishes {
    keep = keep.map(Map::copyOf);
    if (budget.isPresent() && (!buy || budget.getAsLong() < 0)) {
      throw new IllegalArgumentException("a budget must be 0 or more and requires buying");
    }
  }

  /** No purchases, nothing to keep, no time limit. */
  public static Wishes none() {
    return new Wishes(
        false,
        OptionalLong.empty(),
        Optional.empty(),
        () -> Long.MAX_VALUE,
        progress -> {},
        plan -> {});
  }

  public Wishes withBuying(OptionalLong most) {
    return new Wishes(true, most, keep, remainingMillis, listener, found);
  }

  public Wishes keeping(Map<Integer, List<Integer>> kept) {
    return new Wishes(buy, budget, Optional.of(kept), remainingMillis, listener, found);
  }

  public Wishes within(LongSupplier millis) {
    return new Wishes(buy, budget, keep, millis, listener, found);
  }

  public Wishes announce(Consumer<PlanProgress> receiver) {
    return new Wishes(buy, budget, keep, remainingMillis, receiver, found);
  }

  public Wishes find(Consumer<Plan> taker) {
    return new Wishes(buy, budget, keep, remainingMillis, listener, taker);
  }
}
