package org.jawroom.tables.check;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/** What looks wrong in a shop that was read without a fault. */
public final class Warnings {
  private Warnings() {}

  /**
   * Every warning, in a fixed order: each machine with its slots and guards, each vise, then what a
   * vise and a machine say together. Pure; empty where nothing looks wrong.
   */
  public static List<Warning> of(Shop shop) {
    List<Warning> warnings = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      warnings.addAll(SizeWarnings.of(machine));
      warnings.addAll(SlotWarnings.of(machine));
      warnings.addAll(MachineWarnings.of(machine));
      warnings.addAll(GuardWarnings.of(machine));
      warnings.addAll(HandleWarnings.of(machine, shop.vises()));
      warnings.addAll(BlankWarnings.of(machine, shop.settings()));
    }
    for (Vise vise : shop.vises()) {
      warnings.addAll(SizeWarnings.of(vise));
      warnings.addAll(ViseWarnings.of(vise));
      warnings.addAll(BlankWarnings.of(vise));
    }
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        OverhangWarnings.of(machine, vise).ifPresent(warnings::add);
      }
    }
    return List.copyOf(warnings);
  }

  /** Those of blank dimensions alone. */
  public static List<Warning> ofBlanks(Shop shop) {
    List<Warning> warnings = new ArrayList<>();
    shop.machines().forEach(machine -> warnings.addAll(BlankWarnings.of(machine, shop.settings())));
    shop.vises().forEach(vise -> warnings.addAll(BlankWarnings.of(vise)));
    return warnings;
  }
}
