package org.jawroom.plan;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * Constraints that later steps must respect: values reached, machines settled, and limits on
 * purchases.
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

  /** Fixes the fit of a machine; {@link Choice#BARE} keeps it bare. */
  Demands settle(int machine, int fit) {
    settled.put(machine, fit);
    return this;
  }

  /** Limits the purchases of an item of {@link Task#items}. */
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
