package org.jawroom.clearance.part;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The parts of a vise, written as {@code name situation u-closed > u-open v w}, in millimetres. */
class VisePartsTest {

  @Test
  void of_oneJaw_hasThePartsOfTheModel() {
    assertEquals(
        """
        base cutting -60..200 > -60..200 v -85..85 w 0..70
        fixed jaw cutting -30..0 > -30..0 v -75..75 w 70..115
        moving jaw cutting 10..60 > 150..200 v -75..75 w 70..115
        screw rear cutting -98..-60 > -60..-60 v -12..12 w 28..52
        screw front cutting 200..220 > 200..225 v -12..12 w 28..52
        """,
        asText(oneJaw(), Situation.CUTTING));
  }

  @Test
  void of_handle_hangsWhileCuttingAndGoesOverTheTopWhileLoading() {
    ViseDraft draft = oneJaw();
    draft.handleRadius = Dimension.of(100 * MM);
    draft.handleDepth = Dimension.of(35 * MM);
    assertEquals("", handle(draft, Situation.CUTTING));
    assertEquals(
        "handle loading 220..255 > 225..260 v -100..100 w 28..140\n",
        handle(draft, Situation.LOADING));

    draft.handleOn = true;
    assertEquals(
        "handle cutting 220..255 > 225..260 v -100..100 w -60..140\n",
        handle(draft, Situation.CUTTING));

    draft.fullSwing = true;
    assertEquals(
        "handle loading 220..255 > 225..260 v -100..100 w -60..140\n",
        handle(draft, Situation.LOADING));
  }

  @Test
  void of_handleWithoutScrewInFront_startsAtTheCasting() {
    ViseDraft draft = oneJaw();
    draft.frontClosed = Dimension.NONE;
    draft.frontOpen = Dimension.NONE;
    draft.handleRadius = Dimension.of(100 * MM);
    draft.handleDepth = Dimension.of(35 * MM);

    assertEquals(
        "handle loading 200..235 > 200..235 v -100..100 w 28..140\n",
        handle(draft, Situation.LOADING));
    assertEquals(false, asText(draft, Situation.LOADING).contains("screw front"));
  }

  @Test
  void of_bothJaws_moveAboutTheMiddle() {
    ViseDraft draft = oneJaw();
    draft.both = true;
    draft.openingMin = 11 * MM;
    draft.openingMax = 121 * MM;

    List<String> lines = asText(draft, Situation.CUTTING).lines().toList();

    assertEquals("rear jaw cutting -55.5..-5.5 > -110.5..-60.5 v -75..75 w 70..115", lines.get(1));
    assertEquals("front jaw cutting 5.5..55.5 > 60.5..110.5 v -75..75 w 70..115", lines.get(2));
  }

  @Test
  void of_singleOpening_holdsBothBoxes() {
    ViseDraft draft = oneJaw();
    draft.openingMax = draft.openingMin;

    assertEquals(
        true, asText(draft, Situation.CUTTING).contains("screw rear cutting -98..-60 > -98..-60"));
  }

  @Test
  void of_blankThickness_leavesOutThatPartAndNamesItsColumn() {
    ViseDraft draft = oneJaw();
    draft.movingJaw = Dimension.BLANK;
    Blanks blanks = new Blanks();

    List<Part> parts = ViseParts.of(draft.build(), blanks);

    assertEquals("[MOVING_JAW_THICKNESS]", blanks.columns().toString());
    assertEquals(0, parts.stream().filter(part -> part.name().equals("moving jaw")).count());
    assertEquals(2, parts.stream().filter(part -> part.name().equals("fixed jaw")).count());
  }

  @Test
  void of_blankDiameter_isNeededByAHandleOnlyIfItGoesOverTheTop() {
    ViseDraft draft = oneJaw();
    draft.rearClosed = draft.rearOpen = draft.frontClosed = draft.frontOpen = Dimension.NONE;
    draft.screwDiameter = Dimension.BLANK;
    draft.handleRadius = Dimension.of(100 * MM);
    draft.handleDepth = Dimension.of(35 * MM);
    assertEquals("[SCREW_DIAMETER]", missing(draft.build()));

    draft.fullSwing = true;
    assertEquals("[]", missing(draft.build()));
  }

