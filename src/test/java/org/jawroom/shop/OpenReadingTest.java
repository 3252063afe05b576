package org.jawroom.shop;

import static org.jawroom.fixture.outcome.Invented.known;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class OpenReadingTest {
  private static final Dimension RANGE = Dimension.within(mm("10"), mm("40"));

  private static Guard beside(String name, Dimension gap) {
    return Guards.beside(name, Side.LEFT, gap);
  }

  private static List<OpenReading> of(Machine machine, Vise vise, Column... columns) {
    return OpenReading.of(machine, vise, List.of(columns));
  }

  @Test
  void of_gaps_namesEachOpenGuard() {
    Machine machine =
        Invented.machine("mill")
            .withGap(Side.REAR, RANGE)
            .withGuardRows(
                List.of(
                    beside("hose", Dimension.BLANK),
                    beside("sill", known("5")),
                    beside("arm", RANGE)));

    List<OpenReading> open = of(machine, Invented.vise("six"), Column.REAR_GAP, Column.GUARD_GAP);

    assertEquals(
        List.of("rear_gap", "gap (hose)", "gap (arm)"),
        open.stream().map(one -> one.measurand().reading()).toList());
    assertEquals(
        List.of(RANGE, Dimension.BLANK, RANGE), open.stream().map(OpenReading::value).toList());
    assertTrue(open.stream().allMatch(OpenReading::isOfMachine));
    assertTrue(open.stream().allMatch(one -> one.measurand().name().equals("mill")));
  }

  /** A spacing is kept as half of it on either side. */
  @Test
  void of_spacing_isWholeAgain() {
    for (Dimension spacing :
        List.of(RANGE, Dimension.BLANK, Dimension.within(mm("90"), Length.ENDLESS))) {
      Vise vise =
          Invented.vise("six").toBuilder()
              .mounts(List.of(Mount.baseBolts(known("70"), spacing, known("18"), known("18"))))
              .build();

      OpenReading open = of(Invented.machine("mill"), vise, Column.BOLT_SPACING).get(0);

      assertEquals(spacing, open.value());
      assertEquals("bolt_spacing", open.measurand().reading());
      assertFalse(open.isOfMachine());
    }
  }

  @Test
  void of_holes_namesTheirMountOnce() {
    Bolt open = new Bolt(known("0"), known("0"), Dimension.BLANK, known("18"));
    Bolt closed = new Bolt(known("0"), known("50"), known("18"), known("18"));
    Vise vise =
        Invented.vise("six").toBuilder()
            .mounts(List.of(new Mount("ends", false, List.of(open, closed, open))))
            .build();

    assertEquals(
        List.of("hole_u (ends)"),
        of(Invented.machine("mill"), vise, Column.HOLE_U).stream()
            .map(one -> one.measurand().reading())
            .toList());
  }

  @Test
  void of_jobs_areLeftOut() {
    assertEquals(
        List.of(),
        of(Invented.machine("mill"), Invented.vise("six"), Column.JOB_MASS, Column.TOOL_LENGTH));
  }

  @Test
  void of_knownReading_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> of(Invented.machine("mill"), Invented.vise("six"), Column.REAR_GAP));
  }
}
