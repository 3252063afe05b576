package org.jawroom.plan.model;

import java.util.List;

/**
 * What the plan may put on a table.
 *
 * @param good whether every margin, and every gap to a neighbour, is comfortable and every place
 *     settable
 * @param most the number of this kind that stand side by side on that table, at least 1; 1 for
 *     several kinds, which stand there with one vise each
 * @param opening width of the usable openings of its kinds, added up; 0 or more, in any unit that
 *     is the same in the whole cell
 * @param jaw width of the jaws, likewise
 */
public record Fit(Pick pick, boolean good, int most, long opening, long jaw) {
  public Fit {
    if (most < 1 || opening < 0 || jaw < 0) {
      throw new IllegalArgumentException("most below 1, opening or jaw below 0: " + pick);
    }
    if (most > 1 && !pick.isOfOneKind()) {
      throw new IllegalArgumentException("more than one each of several kinds: " + pick);
    }
  }

  public int machine() {
    return pick.machine();
  }

  public List<Integer> vises() {
    return pick.vises();
  }
}
