package org.jawroom.placement.pairing;

import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;

/**
 * Between which margins a pairing with open readings lies: its best margins over the full opening
 * range, without hand room.
 *
 * @param atWorst half-nanometres; empty if the pairing needs no open reading, if the margin has no
 *     end, or if nothing mounts
 * @param atBest likewise
 */
public record MarginBounds(OptionalLong atWorst, OptionalLong atBest) {

  public static final MarginBounds NONE =
      new MarginBounds(OptionalLong.empty(), OptionalLong.empty());

  static MarginBounds of(Model atWorst) {
    return atWorst.isOpen()
        ? new MarginBounds(bounded(atWorst.bestMargin()), bounded(atWorst.atBest().bestMargin()))
        : NONE;
  }

  /** A reading without end takes a margin out of all bounds of a machine. */
  private static OptionalLong bounded(OptionalLong margin) {
    return margin.isPresent() && Certainty.hasEnd(margin.getAsLong())
        ? margin
        : OptionalLong.empty();
  }
}
