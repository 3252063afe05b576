package org.jawroom.reference.agree;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.solve.ReferenceOutcome.Limiting;
import org.jawroom.reference.solve.ReferenceOutcome.Place;

/** Puts the values that each solver reports of a placement and its limit under common names. */
public final class PlaceValues {
  private PlaceValues() {}

  /** The values of the reference. */
  public static void put(Map<String, Object> values, Place place) {
    values.put("turn", place.turn());
    values.put("mount", place.mount());
    values.put("x", place.x());
    values.put("y", place.y());
    values.put("slots", place.slots());
    values.put("thread", place.thread());
    values.put("settable", settable(place.margin(), place.settable()));
    values.put("hand gap", place.handGap());
    values.put("shortfall", place.reachShortfall());
    values.put("play", place.play());
    values.put("nose", place.noseNotBelow());
    if (place.limiting().isPresent()) {
      Limiting limiting = place.limiting().get();
      values.put("margin", place.margin().getAsLong());
      values.put("guard", limiting.guard());
      values.put("part", limiting.part());
      values.put("axis", limiting.axis());
      values.put("situation", limiting.situation());
      values.put("opening", limiting.opening());
      values.put("required", limiting.required());
      values.put("tolerance", limiting.tolerance());
    }
  }

  /**
   * The values of the solver.
   *
   * @param edge whether the model determines the edge that faces the guard; on a tie it does not
   */
  public static void put(Map<String, Object> values, Recommendation place, boolean edge) {
    values.put("turn", place.handleTo());
    values.put("mount", place.mount());
    values.put("x", place.x());
    values.put("y", place.y());
    values.put("slots", place.slots());
    values.put("thread", place.thread());
    values.put("settable", settable(place.margin(), place.settable()));
    values.put("hand gap", place.handGap());
    values.put("shortfall", place.reachShortfall());
    values.put("play", place.play().map(p -> List.of(p.left(), p.right(), p.front(), p.rear())));
    values.put("nose", place.noseNotBelow());
    if (place.limit().isPresent()) {
      Limit limit = place.limit().get();
      values.put("margin", limit.margin());
      values.put("guard", limit.guard().name());
      values.put("part", limit.part().name());
      values.put("axis", limit.axis());
      values.put("situation", limit.situation());
      values.put("opening", edge ? Optional.of(limit.opening()) : Optional.empty());
      values.put("required", limit.required());
      values.put("tolerance", limit.tolerance());
    }
  }

  /** With a margin below 0 it means nothing. */
  private static Optional<Boolean> settable(OptionalLong margin, boolean settable) {
    return margin.isPresent() && margin.getAsLong() < 0 ? Optional.empty() : Optional.of(settable);
  }
}
