package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Ranks the vises on a few consecutive machines by table order, as one number with a digit per
 * machine. The first machine has the highest digit; an earlier vise has a larger one, and a bare
 * machine has 0.
 */
public final class Ranking {

  /** The largest range that a floating-point solver distinguishes reliably. */
  private static final long LARGEST = 200_000;

  private final Map<Integer, Long> rankOf = new HashMap<>();
  private final int end;
  private final long ceiling;

  private Ranking(int end, long ceiling) {
    this.end = end;
    this.ceiling = ceiling;
  }

  /** The ranking of machine {@code first} and as many following machines as fit into the range. */
  public static Ranking from(Task task, int first) {
    List<List<Integer>> digits = new ArrayList<>();
    long size = 1;
    int machine = first;
    while (machine < task.cell().machines().size()) {
      List<Integer> fits = task.ofMachine(machine);
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

  /** Index of the machine after the last one ranked. */
  public int end() {
    return end;
  }

  public long ceiling() {
    return ceiling;
  }

  public long of(int fit) {
    return rankOf.getOrDefault(fit, 0L);
  }

  public long of(Choice choice) {
    return choice.fits().stream().mapToLong(this::of).sum();
  }
}
