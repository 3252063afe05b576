package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** What looks wrong in a shop that was read without a fault. */
public final class Warnings {
  private static final Set<String> STATED =
      Set.of(MachineWarnings.LOOKED_FOR, MachineWarnings.TOLERANCE, OverhangWarnings.COLUMN);

  private Warnings() {}

  /**
   * Every warning, in a fixed order: each machine with its slots and guards, then each vise, then
   * what stands there, then each set. Pure; empty where nothing looks wrong.
   */
  public static List<Warning> of(Shop shop) {
    List<Warning> warnings = new ArrayList<>(of(shop.settings(), shop.machines(), square(shop)));
    warnings.addAll(SetWarnings.of(shop.standing()));
    shop.sets().forEach(set -> warnings.addAll(SetWarnings.of(set)));
    return List.copyOf(warnings);
  }

  /** The warnings that concern these machines and vises alone, in the same order. */
  public static List<Warning> of(Settings settings, List<Machine> machines, List<Vise> vises) {
    List<Warning> warnings = new ArrayList<>();
    HandleWarnings handles = new HandleWarnings(vises);
    for (Machine machine : machines) {
      warnings.addAll(SizeWarnings.of(machine));
      warnings.addAll(SlotWarnings.of(machine));
      warnings.addAll(MachineWarnings.of(machine));
      warnings.addAll(GuardWarnings.of(machine));
      warnings.addAll(handles.of(machine));
      warnings.addAll(BlankWarnings.of(machine, settings));
    }
    List<OverhangWarnings> overhangs = machines.stream().map(OverhangWarnings::new).toList();
    for (Vise vise : vises) {
      warnings.addAll(SizeWarnings.of(vise));
      warnings.addAll(ViseWarnings.of(vise, machines));
      OverhangWarnings.of(overhangs, vise).ifPresent(warnings::add);
      warnings.addAll(BlankWarnings.of(vise));
    }
    return List.copyOf(warnings);
  }

  /**
   * The warnings about one pairing, the most serious first, without what each report of a pairing
   * states by itself: blanks, guards not looked for, tolerances taken as 0, a base that hangs over.
   */
  public static List<Warning> ofPairing(Settings settings, Machine machine, Vise vise) {
    return of(settings, List.of(machine), List.of(vise)).stream()
        .filter(warning -> warning.seriousness() != Seriousness.OPEN)
        .filter(warning -> warning.seriousness() != Seriousness.BLANK)
        .filter(warning -> !STATED.contains(warning.column()))
        .sorted(Comparator.comparing(Warning::seriousness))
        .toList();
  }

  /** Those of blank dimensions alone. */
  public static List<Warning> ofBlanks(Shop shop) {
    List<Warning> warnings = new ArrayList<>();
    shop.machines().forEach(machine -> warnings.addAll(BlankWarnings.of(machine, shop.settings())));
    square(shop).forEach(vise -> warnings.addAll(BlankWarnings.of(vise)));
    return warnings;
  }

  /** Each row once: turned on its swivel base, a vise has the same readings. */
  private static List<Vise> square(Shop shop) {
    return shop.vises().stream().filter(vise -> !vise.isTurned()).toList();
  }
}
