package org.jawroom.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/**
 * The plan for a cell.
 *
 * @param machines those that get a vise, in the order of the cell
 * @param held the jobs that some machine holds, by their place in the cell's list
 * @param unheld the others
 * @param purchases vises, then machines, in the order of the cell
 * @param cost what they come to
 * @param stages how far each aim was brought, in order of preference
 */
public record Plan(
    List<Assigned> machines,
    List<Integer> held,
    List<Unheld> unheld,
    List<Purchase> purchases,
    long cost,
    List<Stage> stages) {
  public Plan {
    machines = List.copyOf(machines);
    held = List.copyOf(held);
    unheld = List.copyOf(unheld);
    purchases = List.copyOf(purchases);
    stages = List.copyOf(stages);
  }

  /** The same with other remedies for the jobs it leaves. */
  Plan with(List<Unheld> remedies) {
    return new Plan(machines, held, remedies, purchases, cost, stages);
  }

  /** Whether no better plan exists, for any aim; the order of the tables is none. */
  public boolean isProven() {
    return stages.stream().allMatch(stage -> stage.proven() || stage.aim() == Aim.ORDER);
  }

  /** Whether the same tables give this very plan on any machine at any speed. */
  public boolean isUnique() {
    return stages.stream().allMatch(Stage::proven);
  }

  /** {@code no better plan exists}, or what of it was not proven. */
  public String statement() {
    return isProven()
        ? "no better plan exists"
        : stages.stream()
            .filter(stage -> !stage.proven() && stage.aim() != Aim.ORDER)
            .map(stage -> stage.aim().toString())
            .collect(Collectors.joining(", ", "a better plan may exist; not proven: ", ""));
  }

  /** The value of an aim that was pursued. */
  public OptionalLong value(Aim aim) {
    Optional<Stage> reached = stages.stream().filter(stage -> stage.aim() == aim).findFirst();
    return reached.map(stage -> OptionalLong.of(stage.value())).orElseGet(OptionalLong::empty);
  }

  /**
   * The kind of vise on each machine, both by their place in the cell: what a later plan may keep.
   */
  public Map<Integer, Integer> kinds() {
    return machines.stream()
        .collect(Collectors.toMap(one -> one.fit().machine(), one -> one.fit().vise()));
  }
}
