package org.jawroom.plan.model;

import java.util.List;

/**
 * What a table carries: one kind of vise, or one vise each of several kinds that stand side by
 * side; as indices into the lists of {@link CellModel}, from 0.
 *
 * @param vises ascending, no kind twice
 */
public record Pick(int machine, List<Integer> vises) {
  public Pick {
    vises = List.copyOf(vises);
    if (vises.isEmpty() || !vises.equals(vises.stream().distinct().sorted().toList())) {
      throw new IllegalArgumentException("no set of vises in ascending order: " + vises);
    }
  }

  /** One kind of vise. */
  public Pick(int machine, int vise) {
    this(machine, List.of(vise));
  }

  /** Whether it is one kind of vise, of which several may stand there. */
  public boolean isOfOneKind() {
    return vises.size() == 1;
  }
}
