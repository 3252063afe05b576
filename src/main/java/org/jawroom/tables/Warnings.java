package org.jawroom.tables;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/** What looks wrong in a shop that was read without a fault. */
public final class Warnings {
  private Warnings() {}

  /**
   * Every warning, in a fixed order: each machine with its slots and guards, each vise, then what a vise
   * and a machine say together. Pure; empty where nothing looks wrong.
   */
  public static List<PlausibilityWarning> of(Shop shop) {
    List<PlausibilityWarning> warnings = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      warnings.addAll(PlausibilityOfSizes.of(machine));
      warnings.addAll(PlausibilityOfSlots.of(machine));
      warnings.addAll(PlausibilityOfMachines.of(machine));
      warnings.addAll(PlausibilityOfGuards.of(machine));
      warnings.addAll(PlausibilityOfHandles.of(machine, shop.vises()));
      warnings.addAll(PlausibilityOfBlanks.of(machine, shop.settings()));
    }
    for (Vise vise : shop.vises()) {
      warnings.addAll(PlausibilityOfSizes.of(vise));
      warnings.addAll(PlausibilityOfVises.of(vise));
      warnings.addAll(PlausibilityOfBlanks.of(vise));
    }
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        PlausibilityOfOverhang.of(machine, vise).ifPresent(warnings::add);
      }
    }
    return List.copyOf(warnings);
  }
}
