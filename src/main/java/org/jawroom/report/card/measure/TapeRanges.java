package org.jawroom.report.card.measure;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;
import org.jawroom.report.wording.place.TapeMeasure;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.vise.Vise;

/**
 * The position of the vise from the table's left and front edges, with the range it may deviate in.
 */
public record TapeRanges(PeopleUnit unit, Machine machine, Vise vise) {

  /** Along x, then along y; the range of each is rounded inward to the displayed digits. */
  public List<TapeRange> of(Recommendation place, Optional<Play> may) {
    return new TapeWords(unit, machine, vise)
        .measures(place.handleTo(), place.x(), place.y()).stream()
            .map(measure -> range(measure, may))
            .toList();
  }

  private TapeRange range(TapeMeasure measure, Optional<Play> play) {
    boolean left = measure.edge() == Side.LEFT;
    Optional<Interval> drawnIn =
        play.flatMap(
            to ->
                left
                    ? drawnIn(measure.distance(), to.left(), to.right())
                    : drawnIn(measure.distance(), to.front(), to.rear()));
    long nearest = rounded(measure.distance(), Rounding.NEAREST);
    // The best value, rounded to the nearest, could fall just outside the range.
    long best =
        drawnIn.map(range -> Math.min(Math.max(nearest, range.lo()), range.hi())).orElse(nearest);
    return new TapeRange(
        measure.what(),
        "from the table's " + measure.edge().word() + " edge",
        // Where no step of the tape lies within the range, only a finer figure is safe.
        play.isPresent() && drawnIn.isEmpty() ? fine(measure.distance()) : figure(best),
        play.map(
            any ->
                drawnIn
                    .filter(range -> range.lo() < range.hi())
                    .map(this::words)
                    .orElse("no play")));
  }

  private Optional<Interval> drawnIn(long best, long less, long more) {
    long lo = rounded(best - less, Rounding.UP);
    long hi = rounded(best + more, Rounding.DOWN);
    return lo <= hi ? Optional.of(Interval.of(lo, hi)) : Optional.empty();
  }

  private String words(Interval range) {
    // Both ends beyond the edge: the word appears once, the farther end first.
    return range.hi() < 0
        ? plain(range.lo()) + " to " + figure(range.hi())
        : figure(range.lo()) + " to " + figure(range.hi());
  }

  private String figure(long distance) {
    return plain(distance) + (distance < 0 ? " beyond" : "");
  }

  private long rounded(long length, Rounding rounding) {
    return tape().rounded(length, rounding);
  }

  private TapeFigure tape() {
    return new TapeFigure(unit);
  }

  private String fine(long distance) {
    return unit.fine(Math.abs(distance), Rounding.NEAREST) + (distance < 0 ? " beyond" : "");
  }

  /** Formats a rounded length without its sign. */
  private String plain(long distance) {
    return tape().text(Math.abs(distance), Rounding.NEAREST);
  }
}
