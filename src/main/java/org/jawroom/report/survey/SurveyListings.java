package org.jawroom.report.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.limits.LimitTally.Limited;
import org.jawroom.report.limits.Margins;
import org.jawroom.report.survey.SurveyCell.Count;
import org.jawroom.report.survey.SurveyCell.Margin;
import org.jawroom.report.survey.SurveyCell.Share;
import org.jawroom.report.survey.SurveyCell.Text;
import org.jawroom.report.survey.count.Coverage;
import org.jawroom.report.survey.count.Histogram;
import org.jawroom.report.survey.count.Moved;
import org.jawroom.report.survey.count.RowGroups.Group;
import org.jawroom.report.survey.count.Survey;
import org.jawroom.report.xlsx.ListSheet.Heading;

/** The lists of a survey. */
final class SurveyListings {
  private static final int NAME = 28;
  private static final int NUMBER = 11;
  private static final int BAR = 18;

  private final Survey survey;
  private final PeopleUnit unit;

  SurveyListings(Survey survey, PeopleUnit unit) {
    this.survey = survey;
    this.unit = unit;
  }

  /** Pairings counted by the columns asked for. */
  Listing groups() {
    List<Heading> headings = new ArrayList<>();
    survey.asked().by().forEach(column -> headings.add(new Heading(column, NAME)));
    headings.addAll(numbers("Pairings", "%"));
    headings.add(new Heading("Comfortable", NUMBER + 3));
    headings.addAll(numbers("Least", "10 %", "Median", "90 %", "Greatest", "No margin"));
    return new Listing(
        "By " + String.join(", ", survey.asked().by()),
        "Margins in "
            + unit.plural()
            + ", rounded toward less, each one that occurs; a blank margin is not counted as one.",
        headings,
        survey.groups().size(),
        rank -> cells(survey.groups().group(rank)));
  }

  private List<SurveyCell> cells(Group group) {
    List<SurveyCell> cells = new ArrayList<>();
    group.words().forEach(word -> cells.add(new Text(word)));
    cells.add(new Count(group.pairings()));
    cells.add(new Share(group.pairings(), survey.chosen()));
    cells.add(new Count(group.comfortable()));
    Margins margins = group.margins();
    cells.add(quantile(margins, 0, 1));
    cells.add(quantile(margins, 1, 10));
    cells.add(quantile(margins, 1, 2));
    cells.add(quantile(margins, 9, 10));
    cells.add(quantile(margins, 1, 1));
    cells.add(new Count(group.pairings() - margins.count()));
    return cells;
  }

  private static SurveyCell quantile(Margins margins, int part, int of) {
    return new Margin(
        margins.count() == 0 ? OptionalLong.empty() : OptionalLong.of(margins.quantile(part, of)));
  }

  /** Guards and the parts that meet them. */
  Listing limits() {
    List<Heading> headings =
        new ArrayList<>(List.of(new Heading("What limits, by which part", 44)));
    headings.addAll(numbers("Pairings", "%", "Least", "Median"));
    return Listing.of(
        "What limits",
        "",
        headings,
        survey.limits().rows(),
        row ->
            List.of(
                new Text(row.words()),
                new Count(row.margins().count()),
                new Share(row.margins().count(), survey.limits().total()),
                Margin.of(row.margins().least()),
                Margin.of(row.margins().median())));
  }

  /** How often each guard is met by each part; parts beyond the first {@code most} together. */
  Listing guardsByParts(int most) {
    Map<String, Map<String, Integer>> guards = new LinkedHashMap<>();
    Map<String, Integer> parts = new LinkedHashMap<>();
    Map<String, Integer> totals = new LinkedHashMap<>();
    for (Limited row : survey.limits().rows()) {
      int count = row.margins().count();
      guards
          .computeIfAbsent(row.guard(), guard -> new LinkedHashMap<>())
          .merge(row.part(), count, Integer::sum);
      parts.merge(row.part(), count, Integer::sum);
      totals.merge(row.guard(), count, Integer::sum);
    }
    List<String> columns = frequent(parts);
    List<String> shown = columns.subList(0, Math.min(most, columns.size()));
    List<Heading> headings = new ArrayList<>(List.of(new Heading("Guard", NAME)));
    shown.forEach(part -> headings.add(new Heading(part, NUMBER)));
    if (shown.size() < columns.size()) {
      headings.add(new Heading("other parts", NUMBER));
    }
    headings.add(new Heading("All", NUMBER));
    return Listing.of(
        "Guard by part",
        "How many pairings each guard limits, met by which part of the vise.",
        headings,
        frequent(totals),
        guard -> {
          List<SurveyCell> cells = new ArrayList<>(List.of(new Text(guard)));
          long rest = totals.get(guard);
          for (String part : shown) {
            int count = guards.get(guard).getOrDefault(part, 0);
            cells.add(new Count(count));
            rest -= count;
          }
          if (shown.size() < columns.size()) {
            cells.add(new Count(rest));
          }
          cells.add(new Count(totals.get(guard)));
          return cells;
        });
  }

