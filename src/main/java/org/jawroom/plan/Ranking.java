package org.jawroom.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How early the vises on a few machines in a row stand in the tables, as one number: a digit for
 * each machine, the first machine's the highest; the earlier its vise the more, 0 where it stays
 * bare.
 */
final class Ranking {

  /** As large as a solver in floating point keeps well apart. */
  private static final long LARGEST = 200_000;

  private final Map<Integer, Long> rankOf = new HashMap<>();
  private final int end;
  private final long ceiling;

  private Ranking(int end, long ceiling) {
    this.end = end;
    this.ceiling = ceiling;
  }

  /**
   * Of machine {@code first} and as many after it as will do, by their fits of {@code margin} or
   * more.
   */
  static Ranking from(Task task, int first, long margin) {
    List<List<Integer>> digits = new ArrayList<>();
    long size = 1;
    int machine = first;
    while (machine < task.cell().machines().size()) {
      List<Integer> fits =
          task.ofMachine(machine).stream()
              .filter(fit -> task.fits().get(fit).leastMargin() >= margin)
              .toList();
      size *= fits.size() + 1;
      if (machine > first && size > LARGEST) {
        break;
      }
      digits.add(fits);
      machine++;
    }
    long ceiling = 0;
    Map<Integer, Long> rankOf = new HashMap<>();
    long unit = 1;
    for (int digit = digits.size() - 1; digit >= 0; digit--) {
      List<Integer> fits = digits.get(digit);
      for (int place = 0; place < fits.size(); place++) {
        rankOf.put(fits.get(place), unit * (fits.size() - place));
      }
      ceiling += unit * fits.size();
      unit *= fits.size() + 1;
    }
    Ranking ranking = new Ranking(machine, ceiling);
    ranking.rankOf.putAll(rankOf);
    return ranking;
  }

  /** The machine after the last one. */
  int end() {
    return end;
  }

  long ceiling() {
    return ceiling;
  }

  long of(int fit) {
    return rankOf.getOrDefault(fit, 0L);
  }

  long of(Choice choice) {
    return choice.fits().stream().mapToLong(this::of).sum();
  }
}
