package org.jawroom.clearance.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;

/**
 * The margin of a vise as a function of its position on the table, for one turn, one set of parts
 * and one opening range.
 */
public final class MarginField {
  private final List<Pair> pairs;
  private final Orientation turn;
  private final Interval openings;
  private final List<PairBounds> bounds;

  private MarginField(
      List<Pair> pairs, Orientation turn, Interval openings, List<PairBounds> bounds) {
    this.pairs = pairs;
    this.turn = turn;
    this.openings = openings;
    this.bounds = bounds;
  }

  public static MarginField of(List<Pair> pairs, Orientation turn, Interval openings) {
    List<PairBounds> bounds = new ArrayList<>(pairs.size());
    for (Pair pair : pairs) {
      Box part = pair.part().over(openings, turn);
      bounds.add(PairBounds.of(part, pair.guard().box(), pair.required() + pair.tolerance()));
    }
    return new MarginField(pairs, turn, openings, bounds);
  }

  /** The bounds of every pair, in order of precedence among equal margins. */
  public List<PairBounds> bounds() {
    return bounds;
  }

  /** The least margin over all pairs at (x, y); {@link Length#ENDLESS} if there is no pair. */
  public long margin(long x, long y) {
    long least = Length.ENDLESS;
    for (PairBounds pair : bounds) {
      least = Math.min(least, pair.margin(x, y));
    }
    return least;
  }

  /** The witness of the margin at (x, y); empty if there is no pair. */
  public Optional<Limit> limit(long x, long y) {
    long margin = margin(x, y);
    for (int i = 0; i < bounds.size(); i++) {
      if (bounds.get(i).margin(x, y) == margin) {
        return Optional.of(witness(pairs.get(i), x, y));
      }
    }
    return Optional.empty();
  }

  /** Every pair at (x, y) in ascending order of margin; ties keep the order of precedence. */
  public List<Limit> limits(long x, long y) {
    return pairs.stream()
        .map(pair -> witness(pair, x, y))
        .sorted(Comparator.comparingLong(Limit::margin))
        .toList();
  }

  private Limit witness(Pair pair, long x, long y) {
    return Limit.of(pair.part(), pair.guard(), pair.required(), turn, openings, x, y);
  }
}
