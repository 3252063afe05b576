package org.jawroom.clearance.gap;

import java.util.List;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;

/** Classes of parts for which a guard requires the same clearance. */
public enum ClearanceClass {
  CUTTING(Situation.CUTTING),
  LOADING(Situation.LOADING),
  /** The handle while loading: a hand works there, so hand room is required. */
  HAND(Situation.LOADING);

  /** All classes, without allocating an array. */
  public static final List<ClearanceClass> ALL = List.of(values());

  private final Situation situation;

  ClearanceClass(Situation situation) {
    this.situation = situation;
  }

  public static ClearanceClass of(Part part) {
    if (part.situation() == Situation.CUTTING) {
      return CUTTING;
    }
    return part.handle() ? HAND : LOADING;
  }

  public Situation situation() {
    return situation;
  }

  /** The clearance that a guard requires of parts of this class. */
  public long required(SweptGuard guard, long handRoom) {
    return this == HAND ? Math.max(guard.clearance(), handRoom) : guard.clearance();
  }
}
