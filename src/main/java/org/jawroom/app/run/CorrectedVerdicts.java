package org.jawroom.app.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jawroom.app.input.Input;
import org.jawroom.checks.Suspect;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;

/**
 * The verdicts that change if suspect readings are put in, each at the ends of the range that it
 * must have. The tables are read and solved again with them.
 */
public final class CorrectedVerdicts {
  private final Path input;
  private final Map<String, String> options;
  private final Shop shop;
  private final Map<List<String>, Verdict> now = new HashMap<>();

  /**
   * @param shop as read from {@code input} with {@code options}
   */
  public CorrectedVerdicts(Path input, Map<String, String> options, Shop shop) {
    this.input = input;
    this.options = options;
    this.shop = shop;
  }

  /**
   * One line for each pairing whose verdict changes; or why the tables would then be refused.
   *
   * @param choice readings that together explain the checks
   */
  public List<String> of(List<Suspect> choice) throws UnreadableInput {
    Map<List<String>, SortedSet<Verdict>> then = new LinkedHashMap<>();
    List<String> refused = new ArrayList<>();
    for (Map<Measurand, Long> lengths : ends(choice)) {
      Reading reading = ShopReader.corrected(input, options, lengths, Input.heap());
      if (reading.shop().isEmpty()) {
        refused.add("the tables would be refused: " + reading.faults().get(0));
      } else {
        solve(reading.shop().get(), lengths, then);
      }
    }
    List<String> lines = new ArrayList<>();
    then.forEach(
        (names, verdicts) -> {
          Verdict before = now.get(names);
          if (!verdicts.equals(EnumSet.of(before))) {
            lines.add(line(names, before, verdicts));
          }
        });
    refused.stream().limit(1).forEach(lines::add);
    return lines;
  }

  private static String line(List<String> names, Verdict before, SortedSet<Verdict> then) {
    // The verdicts are in order, the best first.
    String worst = then.last().code();
    return names.get(1)
        + " on "
        + names.get(0)
        + ": "
        + before.code()
        + " becomes "
        + (then.size() == 1 ? worst : worst + " at worst, " + then.first().code() + " at best");
  }

  private void solve(
      Shop other, Map<Measurand, Long> lengths, Map<List<String>, SortedSet<Verdict>> then) {
    for (int i = 0; i < shop.machines().size(); i++) {
      for (int j = 0; j < shop.vises().size(); j++) {
        Machine machine = shop.machines().get(i);
        Vise vise = shop.vises().get(j);
        if (lengths.keySet().stream()
            .anyMatch(reading -> reading.isOf(machine.name(), vise.row()))) {
          List<String> names = List.of(machine.name(), vise.name());
          now.computeIfAbsent(
              names, none -> Pairing.solve(shop.settings(), machine, vise).verdict());
          then.computeIfAbsent(names, none -> new TreeSet<>())
              .add(
                  Pairing.solve(other.settings(), other.machines().get(i), other.vises().get(j))
                      .verdict());
        }
      }
    }
  }

  /** Every combination of ends; a reading without any end is left as it is. */
  private static List<Map<Measurand, Long>> ends(List<Suspect> choice) {
    List<Map<Measurand, Long>> all = List.of(Map.of());
    for (Suspect suspect : choice) {
      List<Long> ends = ends(suspect.mustBe());
      if (!ends.isEmpty()) {
        all =
            all.stream()
                .flatMap(before -> ends.stream().map(end -> with(before, suspect.reading(), end)))
                .toList();
      }
    }
    return all;
  }

  private static Map<Measurand, Long> with(
      Map<Measurand, Long> before, Measurand reading, long length) {
    Map<Measurand, Long> more = new LinkedHashMap<>(before);
    more.put(reading, length);
    return more;
  }

  /** Rounded to whole nanometres, as lengths of the tables are: inward. */
  private static List<Long> ends(ValueRange bounds) {
    Rational two = Rational.of(2);
    Long lo = bounds.lo().map(end -> 2 * end.over(two).ceiling()).orElse(null);
    Long hi = bounds.hi().map(end -> 2 * end.over(two).floor()).orElse(null);
    return Stream.of(lo, hi).filter(Objects::nonNull).distinct().toList();
  }
}
