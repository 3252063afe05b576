package org.jawroom.report.explain;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.standing.StandingWords;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.Standing;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** A vise where it stands, for the terminal. */
public final class StandingExplanationText {
  private StandingExplanationText() {}

  /**
   * The lines, without line ends and harmless to a terminal.
   *
   * @param all whether every gap is listed, not the tightest alone
   * @param columns the most characters in a line
   */
  public static List<String> lines(
      PeopleUnit unit, StandingOutcome outcome, boolean all, int columns) {
    StandingWords words = new StandingWords(unit);
    Standing standing = outcome.standing();
    Machine machine = standing.machine();
    Vise vise = standing.vise();
    ExplainLines lines = new ExplainLines(columns);
    lines.add(
        vise.name() + " on " + machine.name() + ", where it stands: " + words.signed(outcome));
    outcome
        .margin()
        .ifPresent(
            margin ->
                lines.add(
                    "margin "
                        + unit.brief(margin, Rounding.DOWN)
                        + " "
                        + unit.word()
                        + ", jaws closed to fully open; "
                        + outcome.limit().map(WhereWords::pair).orElse("")));
    lines.heading("Where it stands, " + unit.word());
    words.place(standing).forEach(lines::item);
    outcome
        .there()
        .map(Inspection::place)
        .ifPresent(place -> lines.item(new TapeWords(unit, machine, vise).fastening(place)));
    words
        .move(outcome)
        .ifPresentOrElse(
            move -> lines.item("to the recommended place: " + move),
            () ->
                lines.item(
                    words.isRecommended(outcome)
                        ? "that is the recommended place"
                        : "nothing to move it to: see jawroom explain without --at"));
    List<Limit> pairs = outcome.there().map(Inspection::pairs).orElse(List.of());
    Optional<Interval> openings = outcome.there().map(there -> there.place().openings());
    ExplainPairs gaps = new ExplainPairs(unit, machine, vise, pairs, openings);
    if (all) {
      gaps.to(lines);
    } else {
      gaps.brief(lines);
    }
    lines.blank();
    words.minds(outcome).forEach(mind -> lines.add("! " + mind));
    Stream.of(Words.caution(machine), Words.caution(vise), Cautions.BRIEF)
        .filter(caution -> !caution.isEmpty())
        .forEach(lines::add);
    return lines.all();
  }
}
