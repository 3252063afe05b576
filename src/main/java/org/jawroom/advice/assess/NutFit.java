package org.jawroom.advice.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jawroom.shop.machine.Machine;

/**
 * How the T-nuts made for some owned machines' slots fit another machine's slots.
 *
 * <p>The tables do not list nuts, so the shop is assumed to own those of its own slots. Only the
 * neck is judged. A nut made for a slot of equal width fits. One for a wider slot does not enter.
 * One for a narrower slot enters with play and bears on that much less of the slot's lips, so it
 * does not count as fitting. Whether its base passes the wide part of the slot is in no table and
 * must be tried.
 *
 * @param machines names of the machines whose slots the nuts are made for, in input order
 * @param slot the width of those slots
 * @param looseBy how much narrower they are than the slot, for {@link Fit#LOOSE}; else 0
 */
public record NutFit(List<String> machines, long slot, Fit fit, long looseBy) {

  /** How the neck of a nut fits a slot. */
  public enum Fit {
    FITS("fits"),
    LOOSE("loose"),
    TOO_WIDE("too wide");

    private final String code;

    Fit(String code) {
      this.code = code;
    }

    /** The code written to {@code assess.csv}. */
    public String code() {
      return code;
    }
  }

  public NutFit {
    machines = List.copyOf(machines);
  }

  /**
   * One entry per slot width among {@code owned}, ascending; empty if {@code machine}'s own is
   * blank.
   */
  static List<NutFit> of(Machine machine, List<Machine> owned) {
    List<NutFit> fits = new ArrayList<>();
    if (!takesBolts(machine)) {
      return fits;
    }
    TreeMap<Long, List<String>> bySlot = new TreeMap<>();
    for (Machine other : owned) {
      if (takesBolts(other)) {
        bySlot
            .computeIfAbsent(other.slots().width().length(), width -> new ArrayList<>())
            .add(other.name());
      }
    }
    long into = machine.slots().width().length();
    bySlot.forEach(
        (slot, machines) ->
            fits.add(new NutFit(machines, slot, fit(slot, into), Math.max(0, into - slot))));
    return fits;
  }

  private static boolean takesBolts(Machine machine) {
    return machine.slots().count() > 0 && machine.slots().width().isKnown();
  }

  private static Fit fit(long slot, long into) {
    return slot > into ? Fit.TOO_WIDE : slot == into ? Fit.FITS : Fit.LOOSE;
  }
}
