package org.jawroom.placement;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.MarginField;
import org.jawroom.clearance.PairBounds;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;

/**
 * Where a vise may stand: the places at which its mount holds, less what its pairs forbid.
 *
 * <p>The places with margin ≥ t are the closed rectangles of the region less one open rectangle for
 * each pair (a configuration-space obstacle; Lozano-Pérez, Spatial Planning, IEEE Trans. Computers
 * C-32(2), 1983). If any is left in a window, the leftmost of them, and of these the lowest, has
 * its x at the window's left side or at the right side of an obstacle; so trying those x, and at
 * each the y's, decides. O(n²) for n pairs that reach into the window.
 */
final class FreeSpace {
  private final List<Rectangle> places;
  private final MarginField field;
  private final PairBounds[] byLowerEdge;

  FreeSpace(List<Rectangle> places, MarginField field) {
    this.places = places;
    this.field = field;
    this.byLowerEdge =
        field.bounds().stream()
            .distinct()
            .sorted(Comparator.comparingLong(PairBounds::c))
            .toArray(PairBounds[]::new);
  }

  MarginField field() {
    return field;
  }

  /** Whether (x, y) is a place of the region, whatever its margin. */
  boolean holds(long x, long y) {
    return places.stream().anyMatch(place -> place.contains(x, y));
  }

  /**
   * Some place in {@code window} with margin ≥ {@code margin}, always the same for the same
   * question.
   */
  Optional<Place> find(long margin, Window window) {
    for (Rectangle rectangle : places) {
      Place found =
          find(
              margin,
              Math.max(rectangle.x().lo(), window.xLo()),
              Math.min(rectangle.x().hi(), window.xHi()),
              Math.max(rectangle.y().lo(), window.yLo()),
              Math.min(rectangle.y().hi(), window.yHi()));
      if (found != null) {
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }

  /** No margin in {@code window} is greater than this. */
  long upperBound(Window window) {
    long most = -Length.ENDLESS;
    for (Rectangle rectangle : places) {
      long xLo = Math.max(rectangle.x().lo(), window.xLo());
      long xHi = Math.min(rectangle.x().hi(), window.xHi());
      long yLo = Math.max(rectangle.y().lo(), window.yLo());
      long yHi = Math.min(rectangle.y().hi(), window.yHi());
      if (xLo <= xHi && yLo <= yHi) {
        long bound = Length.ENDLESS;
        for (PairBounds pair : byLowerEdge) {
          // A pair's margin is convex, so it is greatest at a corner.
          bound = Math.min(bound, Math.max(pair.margin(xLo, yLo), pair.margin(xHi, yHi)));
        }
        most = Math.max(most, bound);
      }
    }
    return most;
  }

  private Place find(long t, long xLo, long xHi, long yLo, long yHi) {
    if (xLo > xHi || yLo > yHi) {
      return null;
    }
    PairBounds[] near = new PairBounds[byLowerEdge.length];
    int count = 0;
    for (PairBounds pair : byLowerEdge) {
      if (pair.f() < t
          && pair.a() - t < pair.b() + t
          && pair.a() - t < xHi
          && pair.b() + t > xLo
          && pair.c() - t < pair.d() + t
          && pair.c() - t < yHi
          && pair.d() + t > yLo) {
        near[count++] = pair;
      }
    }
    long y = lowestFree(t, xLo, yLo, yHi, near, count);
    if (y <= yHi) {
      return new Place(xLo, y);
    }
    Place leftmost = null;
    for (int i = 0; i < count; i++) {
      long x = near[i].b() + t;
      if (x <= xHi && x > xLo && (leftmost == null || x < leftmost.x())) {
        y = lowestFree(t, x, yLo, yHi, near, count);
        if (y <= yHi) {
          leftmost = new Place(x, y);
        }
      }
    }
    return leftmost;
  }

  /**
   * The lowest free y at {@code x}, from {@code yLo} on; more than {@code yHi} if there is none.
   */
  private static long lowestFree(
      long t, long x, long yLo, long yHi, PairBounds[] byLowerEdge, int count) {
    long y = yLo;
    for (int i = 0; i < count && byLowerEdge[i].c() - t < y && y <= yHi; i++) {
      PairBounds pair = byLowerEdge[i];
      if (pair.a() - t < x && x < pair.b() + t) {
        y = Math.max(y, pair.d() + t);
      }
    }
    return y;
  }
}
