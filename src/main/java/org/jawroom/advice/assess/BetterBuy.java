package org.jawroom.advice.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The better buy among several machines, by lexicographic comparison of counts, without a score.
 *
 * @param best one machine, or several that tie in everything counted
 * @param decidedBy the criterion that separated the best from the last of the others; empty for a
 *     tie
 * @param rivals those of the others that could still beat or match the best if all their unknowns
 *     turned out well
 */
public record BetterBuy(List<Assessed> best, Optional<Criterion> decidedBy, List<Assessed> rivals) {

  /** The criteria in lexicographic order. */
  public enum Criterion {
    /** The most pieces of jobs that no owned machine holds. */
    JOBS,
    /** The most kinds of owned vise that fit or are awkward. */
    VISES,
    /** The widest usable opening of the best vise on it. */
    OPENING,
    /** The widest jaws of that vise. */
    JAW,
    /** The fewest vises and jobs left open by a blank. */
    UNKNOWN,
    /** The lowest price; skipped if one of the remaining machines has none. */
    PRICE
  }

  public BetterBuy {
    best = List.copyOf(best);
    rivals = List.copyOf(rivals);
  }

  /** The better buy among at least one machine. */
  static BetterBuy of(List<Assessed> machines) {
    List<Assessed> left = List.copyOf(machines);
    Optional<Criterion> decidedBy = Optional.empty();
    for (Criterion criterion : Criterion.values()) {
      if (left.size() > 1 && !isPassedOver(criterion, left)) {
        Comparator<Assessed> order = order(criterion);
        Assessed first = left.stream().min(order).orElseThrow();
        left = left.stream().filter(one -> order.compare(one, first) == 0).toList();
        decidedBy = Optional.of(criterion);
      }
    }
    List<Assessed> best = left;
    List<Assessed> rivals = new ArrayList<>();
    for (Assessed machine : machines) {
      if (!best.contains(machine) && mayReach(machine, best.get(0))) {
        rivals.add(machine);
      }
    }
    boolean tie = best.size() > 1 || machines.size() == 1;
    return new BetterBuy(best, tie ? Optional.empty() : decidedBy, rivals);
  }

  private static boolean isPassedOver(Criterion criterion, List<Assessed> left) {
    return criterion == Criterion.PRICE
        && left.stream().anyMatch(one -> one.machine().price().isEmpty());
  }

  /** Compares by one criterion, the better first. */
  private static Comparator<Assessed> order(Criterion criterion) {
    return switch (criterion) {
      case JOBS -> Comparator.comparingLong(one -> -one.piecesOnlyHere());
      case VISES -> Comparator.comparingInt(one -> -one.clear().size());
      case OPENING -> Comparator.comparingLong(one -> -one.opening());
      case JAW -> Comparator.comparingLong(one -> -one.jaw());
      case UNKNOWN -> Comparator.comparingInt(Assessed::open);
      case PRICE -> Comparator.comparing(one -> one.machine().price().orElseThrow());
    };
  }

  private static boolean mayReach(Assessed rival, Assessed best) {
    long pieces =
        rival.piecesOnlyHere() + Assessed.pieces(rival.perhapsOnlyHere()) - best.piecesOnlyHere();
    int vises = rival.clear().size() + rival.mayFit().size() - best.clear().size();
    return rival.open() > 0 && (pieces > 0 || pieces == 0 && vises >= 0);
  }
}
