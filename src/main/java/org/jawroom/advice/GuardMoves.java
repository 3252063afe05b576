package org.jawroom.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Model;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;

/** Finds how much farther off one guard alone must stand; see {@link RemedyKind#MOVE}. */
final class GuardMoves {
  private final Machine machine;
  private final Model now;
  private final long bestMargin;

  /**
   * @param now the unchanged pairing
   * @param bestMargin its best margin, below 0; moving a guard by less than the missing amount
   *     cannot serve
   */
  GuardMoves(Machine machine, Model now, long bestMargin) {
    this.machine = machine;
    this.now = now;
    this.bestMargin = bestMargin;
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
    if (!guard.gap().isKnown() || !model(machine.without(guard)).fits()) {
      return Optional.empty();
    }
    LongFunction<Machine> moved =
        by -> machine.withInstead(guard, guard.withGap(Dimension.of(guard.gap().length() + by)));
    OptionalLong least =
        MonotoneSearch.from(0, Length.LARGEST, amount -> model(moved.apply(amount)).fits());
    return least.isEmpty()
        ? Optional.empty()
        : remedy(
            guard.name(),
            Direction.valueOf(guard.side().get().name()),
            least.getAsLong(),
            moved.apply(least.getAsLong()));
  }

  /** A candidate move: a direction and an amount. */
  private record Try(Direction way, long amount) {}

  private Optional<Remedy> ofBox(Guard guard) {
    if (!model(machine.without(guard)).fits()) {
      return Optional.empty();
    }
    List<Try> tries = new ArrayList<>();
    for (Direction way : Direction.values()) {
      for (long amount : now.movesToTry(guard, axis(way), isUp(way))) {
        long rounded = Length.ceilTo(amount, MonotoneSearch.GRAIN);
        if (rounded >= -bestMargin) {
          tries.add(new Try(way, rounded));
        }
      }
    }
    return tries.stream()
        .distinct()
        .sorted(Comparator.comparingLong(Try::amount).thenComparing(Try::way))
        .filter(move -> model(machine.withInstead(guard, moved(guard, move))).fits())
        .findFirst()
        .flatMap(
            move ->
                remedy(
                    guard.name(),
                    move.way(),
                    move.amount(),
                    machine.withInstead(guard, moved(guard, move))));
  }

  private Optional<Remedy> remedy(String guard, Direction way, long amount, Machine moved) {
    return model(moved)
        .roomiest()
        .map(
            then ->
                new Remedy(
                    RemedyKind.MOVE, guard, Optional.of(way), OptionalLong.of(amount), then));
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
