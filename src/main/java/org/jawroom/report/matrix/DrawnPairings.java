package org.jawroom.report.matrix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;

/**
 * Selects the pairings to draw if not all can be drawn. Equal shares go to those that fit or are
 * awkward with the least margin, those of limited opening, those without a place that miss by the
 * least, and those to be measured again; an unused share goes to the other groups.
 */
final class DrawnPairings {
  static final DrawnPairings NONE = new DrawnPairings(List.of(), 0);

  private final List<Outcome> outcomes;
  private final int all;
  private final Map<Integer, Integer> order = new LinkedHashMap<>();

  /**
   * @param most the largest number to draw
   */
  DrawnPairings(List<Outcome> outcomes, int most) {
    this.outcomes = outcomes;
    List<Integer> drawable =
        IntStream.range(0, outcomes.size())
            .filter(i -> outcomes.get(i).recommended().isPresent())
            .boxed()
            .toList();
    this.all = drawable.size();
    List<Integer> chosen = all <= most ? drawable : chosen(drawable, most);
    chosen.stream().sorted().forEach(index -> order.put(index, order.size()));
  }

  /** The indices of the selected pairings in input order, each with its number from 0. */
  Map<Integer, Integer> order() {
    return order;
  }

  /** The number of pairings that have a place to draw. */
  int all() {
    return all;
  }

  private List<Integer> chosen(List<Integer> drawable, int most) {
    List<List<Integer>> groups =
        List.of(
            sorted(drawable, Verdict.FITS, i -> margin(i)),
            sorted(drawable, Verdict.AWKWARD, i -> margin(i)),
            sorted(drawable, Verdict.LIMITED, i -> i),
            sorted(drawable, Verdict.NO_PLACE, i -> -margin(i)),
            sorted(drawable, Verdict.MEASURE, i -> -margin(i)));
    List<Integer> chosen = new ArrayList<>();
    for (int rank = 0; chosen.size() < most; rank++) {
      for (List<Integer> group : groups) {
        if (rank < group.size() && chosen.size() < most) {
          chosen.add(group.get(rank));
        }
      }
    }
    return chosen;
  }

  private List<Integer> sorted(
      List<Integer> drawable, Verdict verdict, ToLongFunction<Integer> key) {
    return drawable.stream()
        .filter(i -> outcomes.get(i).verdict() == verdict)
        .sorted(Comparator.comparingLong(key))
        .toList();
  }

  /** The margin of the limiting pair in the recommended place; unbounded if no guard is listed. */
  private long margin(int index) {
    return outcomes
        .get(index)
        .recommended()
        .flatMap(Recommendation::limit)
        .map(Limit::margin)
        .orElse(Long.MAX_VALUE);
  }
}
