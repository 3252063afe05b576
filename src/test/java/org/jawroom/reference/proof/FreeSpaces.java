package org.jawroom.reference.proof;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.reference.space.FreeCells;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The free space of every turn and mount at a margin, as plain rectangles, for comparing
 * independent computations of it.
 *
 * @param region closed rectangles where the mount holds
 * @param forbidden open rectangles where the margin is below the given one
 */
public record FreeSpaces(Orientation turn, String mount, List<Rect> region, List<Rect> forbidden) {

  /**
   * One entry per turn and mount whose bolts line up somewhere, over the whole opening range, hand
   * room left out.
   */
  public static List<FreeSpaces> of(Settings settings, Machine machine, Vise vise, long margin) {
    RefModel model = new RefModel(ReferencePairing.withoutHandRoom(settings), machine, vise, false);
    List<FreeSpaces> all = new ArrayList<>();
    for (RefRegion region : model.regions) {
      List<Rect> rects = new ArrayList<>();
      for (Span x : region.xs()) {
        for (Span y : region.ys()) {
          rects.add(new Rect(x.lo(), x.hi(), y.lo(), y.hi()));
        }
      }
      all.add(
          new FreeSpaces(
              region.turn(),
              region.mount().name(),
              rects,
              model.forbidden(region, model.wholeOpening(), margin)));
    }
    return all;
  }

  /** Area free by {@link FreeCells}, whose rectangles do not overlap within one region. */
  public double cellArea() {
    double area = 0;
    for (Rect rect : region) {
      List<Span> x = List.of(new Span(rect.xLo(), rect.xHi()));
      List<Span> y = List.of(new Span(rect.yLo(), rect.yHi()));
      for (Rect cell : FreeCells.of(x, y, forbidden)) {
        area += (double) (cell.xHi() - cell.xLo()) * (cell.yHi() - cell.yLo());
      }
    }
    return area;
  }
}
