package org.jawroom.report.card.measure;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.fixture.outcome.MadePlaces;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.value.Dimension;
import org.junit.jupiter.api.Test;

/** A table of 600 × 200, a base 100 wide: its left side 50 left of the origin. */
class TapeRangesTest {

  @Test
  void of_playEachWay_isBestAndBothEnds() {
    List<TapeRange> ranges =
        ranges(PeopleUnit.MM, -14 * MM, 30 * MM, new Play(26 * MM, 26 * MM, 5 * MM, 0));
    assertEquals(
        List.of(
            new TapeRange(
                "base's left side", "from the table's left edge", "236", Optional.of("210 to 262")),
            new TapeRange(
                "fixed-jaw face", "from the table's front edge", "130", Optional.of("125 to 130"))),
        ranges);
  }

  @Test
  void of_endsBetweenTenths_areDrawnIn() {
    long hundredth = MM / 100;
    TapeRange range =
        ranges(PeopleUnit.MM, -14 * MM, 0, new Play(MM + hundredth, MM - hundredth, 0, 0)).get(0);
    assertEquals(Optional.of("235 to 236.9"), range.range());
  }

  @Test
  void of_bestNearestToOutside_staysWithin() {
    long x = -14 * MM + 4 * (MM / 100);
    TapeRange range = ranges(PeopleUnit.MM, x, 0, new Play(0, MM, 0, 0)).get(0);
    assertEquals("236.1", range.best());
    assertEquals(Optional.of("236.1 to 237"), range.range());
  }

  @Test
  void of_noStepOfTheTapeWithinTheRange_isFiner() {
    long hundredth = MM / 100;
    TapeRange range =
        ranges(PeopleUnit.MM, -14 * MM + 4 * hundredth, 0, new Play(0, 0, 0, 0)).get(0);
    assertEquals("236.04", range.best());
    assertEquals(Optional.of("no play"), range.range());
    assertEquals(
        "9.293",
        ranges(PeopleUnit.INCH, -14 * MM + 4 * hundredth, 0, new Play(0, 0, 0, 0)).get(0).best());
  }

  @Test
  void of_noPlay_saysSo() {
    assertEquals(
        Optional.of("no play"), ranges(PeopleUnit.MM, 0, 0, new Play(0, 0, 0, 0)).get(0).range());
  }

  @Test
  void of_placesBeyondTheEdge_areSaidInWords() {
    TapeRange astride = ranges(PeopleUnit.MM, -260 * MM, 0, new Play(0, 60 * MM, 0, 0)).get(0);
    assertEquals("10 beyond", astride.best());
    assertEquals(Optional.of("10 beyond to 50"), astride.range());
    TapeRange beyond = ranges(PeopleUnit.MM, -290 * MM, 0, new Play(5 * MM, 20 * MM, 0, 0)).get(0);
    assertEquals(Optional.of("45 to 20 beyond"), beyond.range());
  }

  @Test
  void of_inches_areDrawnInToThirtySecondsOfATape() {
    TapeRange range = ranges(PeopleUnit.INCH, -14 * MM, 0, new Play(26 * MM, 26 * MM, 0, 0)).get(0);
    assertEquals("9 9/32", range.best());
    assertEquals(Optional.of("8 9/32 to 10 5/16"), range.range());
  }

  private static List<TapeRange> ranges(PeopleUnit unit, long x, long y, Play play) {
    MachineDraft machine = new MachineDraft();
    machine.tableLength = 600 * MM;
    machine.tableWidth = 200 * MM;
    ViseDraft vise = new ViseDraft();
    vise.baseWidth = Dimension.of(100 * MM);
    Recommendation place =
        MadePlaces.place(x, y, List.of(1, 1), Optional.of(play), OptionalLong.empty());
    return new TapeRanges(unit, machine.build(), vise.build()).of(place, Optional.of(play));
  }
}
