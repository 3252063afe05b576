package org.jawroom.advice.merit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Settings;

/**
 * What decides whether a vise is the right one for a machine, or a machine for a vise. Pairings are
 * compared lexicographically: most pieces held; {@code fits}, {@code awkward}, {@code limited};
 * bolted before clamped; settable before not; comfortable before not; least reach shortfall; widest
 * usable opening; widest jaw; largest margin. Margin beyond {@code comfort} therefore never
 * outweighs opening or jaw. Of equals the first in input order is the best.
 *
 * @param pieces the pieces that the pairing holds; 0 without jobs
 * @param comfortable whether the margin is at least {@code comfort}
 * @param reachShortfall of the recommended placement, half-nanometres; as all lengths here
 * @param opening width of the usable opening
 * @param jaw width of the jaws
 * @param margin of the recommended placement
 */
public record PairingMerit(
    Outcome outcome,
    long pieces,
    boolean bolted,
    boolean settable,
    boolean comfortable,
    long reachShortfall,
    long opening,
    long jaw,
    long margin) {

  private static final Comparator<PairingMerit> PLACED =
      Comparator.comparingLong(PairingMerit::pieces)
          .thenComparing(merit -> merit.outcome().verdict(), Comparator.reverseOrder())
          .thenComparing(PairingMerit::bolted)
          .thenComparing(PairingMerit::settable)
          .thenComparing(PairingMerit::comfortable)
          .thenComparing(PairingMerit::reachShortfall, Comparator.reverseOrder());

  /** Compares the vises of one machine; the better is the greater. */
  public static final Comparator<PairingMerit> OF_VISES =
      PLACED
          .thenComparingLong(PairingMerit::opening)
          .thenComparingLong(PairingMerit::jaw)
          .thenComparingLong(PairingMerit::margin);

  /** Compares the machines of one vise, without the widths; the better is the greater. */
  public static final Comparator<PairingMerit> OF_MACHINES =
      PLACED.thenComparingLong(PairingMerit::margin);

  /**
   * The merit of a pairing; empty if it cannot be the best: another verdict, too heavy, no room
   * over the jaws, or held against nothing. A load or room that is not known does not rule it out.
   */
  public static Optional<PairingMerit> of(Settings settings, Outcome outcome, long pieces) {
    if (!stands(outcome) || outcome.margin().isEmpty()) {
      return Optional.empty();
    }
    Recommendation place = outcome.recommended().orElseThrow();
    return Optional.of(
        new PairingMerit(
            outcome,
            pieces,
            !place.fastening().clamped(),
            place.settable(),
            isComfortable(settings, outcome),
            place.reachShortfall(),
            outcome.usableOpening().map(Interval::length).orElse(0L),
            outcome.vise().jaws().width(),
            outcome.margin().getAsLong()));
  }

  /**
   * Whether the vise is of use on the machine: fits, awkward or limited, not too heavy for the
   * table, and its jaws pass under the spindle, as far as the tables say.
   */
  public static boolean stands(Outcome outcome) {
    return (outcome.verdict().isClear() || outcome.verdict() == Verdict.LIMITED)
        && outcome.roomOverJaws().orElse(1) > 0
        && outcome.loadLeft().filter(left -> left.signum() < 0).isEmpty();
  }

  /** Whether the margin is at least {@code comfort}; false if there is nothing to be hit. */
  public static boolean isComfortable(Settings settings, Outcome outcome) {
    return outcome.margin().isPresent() && outcome.margin().getAsLong() >= settings.comfort();
  }

  /** The outcomes that can be the best, the greatest merit first; jobs are left out. */
  public static List<Outcome> bestFirst(
      Settings settings, List<Outcome> outcomes, Comparator<PairingMerit> order) {
    return outcomes.stream()
        .flatMap(outcome -> of(settings, outcome, 0).stream())
        .sorted(order.reversed())
        .map(PairingMerit::outcome)
        .toList();
  }
}
