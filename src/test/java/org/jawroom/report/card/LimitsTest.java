package org.jawroom.report.card;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.MarginBounds;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.card.measure.NoseLimits;
import org.jawroom.report.card.measure.OpeningLimits;
import org.jawroom.report.card.measure.TravelLimits;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.card.statement.Weight;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.junit.jupiter.api.Test;

/** What to keep within: jaws, nose, travel, weight; every figure on the safe side. */
class LimitsTest {
  private final MachineDraft machine = new MachineDraft();
  private final ViseDraft vise = new ViseDraft();
  private Optional<Interval> usable = Optional.empty();
  private Optional<BigDecimal> loadLeft = Optional.empty();

  @Test
  void openings_endsBetweenTenths_areDrawnIn() {
    vise.openingMax = 150 * MM;
    usable = Optional.of(Interval.of(76 * MM + 1, 120 * MM - 1));
    assertEquals(
        List.of(
            "Do not close below 76.1 mm: tag the vise.",
            "Do not open beyond 119.9 mm: tag the vise."),
        new OpeningLimits(PeopleUnit.MM, outcome(Verdict.LIMITED)).words());
    assertEquals(
        List.of(
            "Do not close below 3 in: tag the vise.", "Do not open beyond 4.72 in: tag the vise."),
        new OpeningLimits(PeopleUnit.INCH, outcome(Verdict.LIMITED)).words());
  }

  @Test
  void openings_endOfTheVise_isNoLimit() {
    vise.openingMax = 150 * MM;
    usable = Optional.of(Interval.of(76 * MM, 150 * MM));
    assertEquals(
        List.of("Do not close below 76 mm: tag the vise."),
        new OpeningLimits(PeopleUnit.MM, outcome(Verdict.LIMITED)).words());
    usable = Optional.of(Interval.of(0, 150 * MM));
    assertEquals(List.of(), new OpeningLimits(PeopleUnit.MM, outcome(Verdict.FITS)).words());
  }

  @Test
  void nose_heightKnown_isRoundedUpWithTheStickOutOverTheBed() {
    head();
    vise.bedHeight = 60 * MM;
    assertEquals(
        "not below 106.4 mm above the table top; a tool that touches the vise's bed sticks out 46.4 at"
            + " least.",
        nose(OptionalLong.of(106 * MM + 7 * MM / 20)));
  }

  /** What goes with the nose passes over every vise on the table. */
  @Test
  void nose_overSeveralVises_isTheHighestOfTheirLimits() {
    head();
    vise.bedHeight = 60 * MM;
    machine.noseMin = Dimension.of(100 * MM);
    machine.noseMax = Dimension.of(400 * MM);
    OptionalLong low = OptionalLong.of(106 * MM);
    OptionalLong high = OptionalLong.of(130 * MM);
    String both =
        "not below 130 mm above the table top, for all vises here; a tool that touches the vise's"
            + " bed sticks out 70 at least.";
    assertEquals(both, nose(low, high));
    assertEquals(both, nose(high, low));
    assertEquals(
        "even at its highest, head may come too near somewhere in the travel: jog there slowly and set"
            + " limits before you run.",
        nose(low, OptionalLong.empty()));
  }

  @Test
  void nose_heightUnknown_saysWhy() {
    assertEquals(
        "nothing that goes with it is listed, no head either: watch it" + " yourself.",
        nose(OptionalLong.empty()));
    head();
    assertEquals(
        "its heights are blank, so nobody knows how low it may come: jog and" + " look.",
        nose(OptionalLong.empty()));
    machine.noseMin = Dimension.of(100 * MM);
    machine.noseMax = Dimension.of(400 * MM);
    assertEquals(
        "even at its highest, head may come too near somewhere in the travel: jog there slowly and set"
            + " limits before you run.",
        nose(OptionalLong.empty()));
  }

  @Test
  void travel_gapsAndEnds_askForNoLess() {
    machine.tableLength = 600 * MM;
    machine.tableWidth = 200 * MM;
    machine.travelX = 400 * MM;
    machine.travelY = 250 * MM + 1;
    machine.frontGap = Dimension.of(80 * MM + 1);
    machine.rearGap = Dimension.of(-12 * MM - 1);
    assertEquals(
        List.of(
            new Item(
                "Soft limits or stops:",
                "no wider than X 400, Y 250 in all: the spindle's axis from 100 to 500 from the table's"
                    + " left edge and from 25 beyond to 225 from its front edge."),
            new Item(
                "Ends of travel:",
                "gap left beside the table with the axis at its end, at least: front 80.1, rear no more"
                    + " than 12 run under.")),
        new TravelLimits(PeopleUnit.MM, machine.build()).items());
  }

  @Test
  void weight_fromTwentyFive_takesTwo() {
    assertEquals("24.9 kg: one person can lift it.", weight("24.9"));
    assertEquals("25 kg: two people or a hoist.", weight("25"));
    vise.mass = Optional.empty();
    assertEquals(
        "not given. Weigh it, or take two people or a hoist.",
        new Weight(PeopleUnit.MM, outcome(Verdict.FITS), List.of()).item().text());
  }

  @Test
  void weight_overTheTable_isRoundedUp() {
    loadLeft = Optional.of(new BigDecimal("-3.01"));
    assertEquals(
        Optional.of("Too heavy for this table by 3.1 kg: do not set it down."),
        new Weight(PeopleUnit.MM, outcome(Verdict.FITS), List.of()).tooHeavy());
    loadLeft = Optional.of(BigDecimal.ZERO);
    assertEquals(
        Optional.empty(), new Weight(PeopleUnit.MM, outcome(Verdict.FITS), List.of()).tooHeavy());
  }

  @Test
  void weight_ofSeveral_countsEach() {
    loadLeft = Optional.of(new BigDecimal("59.9"));
    vise.mass = Optional.of(new BigDecimal("30"));
    Outcome one = outcome(Verdict.FITS);
    Weight two = new Weight(PeopleUnit.MM, one, List.of(one.vise()));
    assertEquals(Optional.empty(), two.tooHeavy());
    assertEquals("30 kg each: two people or a hoist.", two.item().text());
    assertEquals(
        Optional.of("All 3 together are too heavy for this table by 0.1 kg: do not set them down."),
        new Weight(PeopleUnit.MM, one, List.of(one.vise(), one.vise())).tooHeavy());
  }

  private String weight(String kilograms) {
    vise.mass = Optional.of(new BigDecimal(kilograms));
    return new Weight(PeopleUnit.MM, outcome(Verdict.FITS), List.of()).item().text();
  }

  private void head() {
    machine.guards.add(
        Guards.box(
            "head",
            "head",
            new Axes(false, false, true),
            When.ALWAYS,
            new Box(Interval.ALL, Interval.ALL, Interval.of(0, 1L << 60))));
  }

  private String nose(OptionalLong... notBelow) {
    return new NoseLimits(PeopleUnit.MM, outcome(Verdict.FITS), List.of(notBelow), List.of())
        .item()
        .text();
  }

  private Outcome outcome(Verdict verdict) {
    return new Outcome(
        machine.build(),
        vise.build(),
        verdict,
        OptionalLong.empty(),
        Optional.empty(),
        usable,
        List.of(),
        OptionalLong.empty(),
        loadLeft,
        false,
        MarginBounds.NONE,
        List.of(),
        List.of(),
        Optional.empty());
  }
}