  @Test
  void of_oneProjectionNone_countsAsZeroUnlessBothAre() {
    ViseDraft draft = oneJaw();
    draft.rearClosed = Dimension.NONE;
    draft.rearOpen = Dimension.of(38 * MM);
    assertEquals(
        true, asText(draft, Situation.CUTTING).contains("screw rear cutting -60..-60 > -98..-60"));

    draft.rearOpen = Dimension.BLANK;
    assertEquals("[REAR_PROJECTION_OPEN]", missing(draft.build()));
  }

  @Test
  void of_rowNamedHandle_countsAsTheHandleAndStandsInItsPlace() {
    ViseDraft draft = oneJaw();
    draft.parts.add(row("hose", When.CUTTING));
    draft.parts.add(row(VisePart.HANDLE, When.ALWAYS));

    List<Part> loading =
        ViseParts.of(draft.build(), new Blanks()).stream()
            .filter(part -> part.situation() == Situation.LOADING && part.rank() >= 7)
            .toList();

    assertEquals(1, loading.size());
    assertEquals(true, loading.get(0).handle());
    List<String> cutting = asText(draft, Situation.CUTTING).lines().toList();
    assertEquals("handle cutting 1..2 > 1..2 v 0..1 w -1..1", cutting.get(cutting.size() - 2));
    assertEquals("hose cutting 1..2 > 1..2 v 0..1 w -1..1", cutting.get(cutting.size() - 1));
  }

  @Test
  void of_shapeParts_hasItsRowsOnly() {
    ViseDraft draft = oneJaw();
    draft.simple = false;
    draft.parts.add(row("body", When.ALWAYS));

    assertEquals("body cutting 1..2 > 1..2 v 0..1 w -1..1\n", asText(draft, Situation.CUTTING));
  }

  @Test
  void bolts_round_standTwiceTheirThreadAboveTheGrip() {
    ViseDraft draft = oneJaw();
    draft.boltGrip = OptionalLong.of(20 * MM);
    Vise vise = draft.build();

    List<Part> bolts = BoltParts.of(vise, vise.mounts().get(0), 12 * MM);

    assertEquals(4, bolts.size());
    assertEquals("bolts cutting 38..102 > 38..102 v -105..-75 w 0..44", line(bolts.get(0)));
    assertEquals("bolts cutting 38..102 > 38..102 v 75..105 w 0..44", line(bolts.get(2)));
  }

  @Test
  void all_table_isHeldAgainstTheHandleWhileLoadingAndWhatReachesBelowItsTop() {
    ViseDraft draft = oneJaw();
    draft.handleRadius = Dimension.of(100 * MM);
    draft.handleDepth = Dimension.of(35 * MM);
    draft.handleOn = true;
    draft.parts.add(row("drip tray", When.ALWAYS));
    SweptGuard loading = table(Situation.LOADING);
    SweptGuard cutting = table(Situation.CUTTING);

    List<Pair> pairs =
        Pair.all(
            Settings.DEFAULTS,
            ViseParts.of(draft.build(), new Blanks()),
            List.of(cutting, loading));

    assertEquals(
        "[handle loading 25, drip tray cutting 6, drip tray loading 6]",
        pairs.stream()
            .map(p -> p.part().name() + " " + p.part().situation().word() + " " + p.required() / MM)
            .toList()
            .toString());
  }

  @ParameterizedTest
  @EnumSource(
      value = Column.class,
      names = {"BASE_WIDTH", "REAR_REACH", "FRONT_REACH"})
  void of_anyBlankOfTheBase_leavesItOut(Column blank) {
    ViseDraft draft = oneJaw();
    draft.rearClosed = draft.rearOpen = draft.frontClosed = draft.frontOpen = Dimension.NONE;
    draft.baseWidth = blank == Column.BASE_WIDTH ? Dimension.BLANK : draft.baseWidth;
    draft.rearReach = blank == Column.REAR_REACH ? Dimension.BLANK : draft.rearReach;
    draft.frontReach = blank == Column.FRONT_REACH ? Dimension.BLANK : draft.frontReach;

    assertEquals("[" + blank + "]", missing(draft.build()));
    assertEquals(false, asText(draft, Situation.CUTTING).contains("base"));
  }

