package org.jawroom.advice.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedSet;
import java.util.function.LongFunction;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.search.AmountCandidates;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;

/** Finds how much farther off one guard alone must stand; see {@link RemedyKind#MOVE}. */
final class GuardMoves {
  private final Machine machine;
  private final Model now;
  private final Goal goal;
  private final Interval openings;
  private final long least;

  /** The moves of the guards of a pairing that does not meet the goal. */
  GuardMoves(SolvedPairing solved, Goal goal) {
    Outcome outcome = solved.outcome();
    this.machine = outcome.machine();
    this.now = solved.model();
    this.goal = goal;
    this.openings = outcome.vise().opening();
    // A move by less than the best margin lacks cannot serve.
    this.least = goal == Goal.CLEAR ? -outcome.bestMargin().orElse(0) : 0;
  }

  /** The remedies in guard order: door, rear cover, left guard, right guard, the rows. */
  List<Remedy> all() {
    List<Remedy> remedies = new ArrayList<>();
    for (Guard guard : machine.guards()) {
      (guard.side().isPresent() ? ofSide(guard) : ofBox(guard)).ifPresent(remedies::add);
    }
    return remedies;
  }

  /** Monotone: the farther outward the guard stands, the better. */
  private Optional<Remedy> ofSide(Guard guard) {
    if (!guard.gap().isKnown() || !goal.isMet(model(machine.without(guard)))) {
      return Optional.empty();
    }
    LongFunction<Machine> moved =
        by -> machine.withInstead(guard, guard.withGap(Dimension.of(guard.gap().length() + by)));
    OptionalLong least =
        MonotoneSearch.from(0, Length.LARGEST, amount -> goal.isMet(model(moved.apply(amount))));
    return least.isEmpty()
        ? Optional.empty()
        : remedy(
            guard,
            Direction.valueOf(guard.side().get().name()),
            least.getAsLong(),
            moved.apply(least.getAsLong()));
  }

  /** A candidate move: a direction and an amount. */
  private record Try(Direction way, long amount) {}

  private Optional<Remedy> ofBox(Guard guard) {
    if (!goal.isMet(model(machine.without(guard)))) {
      return Optional.empty();
    }
    List<Try> tries = new ArrayList<>();
    for (Direction way : Direction.values()) {
      for (long amount : movesToTry(guard, axis(way), isUp(way))) {
        long rounded = Length.ceilTo(amount, MonotoneSearch.GRAIN);
        if (rounded >= least) {
          tries.add(new Try(way, rounded));
        }
      }
    }
    return tries.stream()
        .distinct()
        .sorted(Comparator.comparingLong(Try::amount).thenComparing(Try::way))
        .filter(move -> goal.isMet(model(machine.withInstead(guard, moved(guard, move)))))
        .findFirst()
        .flatMap(
            move ->
                remedy(
                    guard,
                    move.way(),
                    move.amount(),
                    machine.withInstead(guard, moved(guard, move))));
  }

  private SortedSet<Long> movesToTry(Guard guard, Axis axis, boolean up) {
    List<Region> regions = goal.regions(now);
    return axis == Axis.Z
        ? AmountCandidates.lifts(regions, guard)
        : AmountCandidates.moves(regions, openings, guard, axis, up);
  }

  private Optional<Remedy> remedy(Guard guard, Direction way, long amount, Machine moved) {
    return Optional.of(
        Goal.reached(
            RemedyKind.MOVE,
            Optional.of(guard),
            Optional.of(way),
            OptionalLong.of(amount),
            model(moved)));
  }

  private static Guard moved(Guard guard, Try move) {
    long by = isUp(move.way()) ? move.amount() : -move.amount();
    Box limits = guard.limits();
    return guard.withLimits(
        switch (axis(move.way())) {
          case X -> new Box(limits.x().plus(by), limits.y(), limits.z());
          case Y -> new Box(limits.x(), limits.y().plus(by), limits.z());
          case Z -> new Box(limits.x(), limits.y(), limits.z().plus(by));
        });
  }

  private static Axis axis(Direction way) {
    return switch (way) {
      case LEFT, RIGHT -> Axis.X;
      case FRONT, REAR -> Axis.Y;
      case UP -> Axis.Z;
    };
  }

  private static boolean isUp(Direction way) {
    return way == Direction.RIGHT || way == Direction.REAR || way == Direction.UP;
  }

  private Model model(Machine changed) {
    return now.on(changed, Setup.PLAIN);
  }
}
