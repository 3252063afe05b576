package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.clearance.JobPart;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Job;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * The requirements of a job that do not depend on the position of the vise. A check that needs a
 * blank column is skipped and the column recorded.
 */
final class JobChecks {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Job job;
  private final Interval heights;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final Set<Column> blanks = EnumSet.noneOf(Column.class);
  private OptionalLong toolRoom = OptionalLong.empty();
  private Optional<BigDecimal> loadRoom = Optional.empty();

  private JobChecks(Settings settings, Machine machine, Vise vise, Job job) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.job = job;
    this.heights = JobPart.heights(vise, job);
  }

  static JobChecks of(Settings settings, Machine machine, Vise vise, Job job) {
    JobChecks checks = new JobChecks(settings, machine, vise, job);
    if (!job.machines().isEmpty() && !job.machines().contains(machine.name())) {
      checks.shortfalls.add(Shortfall.of(JobReason.MACHINE));
    }
    checks.jaws();
    checks.longTool();
    checks.shortTool();
    checks.load();
    return checks;
  }

  /** All checks that fail, in the order of reasons. */
  List<Shortfall> shortfalls() {
    return shortfalls;
  }

  Set<Column> blanks() {
    return blanks;
  }

  /** See {@link JobOutcome}; empty if a column it needs is blank. */
  OptionalLong toolRoom() {
    return toolRoom;
  }

  Optional<BigDecimal> loadRoom() {
    return loadRoom;
  }

  private void jaws() {
    atLeast(vise.opening().hi() - job.width(), JobReason.TOO_WIDE);
    atLeast(job.width() - vise.opening().lo(), JobReason.TOO_NARROW);
    job.grip().ifPresent(grip -> atLeast(vise.jaws().tallestHeight() - grip, JobReason.GRIP));
  }

  private void longTool() {
    if (given(machine.noseMax(), Column.NOSE_MAX) & given(job.toolLength(), Column.TOOL_LENGTH)) {
      long room = machine.noseMax().length() - job.toolLength().length() - heights.hi();
      toolRoom = OptionalLong.of(room);
      atLeast(room - settings.clearance(), JobReason.LONG_TOOL);
    }
  }

  private void shortTool() {
    if (settings.shortestTool().isPresent() && given(machine.noseMin(), Column.NOSE_MIN)) {
      long tip = machine.noseMin().length() - settings.shortestTool().getAsLong();
      atLeast(heights.hi() - tip, JobReason.SHORT_TOOL);
    }
  }

  private void load() {
    if (given(machine.maxLoad(), Column.MAX_LOAD)
        & given(vise.mass(), Column.VISE_MASS)
        & given(job.mass(), Column.JOB_MASS)) {
      BigDecimal room =
          machine.maxLoad().get().subtract(vise.mass().get()).subtract(job.mass().get());
      loadRoom = Optional.of(room);
      if (room.signum() < 0) {
        shortfalls.add(Shortfall.ofLoad(room.negate()));
      }
    }
  }

  private void atLeast(long spare, JobReason reason) {
    if (spare < 0) {
      shortfalls.add(Shortfall.of(reason, -spare));
    }
  }

  private boolean given(Dimension dimension, Column column) {
    return given(dimension.isBlank() ? Optional.empty() : Optional.of(dimension), column);
  }

  private boolean given(Optional<?> value, Column column) {
    if (value.isEmpty()) {
      blanks.add(column);
    }
    return value.isPresent();
  }
}
