package org.jawroom.report.rows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.placement.pairing.Verdict;

/**
 * The columns of a row of {@code pairings.csv} that a comparison uses. Lengths are half-nanometres,
 * to the 0.001 mm of the file. Names are as in the file.
 *
 * @param margin in the recommended place
 * @param bestMargin in the roomiest place, over the full opening range
 * @param settable whether the vise can be tapped square there; empty where its margin is negative
 *     and in reports of earlier versions
 * @param missing blank columns as {@code table.column}; only for {@code unknown}
 */
public record PairingRow(
    String machine,
    String vise,
    Verdict verdict,
    OptionalLong margin,
    OptionalLong bestMargin,
    Optional<Limiting> limiting,
    Optional<Usable> usable,
    Optional<Boolean> settable,
    List<String> missing) {

  /** What limits the recommended place. */
  public record Limiting(String guard, String part, Situation situation, JawEnd opening) {}

  /**
   * The usable opening, both ends included. Its ends are rounded inward, so a range without width
   * may have {@code from > to}.
   */
  public record Usable(long from, long to) {

    /** Whether this range contains every opening of {@code other}. */
    public boolean holds(Usable other) {
      return from <= other.from && other.to <= to;
    }

    public long width() {
      return to - from;
    }
  }

  public PairingRow {
    missing = List.copyOf(missing);
    if (machine.isEmpty() || vise.isEmpty()) {
      throw new IllegalArgumentException("machine or vise name is empty");
    }
  }

  /** Whether it fits because nothing was listed that it could hit. */
  public boolean hasNothingListed() {
    return verdict.isClear() && margin.isEmpty();
  }
}
