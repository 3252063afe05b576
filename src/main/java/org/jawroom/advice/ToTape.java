package org.jawroom.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Function;
import org.jawroom.advice.tape.Deciding;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * A reading to tape, and the unknown pairings that it decides.
 *
 * @param decided in input order; where it matters to some, these alone
 */
public record ToTape(
    Measurand reading, boolean ofMachine, Dimension bounds, List<Decided> decided) {

  /** A pairing that the reading decides, and how. */
  public record Decided(Outcome outcome, Deciding deciding) {}

  public ToTape {
    decided = List.copyOf(decided);
  }

  /** The pairings that it can settle by itself. */
  public List<Decided> settled() {
    return decided.stream().filter(one -> one.deciding().settles()).toList();
  }

  /** Whether it decides any pairing by itself, rather than only together with other readings. */
  public boolean matters() {
    return decided.get(0).deciding().matters();
  }

  /** How closely to read it; empty if nothing asks for it. */
  public OptionalLong within() {
    return decided.get(0).deciding().within();
  }

  /**
   * The readings to tape: those that settle most pairings first, then those that decide most, then
   * in the order of the tables.
   *
   * @param shop with the machines and vises of the pairings
   */
  public static List<ToTape> of(Shop shop, List<Advice> advice) {
    Map<Measurand, List<Decided>> all = new LinkedHashMap<>();
    Map<String, Integer> machines = places(shop.machines(), Machine::name);
    Map<String, Integer> vises = places(shop.vises(), Vise::row);
    for (Advice pairing : advice) {
      Outcome outcome = pairing.outcome();
      for (Deciding one : pairing.deciding()) {
        all.computeIfAbsent(one.reading(), none -> new ArrayList<>())
            .add(new Decided(outcome, one));
      }
    }
    return all.values().stream()
        .map(ToTape::collected)
        .sorted(
            Comparator.comparingInt((ToTape one) -> -one.settled().size())
                .thenComparing(one -> !one.matters())
                .thenComparingInt(one -> -one.decided.size())
                .thenComparingInt(one -> table(one.reading))
                .thenComparingInt(one -> (one.ofMachine ? machines : vises).get(one.reading.name()))
                .thenComparing(one -> one.decided.get(0).deciding().column()))
        .toList();
  }

  private static <T> Map<String, Integer> places(List<T> all, Function<T, String> name) {
    Map<String, Integer> places = new HashMap<>();
    all.forEach(one -> places.putIfAbsent(name.apply(one), places.size()));
    return places;
  }

  private static ToTape collected(List<Decided> decided) {
    List<Decided> alone = decided.stream().filter(one -> one.deciding().matters()).toList();
    Deciding first = decided.get(0).deciding();
    return new ToTape(
        first.reading(), first.ofMachine(), first.bounds(), alone.isEmpty() ? decided : alone);
  }

  /** How many unknown pairings do not fit even at best, so that no reading makes them fit. */
  public static long hopeless(List<Advice> advice) {
    return advice.stream()
        .filter(pairing -> pairing.outcome().verdict() == Verdict.UNKNOWN)
        .filter(pairing -> pairing.deciding().isEmpty())
        .count();
  }

  /** The position of the first column of its table. */
  private static int table(Measurand reading) {
    int at = 0;
    while (!Column.values()[at].table().equals(reading.table())) {
      at++;
    }
    return at;
  }
}
