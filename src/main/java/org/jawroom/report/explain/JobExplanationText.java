package org.jawroom.report.explain;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;

/** The explanation of a job on one pairing for a terminal. */
public final class JobExplanationText {
  private final PeopleUnit unit;
  private final Settings settings;
  private final JobOutcome outcome;
  private final JobWords words;
  private final ExplainLines lines;

  private JobExplanationText(PeopleUnit unit, Settings settings, JobOutcome outcome, int columns) {
    this.unit = unit;
    this.lines = new ExplainLines(columns);
    this.settings = settings;
    this.outcome = outcome;
    this.words = new JobWords(unit);
  }

  /**
   * Returns the lines, without line ends.
   *
   * @param all whether every part and guard is listed, not the tightest alone
   * @param columns the most characters in a line
   */
  public static List<String> lines(
      PeopleUnit unit, Settings settings, JobExplanation explanation, boolean all, int columns) {
    JobExplanationText text =
        new JobExplanationText(unit, settings, explanation.outcome(), columns);
    text.verdict();
    text.place();
    text.height();
    text.load();
    ExplainPairs pairs = ExplainPairs.of(unit, explanation);
    if (all) {
      pairs.to(text.lines);
    } else {
      pairs.brief(text.lines);
    }
    text.lines.blank();
    ExplanationText.cautions(explanation.outcome().machine(), explanation.outcome().vise())
        .forEach(text.lines::add);
    if (!all && !explanation.pairs().isEmpty()) {
      text.lines.add("--all prints every gap.");
    }
    return text.lines.all();
  }

  private void verdict() {
    OpenWords open = new OpenWords(unit);
    lines.add(
        outcome.job().name() + " on " + outcome.machine().name() + " in " + outcome.vise().name());
    lines.add(
        "Part "
            + words.size(outcome.job())
            + " ("
            + unit.word()
            + "; along the jaws × between them × high).");
    lines.add(
        switch (outcome.verdict()) {
          case HELD ->
              !outcome.inDoubt().isEmpty() || !outcome.unchecked().isEmpty()
                  ? "Held as far as the tables say: there is a place where nothing listed is hit"
                      + " and the spindle reaches the whole part. Check before it runs:"
                  : "Held: there is a place where nothing listed is hit, the spindle reaches the"
                      + " whole part, and the longest tool and the load have room.";
          case NOT_HELD -> "Not held. What fails, the first first:";
          case UNKNOWN ->
              "Unknown: " + open.undecided(outcome.missing(), outcome.openReadings()) + ".";
        });
    words.failing(outcome).forEach(lines::item);
    JobWords.marks(outcome).forEach(mark -> lines.item("! " + mark));
    if (outcome.verdict() != JobVerdict.UNKNOWN && !outcome.openReadings().isEmpty()) {
      lines.add("That holds " + open.whatever(outcome.openReadings()) + ".");
    }
    outcome.limit().ifPresent(limit -> lines.add("Margin at the place below: " + margin(limit)));
  }

  private String margin(Limit limit) {
    return unit.fine(limit.margin(), Rounding.DOWN)
        + " "
        + unit.word()
        + ", from "
        + WhereWords.pair(limit)
        + ".";
  }

  private void place() {
    if (outcome.place().isEmpty()) {
      return;
    }
    Recommendation place = outcome.place().get();
    lines.heading(heading() + "; jaws " + openings(place.openings()));
    lines.item(ExplainPlace.grain(unit));
    new TapeWords(unit, outcome.machine(), outcome.vise()).of(place).forEach(lines::item);
    place.play().ifPresent(play -> lines.item(ExplainPlace.play(unit, play)));
    if (outcome.limit().isEmpty()) {
      lines.item("nothing is listed that it could hit: look before you trust it");
    }
  }

  private String heading() {
    if (outcome.isHeld()) {
      return "Where to bolt it";
    }
    boolean clear = outcome.limit().filter(limit -> limit.margin() < 0).isEmpty();
    return clear
        ? "Where nothing is hit, but the job is NOT held"
        : "Where it comes nearest; it does NOT fit there";
  }

