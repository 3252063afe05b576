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
   * Type 1 of Hyndman and Fan (The American Statistician 50 (4), 1996, p. 363), which the library
   * calls R_1. Sixty-fourths, which doubles hold exactly.
   */
  @Test
  void quantile_ofRandomMargins_isTheLibrarysType1() {
    Random lot = new Random(50);
    for (int n = 1; n <= 200; n++) {
      double[] values = new double[n];
      Margins margins = new Margins();
      for (int i = 0; i < n; i++) {
        long margin = lot.nextInt(4_000_000) - 2_000_000L;
        values[i] = margin;
        margins.add(margin);
      }
      Percentile library = new Percentile().withEstimationType(EstimationType.R_1);
      for (int part = 1; part < 64; part++) {
        assertEquals(
            library.evaluate(values, part * 100.0 / 64),
            margins.quantile(part, 64),
            part + " of 64 of " + Arrays.toString(values));
      }
    }
  }

  /** The definition itself: below, at and above k of n. */
  @Test
  void quantile_atKOfN_isTheKth() {
    Margins margins = new Margins();
    for (long margin : new long[] {70, -30, 10, 50, -10, 30}) {
      margins.add(margin);
    }
    long[] rising = {-30, -10, 10, 30, 50, 70};
    for (int k = 1; k <= 6; k++) {
      assertEquals(rising[k - 1], margins.quantile(k, 6));
      assertEquals(rising[k - 1], margins.quantile(1000 * k - 1, 6000));
      assertEquals(rising[Math.min(k, 5)], margins.quantile(1000 * Math.min(k, 5) + 1, 6000));
    }
    assertEquals(-30, margins.quantile(0, 1));
    assertEquals(70, margins.quantile(1, 1));
    assertEquals(10, margins.median());
  }

  @Test
  void median_betweenTwo_isTheSmaller() {
    Margins margins = new Margins();
    margins.add(-1);
    margins.add(-2);
    assertEquals(-2, margins.median());
    margins.add(3);
    assertEquals(-1, margins.median());
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