  @ParameterizedTest
  @EnumSource(
      value = Column.class,
      names = {"HANDLE_RADIUS", "HANDLE_DEPTH", "FRONT_REACH", "SCREW_HEIGHT", "SCREW_DIAMETER"})
  void of_anyBlankOfTheHandle_leavesItOut(Column blank) {
    ViseDraft draft = oneJaw();
    draft.rearClosed = draft.rearOpen = draft.frontClosed = draft.frontOpen = Dimension.NONE;
    draft.handleRadius = known(blank != Column.HANDLE_RADIUS);
    draft.handleDepth = known(blank != Column.HANDLE_DEPTH);
    draft.frontReach = known(blank != Column.FRONT_REACH);
    draft.screwHeight = known(blank != Column.SCREW_HEIGHT);
    draft.screwDiameter = known(blank != Column.SCREW_DIAMETER);

    assertEquals("[" + blank + "]", missing(draft.build()));
    assertEquals("", handle(draft, Situation.LOADING));
  }

  @Test
  void of_rowsOfParts_keepTheirOrder() {
    ViseDraft draft = oneJaw();
    draft.simple = false;
    draft.parts.add(row("swivel", When.LOADING));
    draft.parts.add(row("hose", When.LOADING));

    List<Part> parts = ViseParts.of(draft.build(), new Blanks());

    assertEquals(List.of("swivel", "hose"), parts.stream().map(Part::name).toList());
    assertEquals(List.of(8, 9), parts.stream().map(Part::rank).toList());
  }

  private static Dimension known(boolean known) {
    return known ? Dimension.of(50 * MM) : Dimension.BLANK;
  }

  private static SweptGuard table(Situation situation) {
    Box everywhere = new Box(Interval.ALL, Interval.ALL, Interval.ALL);
    return NamedPieces.guard("table", 0, true, situation, everywhere, 6 * MM, 0);
  }

  private static VisePart row(String name, When when) {
    Interval u = Interval.of(MM, 2 * MM);
    return new VisePart(
        name, when, u, u, Interval.of(0, MM), Interval.of(-MM, MM), OptionalLong.empty());
  }

  private static ViseDraft oneJaw() {
    ViseDraft draft = new ViseDraft();
    draft.jawWidth = 140 * MM;
    draft.platesWidth = OptionalLong.of(150 * MM);
    draft.jawHeight = 45 * MM;
    draft.platesHeight = OptionalLong.of(40 * MM);
    draft.bedHeight = 70 * MM;
    draft.openingMin = 10 * MM;
    draft.openingMax = 150 * MM;
    draft.baseWidth = Dimension.of(170 * MM);
    draft.rearReach = Dimension.of(60 * MM);
    draft.frontReach = Dimension.of(200 * MM);
    draft.fixedJaw = Dimension.of(30 * MM);
    draft.movingJaw = Dimension.of(50 * MM);
    draft.rearClosed = Dimension.of(38 * MM);
    draft.frontClosed = Dimension.of(20 * MM);
    draft.frontOpen = Dimension.of(25 * MM);
    draft.screwHeight = Dimension.of(40 * MM);
    draft.screwDiameter = Dimension.of(24 * MM);
    draft.boltSpacing = Dimension.of(180 * MM);
    draft.boltU = Dimension.of(70 * MM);
    draft.holeU = Dimension.of(52 * MM);
    draft.holeV = Dimension.of(18 * MM);
    return draft;
  }

  private static String missing(Vise vise) {
    Blanks blanks = new Blanks();
    ViseParts.of(vise, blanks);
    return blanks.columns().toString();
  }

  private static String handle(ViseDraft draft, Situation situation) {
    return asText(draft, situation)
        .lines()
        .filter(line -> line.startsWith("handle"))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  private static String asText(ViseDraft draft, Situation situation) {
    return ViseParts.of(draft.build(), new Blanks()).stream()
        .filter(part -> part.situation() == situation)
        .map(part -> line(part) + "\n")
        .collect(Collectors.joining());
  }

  private static String line(Part part) {
    return part.name()
        + " "
        + part.situation().word()
        + " "
        + mm(Interval.of(part.u().closed().lo(), part.u().closed().hi()))
        + " > "
        + mm(Interval.of(part.u().open().lo(), part.u().open().hi()))
        + " v "
        + mm(part.v())
        + " w "
        + mm(part.w());
  }

  private static String mm(Interval interval) {
    return mm(interval.lo()) + ".." + mm(interval.hi());
  }

  private static String mm(long length) {
    return BigDecimal.valueOf(length)
        .divide(BigDecimal.valueOf(MM))
        .stripTrailingZeros()
        .toPlainString();
  }
}
