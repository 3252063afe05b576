package org.jawroom.report.wording;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.value.Measurand;

/** What has to be said beside the margin of a placement, lengths in the chosen unit. */
public record CaveatWords(PeopleUnit unit) {

  /** How {@link #hand} begins. */
  public static final String HANDLE_HAS = "handle has ";

  private static final int NAMED = 3;

  private static final String NOTHING_LISTED = "nothing listed to hit";

  private static final String NEIGHBOUR = "too close to a vise that stands there now";

  /** One phrase for each caveat, in order; empty for a plain fit. */
  public List<String> of(Outcome outcome) {
    if (outcome.recommended().isPresent()) {
      return of(outcome.caveats(), outcome.inDoubt(), outcome.recommended().get());
    }
    return outcome.caveats().contains(Caveat.IN_DOUBT)
        ? List.of(inDoubt(outcome.inDoubt()))
        : List.of();
  }

  /**
   * One phrase for each caveat of a place, in order.
   *
   * @param suspects the readings in doubt
   */
  public List<String> of(List<Caveat> caveats, List<Measurand> suspects, Recommendation place) {
    return caveats.stream()
        .map(caveat -> caveat == Caveat.IN_DOUBT ? inDoubt(suspects) : words(caveat, place))
        .toList();
  }

  /** {@code in doubt: checks on the machine say that rear_gap of knee mill may be wrong}. */
  public static String inDoubt(List<Measurand> suspects) {
    return "in doubt: checks on the machine say that " + suspects(suspects) + " may be wrong";
  }

  /** {@code rear_gap of knee mill or base_width of plain 160}; at most three are named. */
  public static String suspects(List<Measurand> all) {
    String named =
        all.stream()
            .limit(NAMED)
            .map(reading -> reading.reading() + " of " + reading.name())
            .collect(Collectors.joining(" or "));
    return all.size() <= NAMED ? named : named + " or " + (all.size() - NAMED) + " more";
  }

  /**
   * {@code checked on the machine: A. B., Monday}; empty if nobody did, or if another check says
   * that a reading may be wrong.
   */
  public static Optional<String> checked(Outcome outcome) {
    return outcome
        .checked()
        .filter(who -> outcome.inDoubt().isEmpty())
        .map(who -> "checked on the machine: " + who);
  }

  /**
   * {@code handle has 12.3 of room}: the gap round the handle while loading, for the verdicts that
   * do not ask for hand room; empty for the others and without a handle.
   */
  public String hand(Outcome outcome) {
    return hand(outcome, "");
  }

  /** The same with the unit: {@code handle has 12.3 mm of room}. */
  public String handInUnit(Outcome outcome) {
    return hand(outcome, " " + unit.word());
  }

  private String hand(Outcome outcome, String word) {
    OptionalLong gap = handGap(outcome);
    return gap.isPresent()
        ? HANDLE_HAS + unit.brief(gap.getAsLong(), Rounding.DOWN) + word + " of room"
        : "";
  }

  /** The gap itself, half-nanometres. */
  public static OptionalLong handGap(Outcome outcome) {
    boolean isShown = outcome.verdict() == Verdict.AWKWARD || outcome.verdict() == Verdict.LIMITED;
    return isShown
        ? outcome.recommended().map(Recommendation::handGap).orElse(OptionalLong.empty())
        : OptionalLong.empty();
  }

  /** A caveat of one or more of several vises in a row. */
  public static String ofRow(Caveat caveat) {
    return switch (caveat) {
      case NOTHING_LISTED -> NOTHING_LISTED;
      case HEADS_LEFT_OUT -> "heads left out";
      case OVERHANG -> "a base overhangs the table by more than a quarter of it";
      case IN_DOUBT -> "in doubt";
      case NOT_SETTABLE -> "no room to tap each square";
      case NEIGHBOUR -> NEIGHBOUR;
    };
  }

  private String words(Caveat caveat, Recommendation place) {
    return switch (caveat) {
      case NOTHING_LISTED -> NOTHING_LISTED;
      case HEADS_LEFT_OUT ->
          "heads left out: "
              + (place.noseNotBelow().isPresent()
                  ? "nose not below " + unit.brief(place.noseNotBelow().getAsLong(), Rounding.UP)
                  : "no nose height known to clear them");
      case OVERHANG ->
          place.overhang().isPresent()
              ? "base overhangs the table by "
                  + unit.brief(place.overhang().getAsLong(), Rounding.UP)
                  + ", more than a quarter of it"
              : "how far the base overhangs the table is not known";
      case IN_DOUBT -> throw new IllegalArgumentException(caveat + " is no matter of a place");
      case NOT_SETTABLE -> "no room to tap it square";
      case NEIGHBOUR -> NEIGHBOUR;
    };
  }
}
