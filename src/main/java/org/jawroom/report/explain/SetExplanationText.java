package org.jawroom.report.explain;

import java.util.List;
import java.util.stream.Stream;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.set.SetWords;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.vise.Vise;

/** A set of vises on one machine, for the terminal. */
public final class SetExplanationText {
  private SetExplanationText() {}

  /**
   * The lines, without line ends and harmless to a terminal.
   *
   * @param columns the most characters in a line
   */
  public static List<String> lines(
      PeopleUnit unit, Settings settings, SetOutcome outcome, int columns) {
    SetWords words = new SetWords(unit, settings);
    ExplainLines lines = new ExplainLines(columns);
    lines.add(
        outcome.set().name()
            + " ("
            + SetWords.vises(outcome.set())
            + ") on "
            + outcome.machine().name()
            + ": "
            + words.signed(outcome)
            + outcome.least().stream()
                .mapToObj(
                    least -> ", least " + unit.brief(least, Rounding.DOWN) + " " + unit.word())
                .findFirst()
                .orElse(""));
    if (outcome.fits() == SetOutcome.Fits.YES) {
      lines.heading("From left to right (slots along y: front to back), " + unit.word());
      words.lines(outcome).forEach(lines::item);
      lines.heading("What limits each: the margin beyond all that is asked, " + unit.word());
      int number = 1;
      for (SetOutcome.Stand stand : outcome.stands()) {
        lines.item(number++ + ". " + limit(unit, stand));
      }
      lines.blank();
      words.minds(outcome).forEach(mind -> lines.add("! " + mind));
      outcome.set().members().stream()
          .map(ViseSet.Member::vise)
          .filter(Vise::isTurned)
          .forEach(vise -> lines.add("! " + vise.name() + ": " + Words.turned(vise)));
      lines.add("Each vise counts over its full opening. Parts, tools and jobs are not looked at.");
    } else {
      words.lines(outcome).forEach(lines::item);
      lines.blank();
    }
    Stream.of(Words.caution(outcome.machine()), Cautions.BRIEF)
        .filter(caution -> !caution.isEmpty())
        .forEach(lines::add);
    return lines.all();
  }

  private static String limit(PeopleUnit unit, SetOutcome.Stand stand) {
    return stand
        .place()
        .limit()
        .map(
            limit ->
                stand.vise().name()
                    + ": "
                    + unit.brief(limit.margin(), Rounding.DOWN)
                    + ", "
                    + WhereWords.pair(limit))
        .orElse(stand.vise().name() + ": nothing listed can be hit");
  }
}
