package org.jawroom.plan.model;

/**
 * A pairing that the plan may choose.
 *
 * @param good whether its margin is comfortable and its place settable
 * @param most the number of this kind that stand side by side on that table, at least 1
 * @param opening width of the usable opening, 0 or more, in any unit that is the same in the whole
 *     cell
 * @param jaw width of the jaws, likewise
 */
public record Fit(Pick pick, boolean good, int most, long opening, long jaw) {
  public Fit {
    if (most < 1 || opening < 0 || jaw < 0) {
      throw new IllegalArgumentException("most below 1, opening or jaw below 0: " + pick);
    }
  }

  public int machine() {
    return pick.machine();
  }

  public int vise() {
    return pick.vise();
  }
}
