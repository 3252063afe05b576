package org.jawroom.report.tally;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.report.wording.Finding;

/**
 * Statistics over pairings, added one by one: counts for each verdict, the best pairing, the range
 * of margins.
 */
public final class Tally {
  private final Comparator<PairingMerit> order;
  private final long[] counts = new long[Finding.values().length];
  private long least = Long.MAX_VALUE;
  private long greatest = Long.MIN_VALUE;
  private Advice best;
  private PairingMerit merit;
  private long bestIndex;
  private Advice most;
  private int mostOnTable;
  private long total;
  private long clear;

  /**
   * Starts without any pairing.
   *
   * @param order which pairing is the best: the greatest, of equals the first
   */
  Tally(Comparator<PairingMerit> order) {
    this.order = order;
  }

  /**
   * Adds the pairing with that index.
   *
   * @param its its merit, if it has any
   */
  void add(long index, Advice pairing, Finding finding, Optional<PairingMerit> its) {
    total++;
    counts[finding.ordinal()]++;
    OptionalLong made = pairing.outcome().margin();
    if (made.isPresent()) {
      long margin = made.getAsLong();
      least = Math.min(least, margin);
      greatest = Math.max(greatest, margin);
      clear += margin >= 0 ? 1 : 0;
    }
    if (its.isPresent()) {
      keep(index, pairing, its.get());
    }
    int many = PerTable.count(pairing);
    if (many > mostOnTable) {
      most = pairing;
      mostOnTable = many;
    }
  }

  /** Adds the pairings of another tally in the same order; of equally good ones the first stays. */
  void add(Tally others) {
    total += others.total;
    clear += others.clear;
    for (int i = 0; i < counts.length; i++) {
      counts[i] += others.counts[i];
    }
    least = Math.min(least, others.least);
    greatest = Math.max(greatest, others.greatest);
    if (others.best != null) {
      keep(others.bestIndex, others.best, others.merit);
    }
    if (others.mostOnTable > mostOnTable) {
      most = others.most;
      mostOnTable = others.mostOnTable;
    }
  }

  private void keep(long index, Advice pairing, PairingMerit its) {
    if (merit == null || order.compare(its, merit) > 0) {
      best = pairing;
      merit = its;
      bestIndex = index;
    }
  }

  public long count(Finding finding) {
    return counts[finding.ordinal()];
  }

  /** The number of pairings. */
  public long total() {
    return total;
  }

  /** The number of pairings displayed with a margin of 0 or more. */
  long clear() {
    return clear;
  }

  /** The smallest of the margins, in half-nanometres; empty if no pairing has one. */
  public OptionalLong leastMargin() {
    return least > greatest ? OptionalLong.empty() : OptionalLong.of(least);
  }

  /** The largest of the margins, in half-nanometres; empty if no pairing has one. */
  public OptionalLong greatestMargin() {
    return least > greatest ? OptionalLong.empty() : OptionalLong.of(greatest);
  }

  /** The best pairing by {@link PairingMerit}. */
  public Optional<Advice> best() {
    return Optional.ofNullable(best);
  }

  /** The index of {@link #best}, if there is one. */
  public long bestIndex() {
    return bestIndex;
  }

  /** The pairing with the most vises on one table; of equals the first. */
  Optional<Advice> most() {
    return Optional.ofNullable(most);
  }
}
