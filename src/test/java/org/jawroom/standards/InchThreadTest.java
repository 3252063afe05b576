package org.jawroom.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InchThreadTest {

  /** 3/8 in is 9.525 mm, 1/2 in 12.7 mm, 5/8 in 15.875 mm. */
  @ParameterizedTest
  @CsvSource({
    "8, 5/16-18",
    "10, 3/8-16",
    "12, 3/8-16",
    "16, 5/8-11",
    "20, 3/4-10",
    "24, 3/4-10",
    "30, 1-8",
    "36, 1-1/4-7",
    "48, 1-1/2-6",
  })
  void standInFor_metricThread_isTheThickestNotThicker(int thread, String name) {
    assertEquals(
        Optional.of(name), InchThread.standInFor(thread * Length.MM).map(InchThread::name));
  }

  /** 1/4 in is 6.35 mm. */
  @ParameterizedTest
  @CsvSource({"4", "5", "6"})
  void standInFor_thinnerThanTheThinnest_isNone(int thread) {
    assertEquals(Optional.empty(), InchThread.standInFor(thread * Length.MM));
  }

  @Test
  void standInFor_limit_isIncludedAndBelowNot() {
    long half = Length.INCH / 2;
    assertEquals("1/2-13", InchThread.standInFor(half).orElseThrow().name());
    assertEquals("3/8-16", InchThread.standInFor(half - 1).orElseThrow().name());
  }

  /** No thread of DIN 508 gets a stud thicker than itself. */
  @Test
  void standInFor_everyNut_isNeverThicker() {
    for (TNut nut : TNut.DIN_508) {
      long d = nut.thread() * Length.MM;
      assertTrue(InchThread.standInFor(d).stream().allMatch(stud -> stud.diameter() <= d));
    }
  }

  /**
   * Proof stress of SAE J429 grade 5, transcribed: 85 000 psi to 1 in, 74 000 above; stress area
   * 0.7854 (D − 0.9743 / n)² (ASME B1.1, from memory). The standard rounds loads to three figures.
   */
  @Test
  void proofLoad_everyThread_isAreaTimesProofStress() {
    for (InchThread thread : InchThread.B5_1M) {
      double d = thread.sixteenths() / 16.0 - 0.9743 / thread.perInch();
      double stress = thread.sixteenths() <= 16 ? 85_000 : 74_000;
      assertEquals(0.7854 * d * d * stress, thread.proofLoad(), 0.01 * thread.proofLoad());
    }
  }

  /** By hand: 0.15 × 0.75 × 6600 lbf × 3/8 in = 278.4 lbf in = 23.2 lbf ft. */
  @Test
  void startingTorque_threeEighths_isRoundedDown() {
    assertEquals(23, InchThread.standInFor(12 * Length.MM).orElseThrow().startingTorque());
  }

  /** T-bolts of the throats of ANSI/ASME B5.1M-1985, transcribed: each is too thick. */
  @ParameterizedTest
  @CsvSource({
    "282, 1/4-20",
    "344, 5/16-18",
    "438, 3/8-16",
    "562, 1/2-13",
    "688, 5/8-11",
    "812, 3/4-10",
    "1062, 1-8",
    "1312, 1-1/4-7",
    "1562, 1-1/2-6",
  })
  void notCoveredBy_throatOfTheSeries_hasItsOwnBolt(int mils, String bolt) {
    long slot = mils * (Length.INCH / 1000);
    List<String> names = notCovered(TNut.boltFor(slot).orElseThrow(), slot);
    assertEquals(bolt, names.get(names.size() - 1));
  }

  /** In between the two series, 5/8 in and 14 mm, and at the limit. */
  @Test
  void notCoveredBy_m12_isHalfAnInchAndNotLess() {
    assertEquals(List.of("1/2-13"), notCovered(12 * Length.MM, 5 * Length.INCH / 8));
    assertEquals(List.of("1/2-13"), notCovered(12 * Length.MM, 14 * Length.MM));
    assertEquals(List.of(), notCovered(Length.INCH / 2, 5 * Length.INCH / 8));
    assertEquals(List.of("1/2-13"), notCovered(Length.INCH / 2 - 1, 5 * Length.INCH / 8));
  }

  private static List<String> notCovered(long d, long slot) {
    return InchThread.notCoveredBy(d, slot).stream().map(InchThread::name).toList();
  }
}
