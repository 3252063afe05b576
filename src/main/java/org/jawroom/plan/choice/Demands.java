package org.jawroom.plan.choice;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.jawroom.plan.model.Aim;

/**
 * Constraints that later steps must respect: values reached, machines settled, and limits on
 * purchases.
 */
public final class Demands {

  private final Map<Aim, Long> reached = new EnumMap<>(Aim.class);
  private final Map<Integer, Integer> settled = new HashMap<>();
  private final Map<Integer, Integer> mostBought = new HashMap<>();

  public Demands() {}

  public Demands(Demands other) {
    reached.putAll(other.reached);
    settled.putAll(other.settled);
    mostBought.putAll(other.mostBought);
  }

  public Demands reach(Aim aim, long value) {
    reached.put(aim, value);
    return this;
  }

  /** Fixes the fit of a machine; {@link Choice#BARE} keeps it bare. */
  public Demands settle(int machine, int fit) {
    settled.put(machine, fit);
    return this;
  }

  /** Limits the purchases of an item of {@link Task#items}. */
  public Demands buyAtMost(int item, int count) {
    mostBought.put(item, count);
    return this;
  }

  public Map<Integer, Integer> mostBought() {
    return mostBought;
  }

  public Map<Aim, Long> reached() {
    return reached;
  }

  public Map<Integer, Integer> settled() {
    return settled;
  }

  public boolean areMetBy(Task task, Choice choice) {
    return task.allows(choice)
        && reached.entrySet().stream()
            .allMatch(one -> task.value(one.getKey(), choice) >= one.getValue())
        && settled.entrySet().stream().allMatch(one -> choice.fitOf(one.getKey()) == one.getValue())
        && mostBought.entrySet().stream()
            .allMatch(one -> task.bought(choice, one.getKey()) <= one.getValue());
  }
}
