package org.jawroom.report.wording;

import static org.jawroom.fixture.outcome.Invented.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.MarginBounds;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.junit.jupiter.api.Test;

class OpenWordsTest {
  private static final OpenWords MM = new OpenWords(PeopleUnit.MM);
  private static final OpenWords INCH = new OpenWords(PeopleUnit.INCH);

  private static OpenReading reading(Column column, Dimension value) {
    return new OpenReading(column, Measurand.of(column, "row"), value);
  }

  private static OpenReading gap(String lo, String hi) {
    return reading(Column.REAR_GAP, Dimension.within(mm(lo), mm(hi)));
  }

  private static final OpenReading BLANK = reading(Column.FRONT_GAP, Dimension.BLANK);

  private static OpenReading upTo(Column column, long least) {
    return reading(column, Dimension.within(least, mm("60")));
  }

  @Test
  void bounds_ofEachKindOfRange() {
    assertEquals("from 10 to 40 mm", MM.bounds(gap("10", "40")));
    assertEquals("from -3 to 40 mm", MM.bounds(gap("-3", "40")));
    assertEquals("", MM.bounds(BLANK));
    assertEquals("up to 60 mm", MM.bounds(upTo(Column.REAR_GAP, -Length.ENDLESS)));
    assertEquals("up to 60 mm", MM.bounds(upTo(Column.BASE_WIDTH, 0)));
    assertEquals(
        "from 50 mm on",
        MM.bounds(reading(Column.REAR_GAP, Dimension.within(mm("50"), Length.ENDLESS))));
  }

  /** A gap may be negative, so that 0 is an end like any other. */
  @Test
  void bounds_gapFromZero_hasItsLowEnd() {
    assertEquals("from 0 to 60 mm", MM.bounds(upTo(Column.REAR_GAP, 0)));
    assertEquals("from 0 to 60 mm", MM.bounds(upTo(Column.GUARD_GAP, 0)));
  }

  @Test
  void bounds_areRoundedInward() {
    assertEquals("from 10 to 40 mm", MM.bounds(gap("10.000", "40.009")));
    assertEquals("from 10.01 to 40 mm", MM.bounds(gap("10.001", "40.001")));
    assertEquals("from 0.394 to 1.574 in", INCH.bounds(gap("10", "40")));
  }

  /** Both ends between 10 and 10.01: what is printed must not leave out what is known. */
  @Test
  void bounds_narrowerThanTheStep_areRoundedOutward() {
    assertEquals("from 10 to 10.01 mm", MM.bounds(gap("10.002", "10.008")));
    assertEquals("from 10.01 to 10.01 mm", MM.bounds(gap("10.002", "10.012")));
  }

  @Test
  void whatever_oneOrSeveral() {
    OpenReading width = upTo(Column.BASE_WIDTH, mm("50"));
    assertEquals("whatever rear_gap is, from 10 to 40 mm", MM.whatever(List.of(gap("10", "40"))));
    assertEquals("whatever front_gap is", MM.whatever(List.of(BLANK)));
    assertEquals(
        "whatever these are: front_gap, rear_gap from 10 to 40 mm, base_width from 50 to 60 mm",
        MM.whatever(List.of(BLANK, gap("10", "40"), width)));
    assertEquals(
        "whatever these are: front_gap, rear_gap from 10 to 40 mm, base_width from 50 to 60 mm and 1 more",
        MM.whatever(List.of(BLANK, gap("10", "40"), width, width)));
  }

  @Test
  void undecided_blanksAndRanges() {
    assertEquals(
        "not measured: front_gap, tool_length; known only as rear_gap from 10 to 40 mm",
        MM.undecided(
            List.of(Column.FRONT_GAP, Column.REAR_GAP, Column.TOOL_LENGTH),
            List.of(BLANK, gap("10", "40"))));
    assertEquals(
        "not measured: front_gap", MM.undecided(List.of(Column.FRONT_GAP), List.of(BLANK)));
    assertEquals(
        "known only as rear_gap from 10 to 40 mm",
        MM.undecided(List.of(Column.REAR_GAP), List.of(gap("10", "40"))));
  }

  /** Several guards share a column: one may be blank, another known within bounds. */
  @Test
  void undecided_oneColumnBlankAndARange_namesBoth() {
    OpenReading blank =
        new OpenReading(
            Column.GUARD_GAP, Measurand.of(Column.GUARD_GAP, "row", "sill"), Dimension.BLANK);
    OpenReading range =
        new OpenReading(
            Column.GUARD_GAP,
            Measurand.of(Column.GUARD_GAP, "row", "arm"),
            Dimension.within(mm("1"), mm("2")));
    assertEquals(
        "not measured: gap of a guard; known only as gap of arm from 1 to 2 mm",
        MM.undecided(List.of(Column.GUARD_GAP), List.of(blank, range)));
  }

  @Test
  void cell_hasARealMinusAndRoundsDown() {
    assertEquals(
        Optional.of("−6.1 to 9"),
        MM.cell(new MarginBounds(OptionalLong.of(mm("-6.001")), OptionalLong.of(mm("9.099")))));
    assertEquals(
        Optional.of("−0.25 to −0.01"),
        INCH.cell(new MarginBounds(OptionalLong.of(mm("-6.35")), OptionalLong.of(mm("-0.254")))));
    assertEquals(
        Optional.empty(),
        MM.cell(new MarginBounds(OptionalLong.of(mm("-6")), OptionalLong.empty())));
  }

  @Test
  void margins_bothEndsDown() {
    assertEquals(
        Optional.of("from -6.01 to 9 mm"),
        MM.margins(new MarginBounds(OptionalLong.of(mm("-6.001")), OptionalLong.of(mm("9.009"))))
            .map(words -> words + " mm"));
    assertEquals(
        Optional.empty(),
        MM.margins(new MarginBounds(OptionalLong.empty(), OptionalLong.of(mm("9")))));
  }
}
