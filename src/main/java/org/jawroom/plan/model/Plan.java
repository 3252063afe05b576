package org.jawroom.plan.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/**
 * The plan for a cell. All indices refer to the lists of the cell.
 *
 * @param machines the machines that get a vise, in cell order
 * @param held indices of the jobs that some machine holds
 * @param unheld the other jobs
 * @param purchases vises, then machines, in cell order
 * @param cost of all purchases, in the smallest coin
 * @param stages the value reached for each aim, in order of preference
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

  /** A copy with other remedies for the jobs not held. */
  public Plan with(List<Unheld> remedies) {
    return new Plan(machines, held, remedies, purchases, cost, stages);
  }

  /**
   * Whether no better plan exists for any aim. {@link Aim#ORDER} only breaks ties and does not
   * count.
   */
  public boolean isProven() {
    return stages.stream().allMatch(stage -> stage.proven() || stage.aim() == Aim.ORDER);
  }

  /** Whether equal tables always yield this plan, regardless of the computer and its speed. */
  public boolean isUnique() {
    return stages.stream().allMatch(Stage::proven);
  }

  /**
   * {@code no better plan exists} and in which order of aims, or which aims are not proven, and how
   * much they lack at most.
   */
  public String statement() {
    return isProven()
        ? stages.stream()
            .filter(stage -> stage.aim() != Aim.ORDER)
            .map(stage -> stage.aim().toString())
            .collect(Collectors.joining(", then ", "no better plan exists in this order: ", ""))
        : stages.stream()
            .filter(stage -> !stage.proven() && stage.aim() != Aim.ORDER)
            .map(Stage::notProven)
            .collect(Collectors.joining(", ", "a better plan may exist; not proven: ", ""));
  }

  /** The value of an aim that was pursued; empty for any other aim. */
  public OptionalLong value(Aim aim) {
    Optional<Stage> reached = stages.stream().filter(stage -> stage.aim() == aim).findFirst();
    return reached.map(stage -> OptionalLong.of(stage.value())).orElseGet(OptionalLong::empty);
  }

  /** The vises on each machine, as cell indices; a later plan may keep them. */
  public Map<Integer, List<Integer>> kinds() {
    return machines.stream()
        .collect(Collectors.toMap(one -> one.fit().machine(), one -> one.fit().vises()));
  }
}
