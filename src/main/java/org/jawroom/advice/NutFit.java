package org.jawroom.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jawroom.shop.Machine;

/**
 * How the T-nuts made for some owned machines' slots go with another machine's slots.
 *
 * <p>The tables tell no nuts, so the shop is taken to have those of its own slots. Only the neck is
 * judged: a nut made for a slot as wide goes; one for a wider slot does not enter; one for a
 * narrower slot enters with play and bears on that much less of the slot's lips, so it is not
 * counted as fitting. Whether its base passes the wide part of the slot, which no table tells, must
 * be tried.
 *
 * @param machines whose slots they are made for, by name, in input order
 * @param slot the width of those slots
 * @param looseBy how much narrower they are than the slot, for {@link Fit#LOOSE}; else 0
 */
public record NutFit(List<String> machines, long slot, Fit fit, long looseBy) {

  /** How a nut's neck goes with a slot. */
  public enum Fit {
    FITS("fits"),
    LOOSE("loose"),
    TOO_WIDE("too wide");

    private final String code;

    Fit(String code) {
      this.code = code;
    }

    /** As {@code assess.csv} tells it. */
    public String code() {
      return code;
    }
  }

  public NutFit {
    machines = List.copyOf(machines);
  }

  /**
   * One for each width of slot among {@code owned}, rising; empty where {@code machine}'s own is
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
