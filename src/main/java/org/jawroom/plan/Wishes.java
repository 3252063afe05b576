package org.jawroom.plan;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * What is asked of a plan.
 *
 * @param buy whether the plan itself may buy; remedies for jobs not held look at the market in any
 *     case
 * @param budget the most that may be spent, in the smallest coin; only with {@code buy}
 * @param keep the kind of vise now on each machine, by their place in the cell's lists; a machine
 *     that is not named is bare now; {@link #GONE} stands for a kind that is no longer in the cell
 * @param remainingMillis time left, asked before each question put to the solver; 0 or less: none
 * @param listener told when a step begins
 * @param found takes each plan that is better than those before it, the best so far; what is not
 *     proven yet says so, and remedies not looked for yet are {@link Unheld.Remedy#NOT_SOUGHT}
 */
public record Wishes(
    boolean buy,
    OptionalLong budget,
    Optional<Map<Integer, Integer>> keep,
    LongSupplier remainingMillis,
    Consumer<PlanProgress> listener,
    Consumer<Plan> found) {

  /** A kind kept from a plan whose vise the cell no longer has. */
  public static final int GONE = -1;

  public Wishes {
    keep = keep.map(Map::copyOf);
    if (budget.isPresent() && (!buy || budget.getAsLong() < 0)) {
      throw new IllegalArgumentException("a budget is 0 or more, and for buying");
    }
  }

  /** No purchases, nothing to keep, all the time in the world. */
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

  public Wishes keeping(Map<Integer, Integer> kept) {
    return new Wishes(buy, budget, Optional.of(kept), remainingMillis, listener, found);
  }

  public Wishes within(LongSupplier millis) {
    return new Wishes(buy, budget, keep, millis, listener, found);
  }

  public Wishes tell(Consumer<PlanProgress> told) {
    return new Wishes(buy, budget, keep, remainingMillis, told, found);
  }

  public Wishes find(Consumer<Plan> taker) {
    return new Wishes(buy, budget, keep, remainingMillis, listener, taker);
  }
}
