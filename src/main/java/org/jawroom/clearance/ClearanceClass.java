package org.jawroom.clearance;

import java.util.List;

/** What a guard may ask of a part hangs on this alone. */
enum ClearanceClass {
  CUTTING(Situation.CUTTING),
  LOADING(Situation.LOADING),
  /** The handle while loading: a hand is there, and needs its room. */
  HAND(Situation.LOADING);

  /** All of them; not a new array each time. */
  static final List<ClearanceClass> ALL = List.of(values());

  private final Situation situation;

  ClearanceClass(Situation situation) {
    this.situation = situation;
  }

  static ClearanceClass of(Part part) {
    if (part.situation() == Situation.CUTTING) {
      return CUTTING;
    }
    return part.handle() ? HAND : LOADING;
  }

  Situation situation() {
    return situation;
  }

  /** The clearance that a guard asks of such parts. */
  long required(SweptGuard guard, long handRoom) {
    return this == HAND ? Math.max(guard.clearance(), handRoom) : guard.clearance();
  }
}
