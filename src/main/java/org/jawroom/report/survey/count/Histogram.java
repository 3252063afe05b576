package org.jawroom.report.survey.count;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.limits.Margins;

/**
 * Margins in bars of one width, a round number of the unit people read; 0 is always an edge. All
 * but a hundredth at either end lie in them; what lies beyond is in the first and the last bar,
 * which have one end.
 */
public record Histogram(List<Bar> bars) {

  /** Margins of {@code from} or more and less than {@code to}, in half-nanometres. */
  public record Bar(String words, long from, long to, int pairings) {}

  /** As many as are read at a glance. */
  private static final int MOST = 20;

  private static final int[] STEPS = {1, 2, 5};

  public static Histogram of(Margins margins, PeopleUnit unit) {
    if (margins.count() == 0) {
      return new Histogram(List.of());
    }
    long low = margins.quantile(1, 100);
    long high = margins.quantile(99, 100);
    long width = width(low, high, unit);
    long from = Math.floorDiv(low, width) * width;
    long to = (Math.floorDiv(high, width) + 1) * width;
    List<Bar> bars = new ArrayList<>();
    if (margins.least() < from) {
      bars.add(bar("below " + unit.brief(from, Rounding.DOWN), Long.MIN_VALUE, from, margins));
    }
    for (long edge = from; edge < to; edge += width) {
      String words =
          unit.brief(edge, Rounding.DOWN) + " to " + unit.brief(edge + width, Rounding.DOWN);
      bars.add(bar(words, edge, edge + width, margins));
    }
    if (margins.greatest() >= to) {
      bars.add(bar(unit.brief(to, Rounding.DOWN) + " or more", to, Long.MAX_VALUE, margins));
    }
    return new Histogram(bars);
  }

  private static Bar bar(String words, long from, long to, Margins margins) {
    return new Bar(words, from, to, margins.countWithin(from, to));
  }

  /** The least width of which at most {@link #MOST} reach from {@code low} to {@code high}. */
  private static long width(long low, long high, PeopleUnit unit) {
    long power = unit == PeopleUnit.INCH ? unit.length() / 20 : unit.length();
    for (; ; power *= 10) {
      for (int step : STEPS) {
        long width = step * power;
        if (Math.floorDiv(high, width) - Math.floorDiv(low, width) < MOST) {
          return width;
        }
      }
    }
  }
}
