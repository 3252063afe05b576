package org.jawroom.plan.exact;

import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.jawroom.plan.model.Aim;

/**
 * What no choice exceeds.
 *
 * @param aims in lexicographic order
 * @param ceilings of each aim, valid for choices that have the ceilings of all aims before it
 * @param complete whether the best choice found is the best, the order of the tables included
 */
public record Bound(List<Aim> aims, Map<Aim, Long> ceilings, boolean complete) {
  public Bound {
    aims = List.copyOf(aims);
    ceilings = Map.copyOf(ceilings);
  }

  /**
   * The greatest value of an aim, given the values of those before it; {@link Long#MAX_VALUE} if
   * none is known.
   */
  public long ceiling(Aim aim, ToLongFunction<Aim> value) {
    for (Aim before : aims) {
      if (before == aim) {
        return ceilings.get(aim);
      }
      if (ceilings.get(before) != value.applyAsLong(before)) {
        return Long.MAX_VALUE;
      }
    }
    return Long.MAX_VALUE;
  }
}
