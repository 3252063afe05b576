package org.jawroom.standards;

import java.util.List;

/** Stock lengths of bolts, measured under the head. */
public final class BoltStock {

  /** In mm, ascending: ISO 888, from memory, no source seen. */
  public static final List<Integer> METRIC =
      List.of(
          20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160,
          180, 200);

  private BoltStock() {}
}
