package org.jawroom.report.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;

/** Quantiles against a general-purpose library of statistics; counts against plain loops. */
class MarginsTest {

  /**
   * Type 6 of Hyndman and Fan (The American Statistician 50 (4), 1996, p. 363: p(k) = k / (n + 1)),
   * which the library calls R_6; a half-nanometre may be lost in rounding down.
   */
  @Test
  void quantile_ofRandomMargins_isTheLibrarysType6RoundedDown() {
    Random lot = new Random(50);
    for (int n = 1; n <= 60; n++) {
      double[] values = new double[n];
      Margins margins = new Margins();
      for (int i = 0; i < n; i++) {
        long margin = lot.nextInt(4_000_000) - 2_000_000L;
        values[i] = margin;
        margins.add(margin);
      }
      Percentile library = new Percentile().withEstimationType(EstimationType.R_6);
      for (int percent = 1; percent < 100; percent++) {
        double exact = library.evaluate(values, percent);
        // Far below 2^53, so that doubles are off by much less than a thousandth.
        assertEquals(
            Math.floor(exact + 1e-3),
            margins.quantile(percent, 100),
            percent + " % of " + Arrays.toString(values));
      }
    }
  }

  /** The definition itself: k of n values in rising order stands at k / (n + 1). */
  @Test
  void quantile_atKOfNPlusOne_isTheKth() {
    Margins margins = new Margins();
    for (long margin : new long[] {70, -30, 10, 50, -10, 30}) {
      margins.add(margin);
    }
    long[] rising = {-30, -10, 10, 30, 50, 70};
    for (int k = 1; k <= 6; k++) {
      assertEquals(rising[k - 1], margins.quantile(k, 7));
    }
    assertEquals(-30, margins.quantile(1, 100));
    assertEquals(70, margins.quantile(99, 100));
    assertEquals(20, margins.median());
  }

  @Test
  void median_betweenTwo_isRoundedTowardLess() {
    Margins margins = new Margins();
    margins.add(-1);
    margins.add(-2);
    assertEquals(-2, margins.median());
    margins.add(3);
    margins.add(0);
    assertEquals(-1, margins.median());
  }

  @Test
  void countWithin_anyBounds_isThePlainCount() {
    Random lot = new Random(5);
    Margins margins = new Margins();
    long[] all = lot.longs(500, -50, 50).toArray();
    Arrays.stream(all).forEach(margins::add);
    for (long from = -52; from < 52; from += 3) {
      long low = from;
      long high = from + 7;
      assertEquals(
          Arrays.stream(all).filter(one -> one >= low && one < high).count(),
          margins.countWithin(low, high));
    }
    assertEquals(Arrays.stream(all).min().getAsLong(), margins.least());
    assertEquals(Arrays.stream(all).max().getAsLong(), margins.greatest());
  }

  @Test
  void none_hasNoQuantile() {
    assertThrows(IllegalStateException.class, () -> new Margins().median());
    assertEquals(0, new Margins().countWithin(Long.MIN_VALUE, Long.MAX_VALUE));
  }
}
