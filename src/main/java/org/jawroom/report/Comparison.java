package org.jawroom.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Two runs held against each other, pairing by pairing; pairings are the same if machine and vise
 * bear the same names. Computes nothing but differences; see {@link ComparedPair} for what is
 * better.
 */
public final class Comparison {
  private final Map<Change, List<ComparedPair>> pairs = new EnumMap<>(Change.class);
  private final List<PairingRow> onlyOld = new ArrayList<>();
  private final List<PairingRow> onlyNew = new ArrayList<>();
  private final List<PairingRow> oldRows;
  private final List<PairingRow> newRows;

  private Comparison(List<PairingRow> oldRows, List<PairingRow> newRows) {
    this.oldRows = oldRows;
    this.newRows = newRows;
  }

  /** Each pairing at most once in {@code oldRows} and in {@code newRows}. */
  public static Comparison of(List<PairingRow> oldRows, List<PairingRow> newRows) {
    Comparison comparison = new Comparison(oldRows, newRows);
    Map<List<String>, PairingRow> left = new HashMap<>();
    oldRows.forEach(row -> left.put(key(row), row));
    for (PairingRow now : newRows) {
      PairingRow old = left.remove(key(now));
      if (old == null) {
        comparison.onlyNew.add(now);
      } else {
        ComparedPair pair = new ComparedPair(old, now);
        comparison.pairs.computeIfAbsent(pair.change(), none -> new ArrayList<>()).add(pair);
      }
    }
    oldRows.stream().filter(row -> left.containsKey(key(row))).forEach(comparison.onlyOld::add);
    comparison.pairs.getOrDefault(Change.WORSE, new ArrayList<>()).sort(ComparedPair.WORST_FIRST);
    comparison
        .pairs
        .getOrDefault(Change.BETTER, new ArrayList<>())
        .sort(ComparedPair.WORST_FIRST.reversed());
    return comparison;
  }

  /**
   * Those that lost or gained most first; of equals, and of other changes, in the order of the new.
   */
  List<ComparedPair> pairs(Change change) {
    return pairs.getOrDefault(change, List.of());
  }

  /** The pairings of only one run, in its order. */
  List<PairingRow> only(Change side) {
    return side == Change.ONLY_OLD ? onlyOld : onlyNew;
  }

  /** The machines that are in no pairing of the other run. */
  List<String> machinesOnly(Change side) {
    return namesOnly(side, PairingRow::machine);
  }

  /** The vises that are in no pairing of the other run. */
  List<String> visesOnly(Change side) {
    return namesOnly(side, PairingRow::vise);
  }

  private List<String> namesOnly(Change side, Function<PairingRow, String> name) {
    List<PairingRow> others = side == Change.ONLY_OLD ? newRows : oldRows;
    Set<String> known = others.stream().map(name).collect(Collectors.toSet());
    return only(side).stream().map(name).distinct().filter(one -> !known.contains(one)).toList();
  }

  private static List<String> key(PairingRow row) {
    return List.of(row.machine(), row.vise());
  }
}
