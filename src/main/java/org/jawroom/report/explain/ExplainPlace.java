package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.space.Play;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.wording.place.WhereWords;

/** The section that describes where the vise stands and what the place offers. */
record ExplainPlace(ExplainFacts facts) {

  /** The whole section. */
  void to(ExplainLines lines) {
    if (facts.outcome().recommended().isEmpty()) {
      return;
    }
    Recommendation place = facts.outcome().recommended().get();
    lines.heading(heading(place));
    lines.item(grain(facts.unit()));
    steps(place).forEach(lines::item);
    offers(place).forEach(lines::item);
    facts.explanation().roomiest().ifPresent(roomiest -> lines.item(roomiest(roomiest, place)));
    facts
        .explanation()
        .advice()
        .sideBySide()
        .map(SideBySide::count)
        .filter(count -> count > 1)
        .ifPresent(
            count -> lines.item(count + " of them can stand side by side on the same slots"));
  }

  /** The same, a line for each step and for the roomiest place. */
  void brief(ExplainLines lines) {
    if (facts.outcome().recommended().isEmpty()) {
      return;
    }
    Recommendation place = facts.outcome().recommended().get();
    lines.briefHeading(heading(place) + " (" + facts.unit().word() + ")");
    steps(place).forEach(step -> lines.item(step, 1));
    offers(place).forEach(offer -> lines.item(offer, 2));
    facts.explanation().roomiest().ifPresent(roomiest -> lines.item(roomiest(roomiest), 1));
  }

  /** The step to which the place is rounded. */
  static String grain(PeopleUnit unit) {
    String finest = unit == PeopleUnit.MM ? "0.1" : "1/32";
    return "("
        + unit.word()
        + "; tape measures to the nearest "
        + finest
        + ", all else rounded toward less room)";
  }

  private String heading(Recommendation place) {
    String fasten = place.fastening().clamped() ? "clamp" : "bolt";
    return switch (facts.outcome().verdict()) {
      case FITS, AWKWARD -> "Where to " + fasten + " it";
      case LIMITED -> "Where to " + fasten + " it, jaws within that range";
      case MEASURE ->
          "Where it comes nearest to fitting: measure again before you " + fasten + " it there";
      case NO_PLACE, NO_MOUNT, UNKNOWN ->
          "Where it comes nearest to fitting; it does NOT fit there";
    };
  }

  /** What a setter does, in order: the handle, the slots, the two tape measures. */
  private List<String> steps(Recommendation place) {
    Outcome outcome = facts.outcome();
    return new TapeWords(facts.unit(), outcome.machine(), outcome.vise()).of(place);
  }

  /** What the place offers and asks, without what the cautions of the verdict state. */
  private List<String> offers(Recommendation place) {
    List<String> offers = new ArrayList<>();
    place.play().ifPresent(play -> offers.add(play(facts.unit(), play)));
    List<String> more = new ArrayList<>();
    List<Caveat> caveats = facts.outcome().caveats();
    place.overhang().stream()
        .filter(over -> over > 0 && !caveats.contains(Caveat.OVERHANG))
        .forEach(over -> more.add("its base hangs " + up(over) + " over a table edge"));
    if (place.noseNotBelow().isPresent() && !caveats.contains(Caveat.HEADS_LEFT_OUT)) {
      more.add(
          "keep the spindle nose "
              + up(place.noseNotBelow().getAsLong())
              + " or more above the table");
    }
    if (!more.isEmpty()) {
      offers.add(String.join("; ", more));
    }
    return offers;
  }

  /** How far the vise can move from there. */
  static String play(PeopleUnit unit, Play play) {
    return "it can move "
        + unit.brief(play.left(), Rounding.DOWN)
        + " left, "
        + unit.brief(play.right(), Rounding.DOWN)
        + " right, "
        + unit.brief(play.front(), Rounding.DOWN)
        + " front, "
        + unit.brief(play.rear(), Rounding.DOWN)
        + " rear, in the same slots, whatever the spindle reaches there";
  }

  /** The order of preference gives up margin for bolts, for room to tap, and for reach. */
  private String roomiest(Roomiest roomiest, Recommendation place) {
    Outcome outcome = facts.outcome();
    TapeWords tape = new TapeWords(facts.unit(), outcome.machine(), outcome.vise());
    WhereWords where = new WhereWords(facts.unit(), outcome.machine(), outcome.vise());
    return roomiest(roomiest)
        + ", "
        + roomiest.mount()
        + ", "
        + String.join(", ", tape.edges(roomiest))
        + roomiest
            .limit()
            .map(limit -> "; " + WhereWords.pair(limit) + ": " + where.of(limit, place.openings()))
            .orElse("");
  }

  private String roomiest(Roomiest roomiest) {
    return "roomiest place (worse to bolt, tap or reach): "
        + roomiest
            .limit()
            .map(limit -> "margin " + facts.unit().brief(limit.margin(), Rounding.DOWN))
            .orElse("nothing listed can be hit")
        + ", handle to the "
        + roomiest.handleTo().word();
  }

  private String up(long length) {
    return facts.unit().brief(length, Rounding.UP);
  }
}
