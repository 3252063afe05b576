package org.jawroom.report.survey.count;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.rows.UnreadablePairings;

/** Finds the row of a pairing by the names of machine and vise. */
final class PairingIndex {
  private final Map<String, Integer> machines = new HashMap<>();
  private final Map<String, Integer> vises = new HashMap<>();

  /** The pairings as numbers, in rising order, and the row of each. */
  private final long[] keys;

  private final int[] rowOf;

  /**
   * Indexes all rows.
   *
   * @throws UnreadablePairings if a pairing occurs twice: it would count twice
   */
  PairingIndex(SurveyRows rows) throws UnreadablePairings {
    long[] inOrder = new long[rows.size()];
    for (int row = 0; row < inOrder.length; row++) {
      machines.putIfAbsent(rows.machine(row), machines.size());
      vises.putIfAbsent(rows.vise(row), vises.size());
      inOrder[row] = key(machines.get(rows.machine(row)), vises.get(rows.vise(row)));
    }
    keys = inOrder.clone();
    Arrays.sort(keys);
    rowOf = new int[keys.length];
    Arrays.fill(rowOf, -1);
    for (int row = 0; row < inOrder.length; row++) {
      int place = Arrays.binarySearch(keys, inOrder[row]);
      if (rowOf[place] >= 0) {
        throw new UnreadablePairings(
            "it has the pairing "
                + PlainText.forTerminal(rows.machine(row) + " x " + rows.vise(row))
                + " twice");
      }
      rowOf[place] = row;
    }
  }

  /** The row of that pairing, or −1. */
  int row(String machine, String vise) {
    Integer first = machines.get(machine);
    Integer second = vises.get(vise);
    int place =
        first == null || second == null ? -1 : Arrays.binarySearch(keys, key(first, second));
    return place < 0 ? -1 : rowOf[place];
  }

  int machines() {
    return machines.size();
  }

  int vises() {
    return vises.size();
  }

  private static long key(int machine, int vise) {
    return (long) machine << Integer.SIZE | vise;
  }
}
