package org.jawroom.clearance.part;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;

class TurnedPartsTest {
  private static final Swivel THIRTY =
      new Swivel("vise", BigDecimal.valueOf(30), 50 * MM, OptionalLong.empty());

  @Test
  void of_turnedVise_baseStaysAndAllElseTurns() {
    List<Part> parts = parts(draft().build().turned(THIRTY), Certainty.AT_WORST);

    List<String> still =
        cutting(parts).filter(part -> part.outline().isEmpty()).map(Part::name).toList();
    assertEquals(List.of("base", "hose"), still);
    assertEquals(
        List.of("turned body", "fixed jaw", "moving jaw", "handle", "hose"),
        parts.stream()
            .filter(part -> part.situation() == Situation.LOADING)
            .filter(part -> part.outline().isPresent())
            .map(Part::name)
            .distinct()
            .toList());
  }

  @Test
  void of_turnedVise_turnsWhatAPartSweepsOverAllOpenings() {
    List<Part> parts = parts(draft().build().turned(THIRTY), Certainty.AT_WORST);

    assertEquals(
        List.of(
            new TurnedRectangle(
                new Rectangle(Interval.of(0, 200 * MM), Interval.around(0, 75 * MM)), 50 * MM, 30)),
        cutting(parts)
            .filter(part -> part.role() == PartRole.MOVING_JAW)
            .map(part -> part.outline().orElseThrow())
            .distinct()
            .toList());
    assertTrue(
        cutting(parts)
            .filter(part -> part.role() == PartRole.MOVING_JAW)
            .allMatch(part -> part.u().isConstant() && part.w().equals(jawHeights())));
  }

  @Test
  void of_blankReading_leavesNoPlaceAtWorstAndNothingAtBest() {
    ViseDraft draft = draft();
    draft.movingJaw = Dimension.BLANK;
    Vise vise = draft.build().turned(THIRTY);

    List<Part> worst =
        cutting(parts(vise, Certainty.AT_WORST))
            .filter(part -> part.role() == PartRole.MOVING_JAW)
            .toList();

    assertEquals(1, worst.size());
    assertFalse(Certainty.hasEnd(worst.get(0).u().closed().lo()));
    assertFalse(Certainty.hasEnd(worst.get(0).v().hi()));
    assertEquals(
        0,
        parts(vise, Certainty.AT_BEST).stream()
            .filter(part -> part.role() == PartRole.MOVING_JAW)
            .count());
  }

  /** Between an end that is known and a blank one, nothing is known, however far from the blank. */
  @Test
  void of_projectionBlankAtOneEnd_hasNoEndAtAnyOpeningBetween() {
    ViseDraft draft = draft();
    draft.screwDiameter = Dimension.of(20 * MM);
    draft.rearClosed = Dimension.of(40 * MM);
    draft.rearOpen = Dimension.BLANK;
    Vise vise = draft.build().turned(THIRTY);
    for (long open : new long[] {99 * MM, 20 * MM, 1}) {
      List<Part> screw =
          cutting(parts(vise.within(Interval.of(0, open)), Certainty.AT_WORST))
              .filter(part -> part.role() == PartRole.SCREW_REAR)
              .toList();

      assertEquals(1, screw.size());
      assertFalse(Certainty.hasEnd(screw.get(0).u().closed().lo()));
      assertFalse(Certainty.hasEnd(screw.get(0).v().hi()));
    }
  }

  @Test
  void of_openReading_atBestLiesWithinWhatIsTurnedAtWorst() {
    ViseDraft draft = draft();
    draft.frontReach = Dimension.within(180 * MM, 260 * MM);
    Vise vise = draft.build().turned(THIRTY);

    assertEquals(Interval.of(-60 * MM, 260 * MM), bodyAlongU(vise, Certainty.AT_WORST));
    assertEquals(Interval.of(-60 * MM, 180 * MM), bodyAlongU(vise, Certainty.AT_BEST));
  }

  @Test
  void of_handleWorkedOverTheTop_turnsInTheSituationsOfTheSquareOne() {
    Vise square = draft().build();
    Vise turned = square.turned(THIRTY);

    assertEquals(situations(square), situations(turned));
  }

  @Test
  void work_ofATurnedVise_turnsWithIt() {
    Job job =
        new Job(
            "job",
            80 * MM,
            50 * MM,
            30 * MM,
            OptionalLong.empty(),
            Optional.empty(),
            Dimension.BLANK,
            Optional.empty(),
            List.of(),
            1);

    List<Part> work = JobPart.of(draft().build().turned(THIRTY), job);

    assertEquals(
        List.of(
            new TurnedRectangle(
                new Rectangle(Interval.of(0, 50 * MM), Interval.around(0, 40 * MM)), 50 * MM, 30)),
        work.stream().map(part -> part.outline().orElseThrow()).distinct().toList());
  }

  @Test
  void turnedVise_isCalledByItsAngleAndKeepsItsRow() {
    Vise turned =
        draft()
            .build()
            .turned(new Swivel("vise", new BigDecimal("-22.50"), 0, OptionalLong.empty()));

    assertEquals("vise @-22.5", turned.name());
    assertEquals("vise", turned.row());
    assertFalse(turned.hasClampMount());
  }

  private static Interval jawHeights() {
    return Interval.of(70 * MM, 115 * MM);
  }

  private static Interval bodyAlongU(Vise vise, Certainty certainty) {
    return cutting(parts(vise, certainty))
        .filter(part -> part.role() == PartRole.BODY)
        .map(Part::outline)
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow()
        .square()
        .x();
  }

  private static String situations(Vise vise) {
    return parts(vise, Certainty.AT_WORST).stream()
        .filter(Part::handle)
        .map(part -> part.situation() + " " + part.w())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static List<Part> parts(Vise vise, Certainty certainty) {
    return ViseParts.of(vise, certainty, new Blanks());
  }

  private static Stream<Part> cutting(List<Part> parts) {
    return parts.stream().filter(part -> part.situation() == Situation.CUTTING);
  }

  private static ViseDraft draft() {
    ViseDraft draft = new ViseDraft();
    draft.jawWidth = 150 * MM;
    draft.jawHeight = 45 * MM;
    draft.bedHeight = 70 * MM;
    draft.openingMax = 150 * MM;
    draft.baseWidth = Dimension.of(170 * MM);
    draft.rearReach = Dimension.of(60 * MM);
    draft.frontReach = Dimension.of(200 * MM);
    draft.fixedJaw = Dimension.of(30 * MM);
    draft.movingJaw = Dimension.of(50 * MM);
    draft.screwHeight = Dimension.of(40 * MM);
    draft.screwDiameter = Dimension.of(24 * MM);
    draft.handleRadius = Dimension.of(100 * MM);
    draft.handleDepth = Dimension.of(35 * MM);
    draft.strapFlange = true;
    draft.parts.add(
        new VisePart(
            "hose",
            When.ALWAYS,
            Interval.of(100 * MM, 140 * MM),
            Interval.of(100 * MM, 140 * MM),
            Interval.of(85 * MM, 120 * MM),
            Interval.of(10 * MM, 40 * MM),
            OptionalLong.empty()));
    return draft;
  }
}