  private String openings(Interval openings) {
    return unit.brief(openings.lo(), Rounding.UP)
        + " to "
        + unit.brief(openings.hi(), Rounding.DOWN);
  }

  private void height() {
    lines.heading("Height above the table, no tolerance taken off");
    Interval part = outcome.partHeights();
    lines.item(
        "the part stands from "
            + unit.fine(part.lo(), Rounding.DOWN)
            + " to "
            + unit.fine(part.hi(), Rounding.UP)
            + (outcome.job().grip().isPresent() ? ", gripped by its lower edge" : ", on the bed"));
    stack(part.hi());
    shortest(part.hi());
    Optional<Recommendation> place = outcome.place();
    OptionalLong nose = place.map(Recommendation::noseNotBelow).orElse(OptionalLong.empty());
    if (nose.isPresent()) {
      lines.item(
          "keep the nose "
              + unit.brief(nose.getAsLong(), Rounding.UP)
              + " or more above the table: a"
              + " tool must stick out "
              + unit.brief(outcome.shortestStickOut().getAsLong(), Rounding.UP)
              + " or more to reach the part's top");
    }
  }

  /** The nose's greatest height minus everything that stands below it. */
  private void stack(long top) {
    Dimension nose = outcome.machine().noseMax();
    Dimension tool = outcome.job().toolLength();
    if (outcome.toolRoom().isPresent() && (nose.isOpen() || tool.isOpen())) {
      boolean atBest = outcome.verdict() == JobVerdict.NOT_HELD && !outcome.open().isEmpty();
      lines.item(
          "the longest tool leaves "
              + unit.fine(outcome.toolRoom().getAsLong(), Rounding.DOWN)
              + " over the part with the nose at its highest, at "
              + (atBest ? "best" : "worst")
              + "; "
              + unit.fine(settings.clearance(), Rounding.UP)
              + " asked for");
    } else if (outcome.toolRoom().isPresent()) {
      lines.item(
          unit.fine(nose.length(), Rounding.DOWN)
              + " nose at its highest - "
              + unit.fine(top, Rounding.UP)
              + " part's top - "
              + unit.fine(tool.length(), Rounding.UP)
              + " longest tool = "
              + unit.fine(outcome.toolRoom().getAsLong(), Rounding.DOWN)
              + "; "
              + unit.fine(settings.clearance(), Rounding.UP)
              + " asked for");
    } else if (nose.isBlank()) {
      lines.item("unchecked: whether the longest tool clears it, since nose_max is blank");
    } else if (tool.isBlank()) {
      lines.item("unchecked: whether the longest tool clears it, since tool_length is blank");
    }
  }

  private void shortest(long top) {
    Dimension nose = outcome.machine().noseMin();
    if (settings.shortestTool().isPresent() && nose.isKnown()) {
      long tool = settings.shortestTool().getAsLong();
      lines.item(
          unit.fine(nose.length(), Rounding.UP)
              + " nose at its lowest - "
              + unit.fine(tool, Rounding.DOWN)
              + " shortest tool = "
              + unit.fine(nose.length() - tool, Rounding.UP)
              + ", where its tip comes down to; the part's top is "
              + unit.fine(top, Rounding.DOWN));
    }
  }

  private void load() {
    lines.heading("Load");
    Optional<BigDecimal> most = outcome.machine().maxLoad();
    Optional<BigDecimal> vise = outcome.vise().mass();
    Optional<BigDecimal> part = outcome.job().mass();
    lines.item(
        "the table carries "
            + kilograms(most, RoundingMode.FLOOR)
            + "; the vise "
            + kilograms(vise, RoundingMode.CEILING)
            + " and the part "
            + kilograms(part, RoundingMode.CEILING)
            + outcome
                .loadRoom()
                .map(room -> " leave " + JobWords.kilograms(room, RoundingMode.FLOOR) + " kg")
                .orElse(""));
  }

  private static String kilograms(Optional<BigDecimal> mass, RoundingMode rounding) {
    return mass.map(known -> JobWords.kilograms(known, rounding) + " kg").orElse("(not given)");
  }
}
