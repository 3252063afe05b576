package org.jawroom.report.explain;

import static org.jawroom.fixture.outcome.Invented.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;
import org.junit.jupiter.api.Test;

/**
 * Why another turn is worse, in the order of preference: margin under 0, then reach, then margin.
 */
class ExplainChoicesTest {

  @Test
  void to_otherThatHitsSomething_saysSoFirst() {
    assertEquals(
        "handle to the right, base bolts: it hits something or comes too near; margin -3.25 mm (base to"
            + " table: at any opening, wherever the axes stand)",
        text("20", other("-3.245", "9")));
  }

  @Test
  void to_otherWithMoreRoomAndLessReach_namesTheReach() {
    assertEquals(
        "handle to the right, base bolts: the spindle misses 8.8 mm more of the work; margin 45 mm (base to"
            + " table: at any opening, wherever the axes stand)",
        text("20", other("45", "8.76")));
  }

  @Test
  void to_otherWithLessRoom_namesTheRoom() {
    assertEquals(
        "handle to the right, base bolts: less room; margin 19.99 mm (base to table: at any opening, wherever"
            + " the axes stand)",
        text("20", other("19.999", "0")));
    assertEquals(
        "handle to the right, base bolts: less room; margin -21 mm (base to table: at any opening, wherever"
            + " the axes stand)",
        text("-20", other("-21", "5")));
  }

  @Test
  void to_otherAsGood_saysSo() {
    assertEquals(
        "handle to the right, base bolts: no better; margin"
            + " 20 mm (base to table: at any opening, wherever the axes stand)",
        text("20", other("20", "0")));
  }

  @Test
  void to_turnsOfOneReason_areOneLine() {
    Outcome outcome =
        new Made(Invented.machine("mill"), Invented.vise("vise"), Verdict.NO_MOUNT).done();
    assertEquals(
        "handle to the front, rear or left: base bolts: the left bolt misses a slot by 0.41 mm",
        text(
            outcome,
            List.of(),
            List.of(miss(Orientation.FRONT), miss(Orientation.REAR), miss(Orientation.LEFT))));
  }

  private static Miss miss(Orientation turn) {
    return new Miss(turn, "base bolts", Miss.Cause.ACROSS_SLOTS, "left", mm("0.401"));
  }

  private static Alternative other(String margin, String shortfall) {
    Box box = new Box(Interval.of(0, 0), Interval.of(0, 0), Interval.of(0, 0));
    Limit limit =
        NamedPieces.limit(
            mm(margin) + mm("6"),
            mm("6"),
            0,
            "table",
            "base",
            Axis.Y,
            Situation.CUTTING,
            JawEnd.ANY,
            box,
            box);
    return new Alternative(
        Orientation.RIGHT,
        "base bolts",
        new Roomiest(Orientation.RIGHT, "base bolts", 0, 0, Optional.of(limit)),
        OptionalLong.of(limit.margin()),
        mm(shortfall),
        true);
  }

  private static String text(String chosen, Alternative other) {
    Outcome outcome =
        new Made(Invented.machine("mill"), Invented.vise("vise"), Verdict.FITS)
            .limit(chosen, "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY)
            .done();
    return text(outcome, List.of(other), List.of());
  }

  /** Unwrapped, without the heading. */
  private static String text(Outcome outcome, List<Alternative> others, List<Miss> misses) {
    Explanation explanation =
        new Explanation(
            new Advised(outcome).done(),
            List.of(),
            Optional.empty(),
            others,
            misses,
            Optional.empty());
    ExplainLines lines = new ExplainLines(80);
    ExplainFacts facts =
        new ExplainFacts(
            PeopleUnit.MM, Settings.DEFAULTS, explanation, List.of(), List.of(), List.of());
    new ExplainChoices(facts).to(lines);
    return String.join(" ", lines.all().stream().skip(2).map(String::strip).toList());
  }
}
