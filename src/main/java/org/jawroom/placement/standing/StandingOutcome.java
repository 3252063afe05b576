package org.jawroom.placement.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.Standing;
import org.jawroom.shop.value.Column;

/**
 * Whether a vise is safe where it stands.
 *
 * @param pairing the vise on the machine, wherever it may stand
 * @param limit the witness of the least margin within the tolerance of the measures, over the full
 *     opening; empty off the slots and if nothing listed can be hit
 * @param usable for {@code fits} the full opening, for {@code limited} the widest with margin ≥ 0,
 *     its ends rounded inward to 0.01 mm; else empty
 * @param reachShortfall the largest within the tolerance; empty off the slots
 * @param there details of the place within the tolerance at which its mount holds, the nearest to
 *     that measured, over the usable opening, without one over the full; its least height of the
 *     nose holds anywhere within the tolerance; empty off the slots
 * @param placed the pairing as if this were its place: with the verdict {@code awkward} instead of
 *     {@code fits} if there is too little hand room, {@code no place} if it hits; empty off the
 *     slots
 * @param nearest for {@code off the slots} the nearest place at which its mount holds in that turn,
 *     if any
 * @param noseNotBelow least height of the nose above the table over the full opening, anywhere
 *     within the tolerance of the measures; empty off the slots, if not even the greatest serves,
 *     if a height of the nose is blank, and without guards that move with it
 * @param open the open readings that may have decided against it; empty if it is so for all of
 *     their values
 * @param others the other vises on the same table, each judged alone, in input order
 * @param close those of them that stand closer than the spacing
 */
public record StandingOutcome(
    Standing standing,
    SolvedPairing pairing,
    Says says,
    Optional<Limit> limit,
    Optional<Interval> usable,
    OptionalLong reachShortfall,
    Optional<Inspection> there,
    Optional<Outcome> placed,
    Optional<Place> nearest,
    OptionalLong noseNotBelow,
    List<Column> open,
    List<StandingOutcome> others,
    List<Neighbour> close) {
  public StandingOutcome {
    open = List.copyOf(open);
    others = List.copyOf(others);
    close = List.copyOf(close);
  }

  /**
   * A vise that stands closer than the spacing.
   *
   * @param gap the least within the tolerances of the measures, over both full openings; below 0
   *     where the two overlap; empty if it has no end
   * @param sure whether it is so for every value of the open readings of both
   */
  public record Neighbour(Standing standing, OptionalLong gap, boolean sure) {}

  /** The same beside others; a vise too close to one of them has a caveat. */
  StandingOutcome beside(List<StandingOutcome> besides, List<Neighbour> neighbours) {
    return new StandingOutcome(
        standing,
        pairing,
        says,
        limit,
        usable,
        reachShortfall,
        there,
        neighbours.isEmpty() ? placed : placed.map(StandingOutcome::crowded),
        nearest,
        noseNotBelow,
        open,
        besides,
        neighbours);
  }

  private static Outcome crowded(Outcome there) {
    List<Caveat> caveats = new ArrayList<>(there.caveats());
    caveats.add(Caveat.NEIGHBOUR);
    return there.at(
        there.verdict(),
        there.recommended().orElseThrow(),
        there.usableOpening(),
        caveats,
        there.checked());
  }

  /** What is said of a vise where it stands. */
  public enum Says {
    FITS("fits"),
    LIMITED("limited"),
    HITS("hits"),
    OFF_SLOTS("off the slots");

    private final String word;

    Says(String word) {
      this.word = word;
    }

    /** The word that reports use. */
    public String word() {
      return word;
    }
  }

  /** From where it stands to the recommended place. */
  public record Move(long dx, long dy, Orientation turnTo) {}

  /** Its margin; empty off the slots, if nothing listed can be hit, and if it has no end. */
  public OptionalLong margin() {
    return limit.isPresent() && Certainty.hasEnd(limit.get().margin())
        ? OptionalLong.of(limit.get().margin())
        : OptionalLong.empty();
  }

  /** The recommended place of the pairing; empty if none has margin ≥ 0. */
  public Optional<Recommendation> target() {
    return pairing
        .outcome()
        .recommended()
        .filter(to -> to.limit().isEmpty() || to.limit().get().margin() >= 0);
  }

  /**
   * How it would have to move to stand at the {@link #target}; empty if there is none, or if it
   * stands there within the tolerance of its measures.
   */
  public Optional<Move> move() {
    return target()
        .map(to -> new Move(to.x() - standing.x(), to.y() - standing.y(), to.handleTo()))
        .filter(
            move ->
                move.turnTo() != standing.place().handleTo()
                    || Math.abs(move.dx()) > standing.tolerance()
                    || Math.abs(move.dy()) > standing.tolerance());
  }
}
