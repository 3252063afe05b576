package org.jawroom.standards;

import java.util.Map;
import java.util.OptionalLong;

/**
 * The short formula T = K F d for a bolt of class 8.8, with preload F and nut factor K, as several
 * handbooks print it (citing Shigley).
 */
public final class Tightening {

  /** For a joint that is undone again: three quarters of the proof load (citing Shigley). */
  static final int SHARE_PERCENT = 75;

  /**
   * K in hundredths: the lower end of the values printed for oiled steel (0.15 to 0.20), so that
   * the preload does not exceed its target; a drier thread yields less.
   */
  static final int OILED = 15;

  /**
   * Thread in mm to proof load in N, coarse thread, class 8.8: ISO 898-1 as several tables reprint
   * it. Those tables lack other threads.
   */
  static final Map<Integer, Integer> PROOF_LOAD_8_8 =
      Map.of(
          8, 21_200, 10, 33_700, 12, 48_900, 14, 66_700, 16, 91_000, 18, 115_000, 20, 147_000, 22,
          182_000, 24, 212_000);

  private Tightening() {}

  /**
   * The recommended starting torque in whole N m, rounded down; empty for a thread without a proof
   * load here.
   */
  public static OptionalLong startingTorque(int thread) {
    return torque(thread, SHARE_PERCENT, OILED);
  }

  /** The torque for a preload of that percentage of the proof load, and K in hundredths. */
  static OptionalLong torque(int thread, int sharePercent, int nutFactor) {
    Integer proof = PROOF_LOAD_8_8.get(thread);
    return proof == null
        ? OptionalLong.empty()
        // Divides by percent, by hundredths of K, and by mm per m.
        : OptionalLong.of((long) proof * sharePercent * nutFactor * thread / (100L * 100 * 1000));
  }
}
