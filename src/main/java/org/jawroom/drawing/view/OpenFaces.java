package org.jawroom.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.drawing.view.View.Flat;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.machine.Guard;

/**
 * The bands in which faces stand whose readings are known within bounds only: from where a face
 * stands at worst, which is where the verdict takes it to be, to where it stands at best.
 */
final class OpenFaces {

  private final View view;
  private final List<Mark> marks = new ArrayList<>();

  OpenFaces(View view) {
    this.view = view;
  }

  /** The bands found so far, each followed by its edge at worst. */
  List<Mark> marks() {
    return marks;
  }

  /** Whether the face of a guard is open. */
  static boolean isOpen(SweptGuard guard) {
    return guard.guard().filter(one -> one.gap().isOpen()).isPresent();
  }

  /** The band of a guard that fills everything beyond a taped gap. */
  void guard(String id, SweptGuard worst, List<SweptGuard> atBest) {
    Optional<Guard> row = worst.guard();
    Optional<Flat> best =
        atBest.stream()
            .filter(one -> one.guard().equals(row) && one.situation() == worst.situation())
            .map(one -> view.flat(one.box()))
            .findFirst();
    bands(id, Ink.GUARD_OPEN, view.flat(worst.box()), best);
  }

  /**
   * The bands of a part.
   *
   * @param surely what it covers whatever its open readings are
   */
  void part(String id, Flat worst, Optional<Flat> surely) {
    bands(id, Ink.PART_OPEN, worst, surely);
  }

  private void bands(String id, Ink ink, Flat worst, Optional<Flat> best) {
    Interval right = worst.right();
    Interval up = worst.up();
    if (best.isEmpty()) {
      band(id, ink, worst, worst);
      return;
    }
    Interval surelyRight = best.get().right();
    Interval surelyUp = best.get().up();
    if (surelyRight.lo() > right.lo()) {
      band(
          id + "-left",
          ink,
          new Flat(Interval.of(right.lo(), surelyRight.lo()), up),
          new Flat(Interval.of(right.lo(), right.lo()), up));
    }
    if (surelyRight.hi() < right.hi()) {
      band(
          id + "-right",
          ink,
          new Flat(Interval.of(surelyRight.hi(), right.hi()), up),
          new Flat(Interval.of(right.hi(), right.hi()), up));
    }
    if (surelyUp.lo() > up.lo()) {
      band(
          id + "-low",
          ink,
          new Flat(right, Interval.of(up.lo(), surelyUp.lo())),
          new Flat(right, Interval.of(up.lo(), up.lo())));
    }
    if (surelyUp.hi() < up.hi()) {
      band(
          id + "-high",
          ink,
          new Flat(right, Interval.of(surelyUp.hi(), up.hi())),
          new Flat(right, Interval.of(up.hi(), up.hi())));
    }
  }

  private void band(String id, Ink ink, Flat area, Flat edge) {
    marks.add(new Mark(id + "-open", "", ink, area));
    marks.add(new Mark(id + "-edge", "", Ink.OPEN_EDGE, edge));
  }
}
