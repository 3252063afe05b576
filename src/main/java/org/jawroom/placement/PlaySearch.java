package org.jawroom.placement;

import org.jawroom.clearance.PairBounds;
import org.jawroom.geometry.Rectangle;

/** How far the vise could go straight each way from its place. */
final class PlaySearch {
  private PlaySearch() {}

  /**
   * @param allowed the places at which its bolts stand in the slots reported and no overhang is too
   *     great
   */
  static Play from(Seat seat, Place place, Rectangle allowed) {
    long left = allowed.x().lo();
    long right = allowed.x().hi();
    long front = allowed.y().lo();
    long rear = allowed.y().hi();
    for (PairBounds pair : seat.space().field().bounds()) {
      // The open rectangle (a, b) × (c, d) is what the pair forbids, if it forbids anything.
      if (pair.f() >= 0 || pair.a() >= pair.b() || pair.c() >= pair.d()) {
        continue;
      }
      if (pair.c() < place.y() && place.y() < pair.d()) {
        if (pair.b() <= place.x()) {
          left = Math.max(left, pair.b());
        } else {
          right = Math.min(right, pair.a());
        }
      }
      if (pair.a() < place.x() && place.x() < pair.b()) {
        if (pair.d() <= place.y()) {
          front = Math.max(front, pair.d());
        } else {
          rear = Math.min(rear, pair.c());
        }
      }
    }
    return new Play(place.x() - left, right - place.x(), place.y() - front, rear - place.y());
  }
}
