package org.jawroom.plan;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * What later steps may not give up: values reached, machines settled, and limits on what is bought.
 */
final class Demands {

  private final Map<Aim, Long> reached = new EnumMap<>(Aim.class);
  private final Map<Integer, Integer> settled = new HashMap<>();
  private final Map<Integer, Integer> mostBought = new HashMap<>();

  Demands() {}

  Demands(Demands other) {
    reached.putAll(other.reached);
    settled.putAll(other.settled);
    mostBought.putAll(other.mostBought);
  }

  Demands reach(Aim aim, long value) {
    reached.put(aim, value);
    return this;
  }

  /** This machine has this fit, or stays bare. */
  Demands settle(int machine, int fit) {
    settled.put(machine, fit);
    return this;
  }

  /** No more than this of an item of {@link Task#items}. */
  Demands buyAtMost(int item, int count) {
    mostBought.put(item, count);
    return this;
  }

  Map<Integer, Integer> mostBought() {
    return mostBought;
  }

  Map<Aim, Long> reached() {
    return reached;
  }

  Map<Integer, Integer> settled() {
    return settled;
  }

  boolean areMetBy(Task task, Choice choice) {
    return task.allows(choice)
        && reached.entrySet().stream()
            .allMatch(one -> task.value(one.getKey(), choice) >= one.getValue())
        && settled.entrySet().stream().allMatch(one -> choice.fitOf(one.getKey()) == one.getValue())
        && mostBought.entrySet().stream()
            .allMatch(one -> task.bought(choice, one.getKey()) <= one.getValue());
  }
}
