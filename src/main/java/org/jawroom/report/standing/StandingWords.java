package org.jawroom.report.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingOutcome.Neighbour;
import org.jawroom.placement.standing.StandingOutcome.Says;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Standing;

/** A vise where it stands in words, lengths in the chosen unit. */
public record StandingWords(PeopleUnit unit) {

  /** How the outcome is marked; with a caveat if something must be minded. */
  public Finding finding(StandingOutcome outcome) {
    if (!outcome.open().isEmpty()) {
      return Finding.UNKNOWN;
    }
    return switch (outcome.says()) {
      case FITS -> minds(outcome).isEmpty() ? Finding.FITS : Finding.FITS_BUT;
      case LIMITED -> Finding.LIMITED;
      case HITS -> Finding.NO_PLACE;
      case OFF_SLOTS -> Finding.NO_MOUNT;
    };
  }

  /** {@code ● fits}, {@code × hits}. */
  public String signed(StandingOutcome outcome) {
    return finding(outcome).sign() + " " + says(outcome);
  }

  /** {@code fits}, {@code may hit}; in words of ASCII. */
  private static String says(StandingOutcome outcome) {
    boolean open = !outcome.open().isEmpty();
    return switch (outcome.says()) {
      case FITS, LIMITED -> outcome.says().word();
      case HITS -> open ? "may hit" : "hits";
      case OFF_SLOTS -> open ? "perhaps off the slots" : "off the slots";
    };
  }

  /** {@code plain 125 fits, 12.3 mm to spare}: for the terminal. */
  public String brief(StandingOutcome outcome) {
    List<String> close = close(outcome);
    String mind =
        !close.isEmpty()
            ? "; " + close.get(0)
            : outcome.says() == Says.FITS && !minds(outcome).isEmpty() ? " (with a caveat)" : "";
    return judged(outcome) + mind;
  }

  private String judged(StandingOutcome outcome) {
    String margin =
        outcome.margin().isPresent() && outcome.says() == Says.FITS
            ? ", "
                + unit.text(outcome.margin().getAsLong(), Rounding.DOWN)
                + " "
                + unit.word()
                + " to spare"
            : "";
    String opening = outcome.says() == Says.LIMITED ? ": " + opening(outcome).orElseThrow() : "";
    String by =
        outcome.says() == Says.HITS
            ? outcome
                .limit()
                .map(limit -> ": " + Words.limit(limit).replace(" · ", " - "))
                .orElse("")
            : "";
    return outcome.standing().vise().name() + " " + says(outcome) + margin + opening + by;
  }

  /**
   * What must be minded of a vise by those who work at another on its table: {@code plain 125 hits:
   * door - handle}, {@code plain 125 limited: keep open 0.0 to 94.0}; empty if it fits.
   */
  public static Optional<String> trouble(PeopleUnit unit, StandingOutcome other) {
    return Optional.of(other)
        .filter(one -> one.says() != Says.FITS)
        .map(one -> new StandingWords(unit).judged(one));
  }

  /** {@code keep open 0.0 to 94.0}, for a limited one. */
  public Optional<String> opening(StandingOutcome outcome) {
    return outcome
        .usable()
        .filter(open -> outcome.says() == Says.LIMITED)
        .map(open -> Words.KEEP_OPEN + new Words(unit).range(open));
  }

  /** Where it stands as a tape measures it: turn and mount, then the two measures. */
  public List<String> place(Standing standing) {
    List<String> words = new ArrayList<>();
    words.add("handle to the " + standing.place().handleTo().word() + ", " + standing.mount());
    words.addAll(tape(standing).edges(standing.place().handleTo(), standing.x(), standing.y(), 0));
    return words;
  }

  private TapeWords tape(Standing standing) {
    return new TapeWords(unit, standing.machine(), standing.vise());
  }

