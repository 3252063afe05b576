package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/**
 * The requirements of a job on a pairing, and those that fail. The checks that do not depend on the
 * position of the vise are made here, {@link #vise} before and {@link #toolAndLoad} after the
 * place, so that what fails is in the order of reasons. A check that needs a blank column is
 * skipped and recorded as unchecked.
 */
final class JobChecks {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Job job;
  private final boolean isWorst;
  private final Interval heights;
  private final List<Shortfall> shortfalls = new ArrayList<>(2);
  private final Blanks open = new Blanks();
  private boolean toolUnchecked;
  private boolean loadUnchecked;
  private OptionalLong toolRoom = OptionalLong.empty();
  private Optional<BigDecimal> loadRoom = Optional.empty();

  JobChecks(PreparedMachine machine, Vise vise, Job job) {
    this.settings = machine.settings();
    this.machine = machine.machine();
    this.vise = vise;
    this.job = job;
    this.isWorst = machine.certainty() == Certainty.AT_WORST;
    this.heights = JobPart.heights(vise, job);
  }

  /** All checks that fail so far. */
  List<Shortfall> shortfalls() {
    return shortfalls;
  }

  /** The columns of readings known within bounds that tools need. */
  Blanks open() {
    return open;
  }

  List<Unchecked> unchecked() {
    if (toolUnchecked) {
      return loadUnchecked ? List.of(Unchecked.TOOL, Unchecked.LOAD) : List.of(Unchecked.TOOL);
    }
    return loadUnchecked ? List.of(Unchecked.LOAD) : List.of();
  }

  /** The interval from the underside of the workpiece to its top above the table. */
  Interval heights() {
    return heights;
  }

  /** See {@link JobOutcome}; empty if a column it needs is blank. */
  OptionalLong toolRoom() {
    return toolRoom;
  }

  Optional<BigDecimal> loadRoom() {
    return loadRoom;
  }

  /** Records what fails. */
  void fails(Shortfall shortfall) {
    shortfalls.add(shortfall);
  }

  /** Whether the machine may run the job, and the vise take the workpiece. */
  void vise() {
    if (!job.machines().isEmpty() && !job.machines().contains(machine.name())) {
      fails(Shortfall.of(JobReason.MACHINE));
    }
    atLeast(vise.opening().hi() - settings.loadRoom() - job.width(), JobReason.TOO_WIDE);
    atLeast(job.width() - vise.opening().lo(), JobReason.TOO_NARROW);
    if (job.grip().isPresent()) {
      atLeast(vise.jaws().tallestHeight() - job.grip().getAsLong(), JobReason.GRIP);
    }
  }

  /**
   * Whether tools clear and reach the workpiece, and whether the table bears it.
   *
   * @param others other vises on the table, which it bears, too
   */
  void toolAndLoad(List<Vise> others) {
    longTool();
    if (settings.shortestTool().isPresent()) {
      shortTool(settings.shortestTool().getAsLong());
    }
    if (machine.maxLoad().isPresent()) {
      load(machine.maxLoad().get(), others);
    } else {
      loadUnchecked = true;
    }
  }

  private void longTool() {
    if (given(machine.noseMax(), Column.NOSE_MAX) & given(job.toolLength(), Column.TOOL_LENGTH)) {
      Interval nose = machine.noseMax().values(0);
      Interval tool = job.toolLength().values(0);
      long room = (isWorst ? nose.lo() - tool.hi() : nose.hi() - tool.lo()) - heights.hi();
      toolRoom = Length.isBounded(room) ? OptionalLong.of(room) : OptionalLong.empty();
      atLeast(room - settings.clearance(), JobReason.LONG_TOOL);
    } else {
      toolUnchecked = true;
    }
  }

  private void shortTool(long shortest) {
    if (given(machine.noseMin(), Column.NOSE_MIN)) {
      Interval nose = machine.noseMin().values(0);
      long tip = (isWorst ? nose.hi() : nose.lo()) - shortest;
      atLeast(heights.hi() - tip, JobReason.SHORT_TOOL);
    } else {
      toolUnchecked = true;
    }
  }

  /** Whether a reading is not blank; notes its column if it is known within bounds only. */
  private boolean given(Dimension dimension, Column column) {
    return !dimension.isBlank() && open.given(dimension, column);
  }

  /** A blank mass counts as 0 where something fails for certain even so. */
  private void load(BigDecimal most, List<Vise> others) {
    boolean isKnown = vise.mass().isPresent();
    BigDecimal atBest = most.subtract(vise.mass().orElse(BigDecimal.ZERO));
    for (Vise other : others) {
      isKnown &= other.mass().isPresent();
      atBest = atBest.subtract(other.mass().orElse(BigDecimal.ZERO));
    }
    atBest = atBest.subtract(job.mass().orElse(BigDecimal.ZERO));
    if (atBest.signum() < 0) {
      fails(Shortfall.ofLoad(atBest.negate()));
    }
    BigDecimal room = job.mass().isPresent() ? atBest : atBest.subtract(JobPart.steelMass(job));
    if (isKnown && (job.mass().isPresent() || room.signum() >= 0)) {
      loadRoom = Optional.of(room);
    } else {
      loadUnchecked = true;
    }
  }

  private void atLeast(long spare, JobReason reason) {
    if (spare < 0) {
      fails(Shortfall.of(reason, -spare));
    }
  }
}
