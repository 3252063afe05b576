package org.jawroom.report.explain;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.MarginBounds;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;

/** The verdict, why it is so, and what keeps a clear place from being a plain fit. */
record ExplainVerdict(ExplainFacts facts) {

  /** {@code fits, with cautions: …}: the word that people read everywhere, then what it means. */
  String sentence() {
    Outcome outcome = facts.outcome();
    String caveats = outcome.caveats().isEmpty() ? "" : ", with cautions";
    return outcome.verdict().code() + caveats + ": " + meaning(outcome) + ".";
  }

  private String meaning(Outcome outcome) {
    return switch (outcome.verdict()) {
      case FITS ->
          outcome.caveats().contains(Caveat.NOTHING_LISTED)
              ? "nothing is listed that it could hit; look before you trust it"
              : "nothing listed is hit, jaws closed to fully open (bare vise, no tool or part)";
      case AWKWARD -> "nothing listed is hit, but " + hand(outcome);
      case MEASURE ->
          "it fits only if the readings are better than their tolerances; measure again"
              + (outcome.usableOpening().isPresent()
                  ? ". As they are, only with the jaws " + range(outcome) + " open"
                  : "");
      case LIMITED ->
          "nothing listed is hit while the jaws stay "
              + range(outcome)
              + " open"
              + outcome.bestMargin().stream()
                  .mapToObj(best -> "; over the full opening the best margin is " + fine(best))
                  .findFirst()
                  .orElse("");
      case NO_PLACE ->
          outcome.recommended().isPresent()
              ? "it can be fastened, but hits something or comes too near wherever it stands"
              : "it hits something or comes too near wherever it stands";
      case NO_MOUNT ->
          "neither bolts nor clamps hold it on this table in any allowed direction of the handle";
      case UNKNOWN -> open().undecided(outcome.missing(), outcome.openReadings());
    };
  }

  private String range(Outcome outcome) {
    return outcome
        .usableOpening()
        .map(
            open ->
                brief(open.lo(), Rounding.UP)
                    + " to "
                    + brief(open.hi(), Rounding.DOWN)
                    + " "
                    + unit().word())
        .orElseThrow();
  }

  /** The room that a hand has around the handle. */
  private String hand(Outcome outcome) {
    return outcome
        .recommended()
        .map(Recommendation::handGap)
        .filter(gap -> gap.isPresent())
        .map(
            gap ->
                "the handle has only "
                    + fine(gap.getAsLong())
                    + " "
                    + unit().word()
                    + " of room while loading, before tolerances; a hand wants "
                    + brief(facts.settings().handRoom(), Rounding.UP)
                    + " after them")
        .orElse("the handle leaves less room than a hand wants");
  }

  /** {@code Margin 0.5 mm at the place below: screw rear to rear cover (…)}; empty without one. */
  Optional<String> margin() {
    Outcome outcome = facts.outcome();
    return outcome
        .recommended()
        .flatMap(
            place ->
                place
                    .limit()
                    .map(
                        limit ->
                            "Margin at the place below"
                                + (outcome.verdict() == Verdict.LIMITED
                                    ? ", jaws within that range: "
                                    : ": ")
                                + fine(limit.margin())
                                + " "
                                + unit().word()
                                + ", "
                                + where(limit, place)));
  }

  private String where(Limit limit, Recommendation place) {
    Outcome outcome = facts.outcome();
    return WhereWords.pair(limit)
        + " ("
        + new WhereWords(unit(), outcome.machine(), outcome.vise()).of(limit, place.openings())
        + ")";
  }

  /**
   * For an {@code unknown} the margins between which it lies, for another that needs open readings
   * that it holds for all their values; else empty.
   */
  Optional<String> bounds() {
    Outcome outcome = facts.outcome();
    if (outcome.verdict() == Verdict.UNKNOWN) {
      return margins(outcome.bounds());
    }
    return Optional.of(outcome.openReadings())
        .filter(readings -> !readings.isEmpty())
        .map(readings -> "That holds " + open().whatever(readings) + ".");
  }

  private Optional<String> margins(MarginBounds bounds) {
    Optional<String> margins =
        open()
            .margins(bounds)
            .map(both -> both + " " + unit().word() + ", every open reading at worst and at best")
            .or(() -> margin(bounds.atBest(), "at best"))
            .or(() -> margin(bounds.atWorst(), "at worst"));
    return margins.map(words -> "Best margin " + words + "; hand room not counted.");
  }

