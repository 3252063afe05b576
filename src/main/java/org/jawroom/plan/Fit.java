package org.jawroom.plan;

import java.util.OptionalLong;

/**
 * A pairing that the plan may choose.
 *
 * @param margin in the unit of {@link org.jawroom.geometry.Length}; empty: nothing listed can be
 *     hit, which exceeds every margin
 * @param most the number of this kind that stand side by side on that table, at least 1
 * @param opening usable opening width, 0 or more, in any unit that is the same in the whole cell
 */
public record Fit(Pick pick, OptionalLong margin, int most, long opening) {
  public Fit {
    if (most < 1 || opening < 0) {
      throw new IllegalArgumentException("most below 1 or opening below 0: " + pick);
    }
  }

  int machine() {
    return pick.machine();
  }

  int vise() {
    return pick.vise();
  }

  /** The margin, with {@link Long#MAX_VALUE} for "nothing can be hit". */
  long leastMargin() {
    return margin.orElse(Long.MAX_VALUE);
  }
}