  /** {@code 12.5 to the right, 3.0 to the rear}; empty if it stands there or there is no place. */
  public Optional<String> move(StandingOutcome outcome) {
    return outcome
        .move()
        .map(
            move -> {
              List<String> words = new ArrayList<>();
              if (move.turnTo() != outcome.standing().place().handleTo()) {
                words.add("turn its handle to the " + move.turnTo().word());
              }
              way(move.dx(), "right", "left").ifPresent(words::add);
              way(move.dy(), "rear", "front").ifPresent(words::add);
              return String.join(", ", words);
            });
  }

  /** Whether it stands where the pairing is recommended, within the tolerance. */
  public boolean isRecommended(StandingOutcome outcome) {
    return outcome.move().isEmpty() && outcome.target().isPresent();
  }

  private Optional<String> way(long by, String ahead, String back) {
    return by == 0
        ? Optional.empty()
        : Optional.of(
            unit.brief(Math.abs(by), Rounding.NEAREST) + " to the " + (by > 0 ? ahead : back));
  }

  /** What must be minded, and for one that is not held where it would be. */
  public List<String> minds(StandingOutcome outcome) {
    Outcome pairing = outcome.pairing().outcome();
    List<String> minds = new ArrayList<>();
    opening(outcome).ifPresent(minds::add);
    if (!outcome.open().isEmpty()) {
      minds.add(
          new OpenWords(unit)
              .undecided(
                  outcome.open(),
                  OpenReading.of(pairing.machine(), pairing.vise(), outcome.open())));
    }
    nearest(outcome).ifPresent(minds::add);
    minds.addAll(close(outcome));
    if (outcome.placed().isPresent()) {
      Outcome there = outcome.placed().get();
      // Which vise is too close, and by how much, is listed above.
      minds.addAll(
          new CaveatWords(unit)
              .of(
                  there.caveats().stream().filter(caveat -> caveat != Caveat.NEIGHBOUR).toList(),
                  there.inDoubt(),
                  there.recommended().orElseThrow()));
      hand(there).ifPresent(minds::add);
    } else if (!pairing.inDoubt().isEmpty()) {
      minds.add(CaveatWords.inDoubt(pairing.inDoubt()));
    }
    minds.addAll(Words.placelessMarks(pairing));
    OptionalLong shortfall = outcome.reachShortfall();
    if (shortfall.orElse(0) > 0) {
      minds.add(
          "spindle misses " + unit.brief(shortfall.getAsLong(), Rounding.UP) + " of the work");
    }
    return minds;
  }

  private Optional<String> nearest(StandingOutcome outcome) {
    if (outcome.says() != Says.OFF_SLOTS || !outcome.open().isEmpty()) {
      return Optional.empty();
    }
    Standing standing = outcome.standing();
    Optional<Place> nearest = outcome.nearest();
    return Optional.of(
        nearest
            .map(
                place ->
                    "held nearest with "
                        + String.join(
                            ", ",
                            tape(standing)
                                .edges(standing.place().handleTo(), place.x(), place.y(), 0)))
            .orElse(standing.mount() + ": no place on this table in that orientation"));
  }

  /** {@code only 2.3 from plain 160}, {@code overlaps plain 160 by 4.1}; for each too close. */
  public List<String> close(StandingOutcome outcome) {
    return outcome.close().stream().map(this::close).toList();
  }

  private String close(Neighbour neighbour) {
    String name = neighbour.standing().vise().name();
    if (neighbour.gap().isEmpty()) {
      return "how close " + name + " is rests on what is not measured";
    }
    long gap = neighbour.gap().getAsLong();
    return (neighbour.sure() ? "" : "perhaps ")
        + (gap < 0
            ? "overlaps " + name + " by " + unit.brief(-gap, Rounding.UP) + ", jaws at some opening"
            : "only " + unit.brief(gap, Rounding.DOWN) + " from " + name);
  }

  private Optional<String> hand(Outcome there) {
    return Optional.of(new CaveatWords(unit).hand(there)).filter(words -> !words.isEmpty());
  }
}
