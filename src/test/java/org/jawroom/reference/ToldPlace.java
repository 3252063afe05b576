package org.jawroom.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.ReferenceOutcome.Limiting;
import org.jawroom.reference.ReferenceOutcome.Place;

/** Puts the values that each solver reports of a placement and its limit under common names. */
final class ToldPlace {
  private ToldPlace() {}

  /** The values of the reference. */
  static void put(Map<String, Object> told, Place place) {
    told.put("turn", place.turn());
    told.put("mount", place.mount());
    told.put("x", place.x());
    told.put("y", place.y());
    told.put("slots", place.slots());
    told.put("shortfall", place.reachShortfall());
    told.put("play", place.play());
    told.put("nose", place.noseNotBelow());
    if (place.limiting().isPresent()) {
      Limiting limiting = place.limiting().get();
      told.put("margin", place.margin().getAsLong());
      told.put("guard", limiting.guard());
      told.put("part", limiting.part());
      told.put("axis", limiting.axis());
      told.put("situation", limiting.situation());
      told.put("opening", limiting.opening());
      told.put("required", limiting.required());
      told.put("tolerance", limiting.tolerance());
    }
  }

  /**
   * The values of the solver.
   *
   * @param edge whether the model determines the edge that faces the guard; on a tie it does not
   */
  static void put(Map<String, Object> told, Recommendation place, boolean edge) {
    told.put("turn", place.handleTo());
    told.put("mount", place.mount());
    told.put("x", place.x());
    told.put("y", place.y());
    told.put("slots", place.slots());
    told.put("shortfall", place.reachShortfall());
    told.put("play", place.play().map(p -> List.of(p.left(), p.right(), p.front(), p.rear())));
    told.put("nose", place.noseNotBelow());
    if (place.limit().isPresent()) {
      Limit limit = place.limit().get();
      told.put("margin", limit.margin());
      told.put("guard", limit.guard().name());
      told.put("part", limit.part().name());
      told.put("axis", limit.axis());
      told.put("situation", limit.situation());
      told.put("opening", edge ? Optional.of(limit.opening()) : Optional.empty());
      told.put("required", limit.required());
      told.put("tolerance", limit.tolerance());
    }
  }
}
