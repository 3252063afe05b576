package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.reference.model.RefPair.Field;
import org.jawroom.reference.space.FreeCells;
import org.jawroom.reference.space.Rect;

/**
 * Positions of one turn and mount over one opening range: a region less open rectangles.
 *
 * @param blocked the rectangles, whatever the margin there
 * @param fields the margins of all pairs; only those that are nowhere above another one matter
 */
public record RefArea(RefRegion region, List<Rect> blocked, List<Field> fields) {

  /** Closed rectangles that make up all positions with a margin of at least {@code t}. */
  public List<Rect> cells(long t) {
    return FreeCells.of(region.xs(), region.ys(), below(t));
  }

  /** Whether no position has a margin of at least {@code t}. */
  public boolean isEmpty(long t) {
    return FreeCells.isEmpty(region.xs(), region.ys(), below(t));
  }

  private List<Rect> below(long t) {
    List<Rect> rects = new ArrayList<>(blocked);
    for (Field field : fields) {
      Rect rect = field.below(t);
      if (rect != null) {
        rects.add(rect);
      }
    }
    return rects;
  }

  /** The same in another region. */
  public RefArea in(RefRegion other) {
    return new RefArea(other, blocked, fields);
  }
}
