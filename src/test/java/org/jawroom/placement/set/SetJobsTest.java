package org.jawroom.placement.set;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.JobDraft;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.junit.jupiter.api.Test;

/** Jobs in a row of a wide and a narrow vise, worked by hand; nothing stands beside the table. */
class SetJobsTest {
  private final MachineDraft machine = SetPairingTest.table(400 * MM);
  private final ViseDraft wide = SetPairingTest.vise("wide", 100 * MM);
  private final ViseDraft narrow = SetPairingTest.vise("narrow", 60 * MM);
  private Settings settings = Settings.DEFAULTS;

  SetJobsTest() {
    machine.travelX = 2000 * MM;
    machine.travelY = 2000 * MM;
    machine.leftGap = Dimension.NONE;
    machine.rightGap = Dimension.NONE;
  }

  private SetOutcome row() {
    SetOutcome row =
        SetPairing.solve(
            settings,
            machine.build(),
            new ViseSet(
                "set",
                List.of(new ViseSet.Member(wide.build(), 1), new ViseSet.Member(narrow.build(), 1)),
                List.of()));
    assertEquals(SetOutcome.Fits.YES, row.fits());
    return row;
  }

  private List<JobOutcome> held(int at, Job job) {
    return SetJobs.held(
        PreparedMachine.of(settings, machine.build(), Setup.PLAIN), row(), at, List.of(job));
  }

  private static JobDraft part(long length) {
    JobDraft draft = new JobDraft();
    draft.length = length;
    draft.width = 20 * MM;
    draft.height = 20 * MM;
    return draft;
  }

  /** From the middle of the vise to the base of the other is room for half the part and 6. */
  @Test
  void part_belowAtAndAboveTheSpacingToTheNeighbour_isHeldThenNot() {
    List<SetOutcome.Stand> stands = row().stands();
    long middle = stands.get(0).place().x();
    long half = stands.get(1).place().x() - 30 * MM - 6 * MM - middle;
    assertEquals(1, held(0, part(2 * half - 2).build()).size());
    assertEquals(1, held(0, part(2 * half).build()).size());
    assertEquals(0, held(0, part(2 * half + 2).build()).size());
    // The same the other way: a base 100 wide.
    long other = stands.get(1).place().x() - (middle + 50 * MM) - 6 * MM;
    assertEquals(1, held(1, part(2 * other).build()).size());
    assertEquals(0, held(1, part(2 * other + 2).build()).size());
  }

  /** A handle that swings 70 either way reaches 40 farther than the base of 60. */
  @Test
  void part_keepsTheSpacingFromAHandle() {
    narrow.screwHeight = Dimension.of(20 * MM);
    narrow.screwDiameter = Dimension.of(10 * MM);
    narrow.handleRadius = Dimension.of(70 * MM);
    narrow.handleDepth = Dimension.of(20 * MM);
    List<SetOutcome.Stand> stands = row().stands();
    long half = stands.get(1).place().x() - 70 * MM - 6 * MM - stands.get(0).place().x();
    assertEquals(1, held(0, part(2 * half).build()).size());
    assertEquals(0, held(0, part(2 * half + 2).build()).size());
  }

  /** The place of the row counts, not the best one: the spindle reaches 50 beyond its middle. */
  @Test
  void part_belowAtAndAboveTheReachAtItsPlace_isHeldThenNot() {
    long middle = row().stands().get(0).place().x();
    machine.spindleX = middle;
    machine.travelX = 100 * MM;
    assertEquals(1, held(0, part(100 * MM).build()).size());
    assertEquals(0, held(0, part(100 * MM + 2).build()).size());
    assertEquals(0, held(1, part(20 * MM).build()).size());
  }

  @Test
  void load_ofAllVisesAndThePart_belowAtAndAboveWhatTheTableBears() {
    wide.mass = Optional.of(BigDecimal.TEN);
    narrow.mass = Optional.of(new BigDecimal("20"));
    JobDraft job = part(20 * MM);
    job.mass = Optional.of(new BigDecimal("5"));
    machine.maxLoad = Optional.of(new BigDecimal("34.999"));
    assertEquals(0, held(0, job.build()).size());
    machine.maxLoad = Optional.of(new BigDecimal("35"));
    assertEquals(
        Optional.of(BigDecimal.ZERO),
        held(0, job.build()).get(0).loadRoom().map(BigDecimal::stripTrailingZeros));
    machine.maxLoad = Optional.of(new BigDecimal("36"));
    assertEquals(1, held(1, job.build()).size());
    // A blank mass of the neighbour leaves the load unchecked.
    wide.mass = Optional.empty();
    assertEquals(List.of(Unchecked.TOOL, Unchecked.LOAD), held(1, job.build()).get(0).unchecked());
    machine.maxLoad = Optional.of(new BigDecimal("24.999"));
    assertEquals(0, held(1, job.build()).size());
  }

  /**
   * Beds 30 and 60, jaws 20 above them: a head over the low vise stands 30 and the tool above the
   * table, and must clear the tall one by 6: 86. Each alone needs a tool of 26.
   */
  @Test
  void head_overTheLowVise_belowAtAndAboveWhatTheTallOneAsks() {
    narrow.bedHeight = 60 * MM;
    narrow.boltGrip = OptionalLong.of(10 * MM);
    machine.noseMin = Dimension.of(0);
    machine.noseMax = Dimension.of(500 * MM);
    Box above = new Box(Interval.ALL, Interval.ALL, Interval.of(0, Length.ENDLESS));
    machine.guards.add(Guards.box("head", "", new Axes(false, false, true), When.CUTTING, above));
    Job job = part(20 * MM).build();
    settings = settings.toBuilder().shortestTool(OptionalLong.of(56 * MM - 2)).build();
    assertEquals(0, held(0, job).size());
    assertEquals(1, held(1, job).size());
    settings = settings.toBuilder().shortestTool(OptionalLong.of(56 * MM)).build();
    assertEquals(1, held(0, job).size());
    settings = settings.toBuilder().shortestTool(OptionalLong.of(57 * MM)).build();
    assertEquals(1, held(0, job).size());
  }

  @Test
  void jaws_alongTheOtherAxis_holdNothing() {
    JobDraft job = part(20 * MM);
    job.jawsAlong = Optional.of(Axis.X);
    assertEquals(1, held(0, job.build()).size());
    job.jawsAlong = Optional.of(Axis.Y);
    assertEquals(0, held(0, job.build()).size());
  }

  @Test
  void part_tooWideForTheJaws_isNotHeld() {
    JobDraft job = part(20 * MM);
    job.width = 38 * MM;
    assertEquals(1, held(0, job.build()).size());
    job.width = 38 * MM + 2;
    assertEquals(0, held(0, job.build()).size());
  }
}
