package org.jawroom.report.survey;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.limits.Margins;
import org.jawroom.report.survey.count.Condition;
import org.jawroom.report.survey.count.Coverage;
import org.jawroom.report.survey.count.Moved;
import org.jawroom.report.survey.count.Survey;

/** What a survey says in sentences. */
record SurveyWords(Survey survey, PeopleUnit unit) {

  /** A line with what it is about. */
  record Fact(String about, String words) {}

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            "Report",
            survey.name()
                + ": "
                + count(survey.pairings(), "pairing")
                + " of "
                + count(survey.machines(), "machine")
                + " and "
                + count(survey.vises(), "vise")));
    List<Condition> where = survey.asked().where();
    if (!where.isEmpty()) {
      facts.add(
          new Fact(
              "Chosen",
              count(survey.chosen(), "pairing")
                  + " with "
                  + String.join(" and ", where.stream().map(Condition::words).toList())));
    }
    facts.add(new Fact("Margins", margins()));
    facts.add(
        new Fact(
            "Comfortable",
            count(survey.comfortable(), "pairing")
                + ": a vise of use with a margin of "
                + unit.fine(survey.asked().comfort(), Rounding.UP)
                + " "
                + unit.word()
                + " or more and no reading in doubt"));
    facts.add(new Fact("Fewest vises", fewest()));
    facts.add(new Fact("Not served", unserved()));
    survey.moved().ifPresent(moved -> facts.add(new Fact("Moved", moved(moved))));
    return facts;
  }

  private String margins() {
    int without = survey.chosen() - survey.margins().count();
    return quantiles(survey.margins()) + (without == 0 ? "" : "; " + without + " without a margin");
  }

  private String quantiles(Margins margins) {
    if (margins.count() == 0) {
      return "none";
    }
    return "least "
        + text(margins.least())
        + ", 10 % "
        + text(margins.quantile(1, 10))
        + ", median "
        + text(margins.median())
        + ", 90 % "
        + text(margins.quantile(9, 10))
        + ", greatest "
        + text(margins.greatest())
        + " "
        + unit.word();
  }

  /** How many vises serve, and whether fewer might. */
  String fewest() {
    Coverage coverage = survey.coverage();
    int taken = coverage.vises().size();
    if (taken == 0) {
      return "No machine has a comfortable vise.";
    }
    return count(taken, "kind")
        + " of vise "
        + (taken == 1 ? "serves" : "serve")
        + " every machine that has a comfortable vise ("
        + coverage.served()
        + "); "
        + (coverage.isProven()
            ? "no fewer do."
            : "at least "
                + coverage.atLeast()
                + " are needed, and whether fewer than "
                + taken
                + " do was not settled.");
  }

  String unserved() {
    Coverage coverage = survey.coverage();
    long idle = coverage.unserved().stream().filter(machine -> machine.standing() == 0).count();
    int without = coverage.unserved().size();
    return without
        + " of "
        + count(coverage.served() + without, "machine")
        // Conditions may leave out all pairings of a machine, which then counts nowhere.
        + (survey.asked().where().isEmpty() ? "" : " that have a pairing chosen")
        + (without == 1 ? " is" : " are")
        + " without a comfortable vise, "
        + idle
        + " of them without any vise of use.";
  }

  /** What moved since the earlier report. */
  String moved(Moved moved) {
    int turned = moved.turns().stream().mapToInt(Moved.Turned::pairings).sum();
    return "Since "
        + moved.name()
        + ": "
        + count(moved.both(), "pairing")
        + " in both, "
        + moved.onlyOld()
        + " only there, "
        + moved.onlyNew()
        + " only here. "
        + turned
        + " changed the verdict; of "
        + count(moved.changes().count(), "margin")
        + " under the same verdict "
        + moved.shrunk()
        + " shrank and "
        + moved.grown()
        + " grew"
        + (moved.shrunk() + moved.grown() == 0 ? "." : ": " + quantiles(moved.changes()) + ".");
  }

  private String text(long length) {
    return unit.text(length, Rounding.DOWN);
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
