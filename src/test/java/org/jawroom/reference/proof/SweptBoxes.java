package org.jawroom.reference.proof;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * One turn and mount of a pairing as plain boxes, for independent search algorithms.
 *
 * @param places closed rectangles in which the bolts hold
 * @param pairs the pairs that must stay clear, in both situations
 */
public record SweptBoxes(Orientation turn, List<Rect> places, List<Pair> pairs) {

  /**
   * A part and a guard's sweep; the part's limits are in the vise frame.
   *
   * @param loClosed its u limits at the least opening, then at the greatest
   * @param gapZ the gap between the two along z
   * @param need required clearance without hand room, plus both tolerances
   */
  public record Pair(
      long loClosed,
      long hiClosed,
      long loOpen,
      long hiOpen,
      Span v,
      Span guardX,
      Span guardY,
      long gapZ,
      long need) {}

  /**
   * Every turn and mount whose bolts line up somewhere.
   *
   * @param exactly whether every tolerance is taken as 0
   */
  public static List<SweptBoxes> of(
      Settings settings, Machine machine, Vise vise, boolean exactly) {
    RefModel model =
        new RefModel(ReferencePairing.withoutHandRoom(settings), machine, vise, exactly);
    List<SweptBoxes> all = new ArrayList<>();
    for (RefRegion region : model.regions) {
      List<Rect> places = new ArrayList<>();
      for (Span x : region.xs()) {
        for (Span y : region.ys()) {
          places.add(new Rect(x.lo(), x.hi(), y.lo(), y.hi()));
        }
      }
      List<Pair> pairs = new ArrayList<>();
      for (RefPair pair : model.pairs(region.mount())) {
        RefPart part = pair.part();
        pairs.add(
            new Pair(
                part.loClosed(),
                part.hiClosed(),
                part.loOpen(),
                part.hiOpen(),
                part.v(),
                pair.block().x(),
                pair.block().y(),
                pair.zGap(),
                pair.need()));
      }
      all.add(new SweptBoxes(region.turn(), places, pairs));
    }
    return all;
  }
}
