package org.jawroom.placement;

import java.util.Optional;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Turn;

/**
 * The place with the largest margin.
 *
 * @param mount the name of the mount, or {@link ClampRegions#NAME}
 * @param limit what limits it; empty where nothing listed can be hit
 */
public record Roomiest(Turn handleTo, String mount, long x, long y, Optional<Limit> limit) {

  static Roomiest of(BestPlace places) {
    BestPlace.Choice choice = places.roomiest(places.bestMargin());
    Region region = choice.seat().region();
    Place place = choice.place();
    return new Roomiest(
        region.turn(),
        region.mount().map(mount -> mount.name()).orElse(ClampRegions.NAME),
        place.x(),
        place.y(),
        choice.seat().space().field().limit(place.x(), place.y()));
  }
}
