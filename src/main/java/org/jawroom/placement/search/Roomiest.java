package org.jawroom.placement.search;

import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.Place;

/**
 * A placement and the witness of its margin; usually the placement with the largest margin.
 *
 * @param mount the name of the mount
 * @param limit empty if nothing listed can be hit
 */
public record Roomiest(Orientation handleTo, String mount, long x, long y, Optional<Limit> limit) {

  public static Roomiest of(BestPlace places) {
    return of(places.roomiest());
  }

  public static Roomiest of(BestPlace.Choice choice) {
    Region region = choice.seat().region();
    Place place = choice.place();
    return new Roomiest(
        region.turn(),
        region.fastening().name(),
        place.x(),
        place.y(),
        choice.seat().space().limit(place, choice.margin()));
  }
}
