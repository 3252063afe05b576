package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.MissWords;
import org.jawroom.report.wording.place.WhereWords;

/**
 * The section on the orientations and mounts not chosen: the best that each can do, or why it holds
 * nowhere.
 */
record ExplainChoices(ExplainFacts facts) {

  void to(ExplainLines lines) {
    List<String> words =
        words(facts.explanation().others(), facts.explanation().misses(), this::fully);
    if (!words.isEmpty()) {
      lines.heading(heading());
      words.forEach(lines::item);
    }
  }

  /** Adds for each other direction of the handle the best that it can do, one line each. */
  void brief(ExplainLines lines) {
    Set<Orientation> named = EnumSet.noneOf(Orientation.class);
    facts.outcome().recommended().ifPresent(place -> named.add(place.handleTo()));
    List<Alternative> others =
        facts.explanation().others().stream().filter(other -> named.add(other.turn())).toList();
    List<Miss> misses =
        facts.explanation().misses().stream().filter(miss -> named.add(miss.turn())).toList();
    List<String> words = words(others, misses, margin -> "");
    if (!words.isEmpty()) {
      lines.briefHeading(heading());
      words.forEach(line -> lines.item(line, 1));
    }
  }

  private String heading() {
    return switch (facts.outcome().verdict()) {
      case NO_MOUNT -> "Why nothing holds it, the nearest to holding first";
      default -> "Other orientations and mounts";
    };
  }

  /** {@code where}: what is added to a margin. */
  private List<String> words(
      List<Alternative> others, List<Miss> misses, Function<Limit, String> where) {
    Outcome outcome = facts.outcome();
    List<String> words = new ArrayList<>();
    others.forEach(other -> words.add(other(other, outcome.recommended().orElseThrow(), where)));
    words.addAll(new MissWords(unit(), outcome.machine(), outcome.vise()).of(misses));
    return words;
  }

  private String other(Alternative other, Recommendation chosen, Function<Limit, String> where) {
    return "handle to the "
        + other.turn().word()
        + ", "
        + other.mount()
        + ": "
        + worse(other, chosen)
        + "; "
        + other
            .best()
            .limit()
            .map(
                limit ->
                    "margin "
                        + unit().fine(limit.margin(), Rounding.DOWN)
                        + " "
                        + unit().word()
                        + where.apply(limit))
            .orElse("nothing listed can be hit");
  }

  /**
   * Why it ranks below the chosen one in the order of preference. Where nothing listed can be hit,
   * the margin is unbounded.
   */
  private String worse(Alternative other, Recommendation chosen) {
    long margin = other.margin().orElse(Long.MAX_VALUE);
    long best = chosen.margin().orElse(Long.MAX_VALUE);
    if (margin < 0) {
      return best >= 0 ? "it hits something or comes too near" : "less room";
    }
    if (chosen.thread().isPresent() && other.mount().equals(Fastening.CLAMPS)) {
      return "held by straps, not bolts";
    }
    if (chosen.settable() && !other.settable()) {
      return "cannot be tapped square there";
    }
    if (other.reachShortfall() > chosen.reachShortfall()) {
      return "the spindle misses "
          + unit().brief(other.reachShortfall() - chosen.reachShortfall(), Rounding.UP)
          + " "
          + unit().word()
          + " more of the work";
    }
    return margin < best ? "less room" : "no better";
  }

  private String fully(Limit limit) {
    Outcome outcome = facts.outcome();
    WhereWords where = new WhereWords(unit(), outcome.machine(), outcome.vise());
    return " ("
        + WhereWords.pair(limit)
        + ": "
        + where.of(limit, outcome.recommended().orElseThrow().openings())
        + ")";
  }

  private PeopleUnit unit() {
    return facts.unit();
  }
}
