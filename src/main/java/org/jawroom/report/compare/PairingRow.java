package org.jawroom.report.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Situation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.wording.Finding;

/**
 * What a row of {@code pairings.csv} tells that two runs are compared by. Lengths are
 * half-nanometres, to the 0.001 mm that the file has. Names are as the file bears them.
 *
 * @param margin in the recommended place
 * @param bestMargin over the full opening range
 * @param missing blank columns as {@code table.column}; of an {@code unknown} only
 */
public record PairingRow(
    String machine,
    String vise,
    Verdict verdict,
    OptionalLong margin,
    OptionalLong bestMargin,
    Optional<Limiting> limiting,
    Optional<Usable> usable,
    List<String> missing) {

  /** What limits the recommended place. */
  public record Limiting(String guard, String part, Situation situation, JawEnd opening) {}

  /**
   * The usable opening. Rounding draws its ends in, so that one of no width at all may seem to run
   * backwards.
   */
  public record Usable(long from, long to) {

    /** Whether every opening of {@code other} is among these. */
    boolean holds(Usable other) {
      return from <= other.from && other.to <= to;
    }

    long width() {
      return to - from;
    }
  }

  public PairingRow {
    missing = List.copyOf(missing);
    if (machine.isEmpty() || vise.isEmpty()) {
      throw new IllegalArgumentException("a pairing needs a machine and a vise");
    }
  }

  Finding finding() {
    return Finding.of(verdict, bestMargin.isPresent());
  }
}
