package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/** What looks wrong in a shop that was read without a fault. */
public final class Warnings {
  /** How many pairings are told of one by one. */
  private static final int MOST = 1000;

  private Warnings() {}

  /**
   * Every warning, in a fixed order: each machine with its slots and guards, each vise, then what a
   * vise and a machine say together. Pure; empty where nothing looks wrong.
   */
  public static List<Warning> of(Shop shop) {
    List<Warning> warnings = new ArrayList<>();
    HandleWarnings handles = new HandleWarnings(shop.vises());
    for (Machine machine : shop.machines()) {
      warnings.addAll(SizeWarnings.of(machine));
      warnings.addAll(SlotWarnings.of(machine));
      warnings.addAll(MachineWarnings.of(machine));
      warnings.addAll(GuardWarnings.of(machine));
      warnings.addAll(handles.of(machine));
      warnings.addAll(BlankWarnings.of(machine, shop.settings()));
    }
    for (Vise vise : shop.vises()) {
      warnings.addAll(SizeWarnings.of(vise));
      warnings.addAll(ViseWarnings.of(vise));
      warnings.addAll(BlankWarnings.of(vise));
    }
    overhangs(shop, warnings);
    return List.copyOf(warnings);
  }

  /** One for each pairing; of very many the first, so that they do not grow with the pairings. */
  private static void overhangs(Shop shop, List<Warning> warnings) {
    int told = 0;
    long more = 0;
    for (Machine machine : shop.machines()) {
      OverhangWarnings overhangs = new OverhangWarnings(machine);
      for (Vise vise : shop.vises()) {
        Optional<Warning> warning = overhangs.of(vise);
        if (warning.isPresent() && told < MOST) {
          warnings.add(warning.get());
          told++;
        } else if (warning.isPresent()) {
          more++;
        }
      }
    }
    if (more > 0) {
      warnings.add(
          Warning.vise(
              "and " + more + " more pairings",
              "bolt_u",
              "more than a quarter of the base hangs over the table's edge wherever it is bolted"));
    }
  }

  /** Those of blank dimensions alone. */
  public static List<Warning> ofBlanks(Shop shop) {
    List<Warning> warnings = new ArrayList<>();
    shop.machines().forEach(machine -> warnings.addAll(BlankWarnings.of(machine, shop.settings())));
    shop.vises().forEach(vise -> warnings.addAll(BlankWarnings.of(vise)));
    return warnings;
  }
}