  private Optional<String> margin(OptionalLong margin, String how) {
    return margin.isPresent()
        ? Optional.of(
            open().margin(margin) + " " + unit().word() + " with every open reading " + how)
        : Optional.empty();
  }

  private OpenWords open() {
    return new OpenWords(unit());
  }

  /** What to mind before trusting the verdict, the most serious first; one line each. */
  List<String> cautions() {
    Outcome outcome = facts.outcome();
    List<String> cautions = new ArrayList<>();
    if (outcome.caveats().contains(Caveat.IN_DOUBT)) {
      cautions.add(
          "in doubt: gaps found on the machine say that "
              + CaveatWords.suspects(outcome.inDoubt())
              + " may be wrong; see jawroom reconcile");
    }
    outcome
        .loadLeft()
        .filter(left -> left.signum() < 0)
        .ifPresent(
            left ->
                cautions.add(
                    "too heavy for the table by "
                        + JobWords.kilograms(left.negate(), RoundingMode.CEILING)
                        + " kg"));
    if (outcome.roomOverJaws().orElse(1) <= 0) {
      cautions.add("no room between the jaws and the spindle nose at its highest");
    }
    if (outcome.shortestToolTooShort()) {
      cautions.add("the shortest tool does not clear the vise's bed");
    }
    outcome
        .vise()
        .swivel()
        .ifPresent(
            swivel ->
                cautions.add(
                    "jaws at "
                        + swivel.degrees()
                        + " degrees: what turns is judged over the "
                        + (outcome.verdict() == Verdict.LIMITED ? "opening shown" : "full opening")
                        + ", by strips that may"
                        + " claim up to "
                        + brief(TurnedRectangle.STRIP, Rounding.UP)
                        + " "
                        + unit().word()
                        + " too much; room to tap it square is computed at that angle, too: how it"
                        + " clears with its jaws square is judged as "
                        + swivel.of()));
    outcome
        .recommended()
        .ifPresent(place -> outcome.caveats().forEach(caveat -> add(caveat, place, cautions)));
    if (outcome.verdict() != Verdict.NO_PLACE) {
      facts.explanation().reachShort().ifPresent(sides -> reach(sides, cautions));
    }
    return cautions;
  }

  /** Nothing for {@code NOTHING_LISTED}, which the sentence says, nor for a doubt, listed first. */
  private void add(Caveat caveat, Recommendation place, List<String> cautions) {
    switch (caveat) {
      case NOTHING_LISTED, IN_DOUBT -> {}
      case HEADS_LEFT_OUT ->
          cautions.add(
              "what goes up and down with the head counts while loading only; "
                  + (place.noseNotBelow().isPresent()
                      ? "keep the nose "
                          + brief(place.noseNotBelow().getAsLong(), Rounding.UP)
                          + " or more above the table"
                      : "how low the nose may come is not known"));
      case OVERHANG ->
          cautions.add(
              place.overhang().isPresent()
                  ? "its base hangs "
                      + brief(place.overhang().getAsLong(), Rounding.UP)
                      + " over a table edge, more than a quarter of its length"
                  : "how far its base hangs over a table edge is not known");
      case NOT_SETTABLE ->
          cautions.add(
              "no room to tap it square there: it needs "
                  + brief(facts.settings().tapRoom(), Rounding.UP)
                  + " of play each way");
      case NEIGHBOUR -> cautions.add("too close to another vise that stands on the table now");
    }
  }

  private void reach(Sides<Long> sides, List<String> cautions) {
    List<String> words = new ArrayList<>();
    for (Side side : Side.values()) {
      if (sides.get(side) > 0) {
        words.add(
            brief(sides.get(side), Rounding.UP)
                + (side == Side.FRONT || side == Side.REAR ? " at the " : " on the ")
                + side.word());
      }
    }
    if (!words.isEmpty()) {
      cautions.add(
          "the spindle does not reach all between the jaws: it misses " + String.join(", ", words));
    }
  }

  private PeopleUnit unit() {
    return facts.unit();
  }

  private String fine(long length) {
    return unit().fine(length, Rounding.DOWN);
  }

  private String brief(long length, Rounding rounding) {
    return unit().brief(length, rounding);
  }
}