  private static List<String> frequent(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The bars of the histogram. */
  Listing margins() {
    List<Heading> headings = new ArrayList<>(List.of(new Heading("Margin, " + unit.word(), BAR)));
    headings.addAll(numbers("Pairings", "%"));
    return Listing.of(
        "Margins",
        "Each bar from its first margin up to, but without, its second; "
            + (survey.chosen() - survey.margins().count())
            + " pairings without a margin are left out.",
        headings,
        Histogram.of(survey.margins(), unit).bars(),
        bar ->
            List.of(
                new Text(bar.words()),
                new Count(bar.pairings()),
                new Share(bar.pairings(), survey.margins().count())));
  }

  /** The fewest kinds of vise. */
  Listing vises() {
    Coverage coverage = survey.coverage();
    List<Heading> headings = new ArrayList<>(List.of(new Heading("Vise", NAME)));
    headings.addAll(numbers("Machines", "Only it"));
    return Listing.of(
        "Fewest vises",
        new SurveyWords(survey, unit).fewest() + " Only it: what no other of these serves.",
        headings,
        coverage.vises(),
        vise ->
            List.of(new Text(vise.vise()), new Count(vise.machines()), new Count(vise.alone())));
  }

  Listing unserved() {
    List<Heading> headings = new ArrayList<>(List.of(new Heading("Machine", NAME)));
    headings.addAll(numbers("Vises of use", "Best margin"));
    return Listing.of(
        "Machines without a comfortable vise",
        new SurveyWords(survey, unit).unserved(),
        headings,
        survey.coverage().unserved(),
        machine ->
            List.of(
                new Text(machine.machine()),
                new Count(machine.standing()),
                new Margin(machine.best())));
  }

  /** Verdicts that changed. */
  Listing turns(Moved moved) {
    List<Heading> headings =
        new ArrayList<>(List.of(new Heading("Verdict then", NAME), new Heading("Now", NAME)));
    headings.addAll(numbers("Pairings"));
    return Listing.of(
        "Verdicts that changed",
        "The most frequent first.",
        headings,
        moved.turns(),
        turned ->
            List.of(
                new Text(turned.turn().from()),
                new Text(turned.turn().to()),
                new Count(turned.pairings())));
  }

  /** Margins that shrank, the greatest loss first. */
  Listing shrunk(Moved moved) {
    return changes("Margins that shrank", moved, moved.shrunk(), false);
  }

  /** Margins that grew, the greatest gain first. */
  Listing grown(Moved moved) {
    return changes("Margins that grew", moved, moved.grown(), true);
  }

  private Listing changes(String title, Moved moved, int size, boolean fromTheLast) {
    List<Heading> headings =
        new ArrayList<>(
            List.of(
                new Heading("Machine", NAME),
                new Heading("Vise", NAME),
                new Heading("Verdict", 14)));
    headings.addAll(numbers("Then", "Now", "Change"));
    return new Listing(
        title,
        "Where the verdict stayed. In " + unit.plural() + ", rounded toward less.",
        headings,
        size,
        rank -> {
          Moved.Changed changed = moved.changed(fromTheLast ? moved.changed() - 1 - rank : rank);
          return List.of(
              new Text(changed.machine()),
              new Text(changed.vise()),
              new Text(changed.verdict()),
              Margin.of(changed.before()),
              Margin.of(changed.after()),
              Margin.of(changed.by()));
        });
  }

  private static List<Heading> numbers(String... words) {
    return List.of(words).stream().map(word -> new Heading(word, NUMBER)).toList();
  }
}
