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
import org.jawroom.shop.Job;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * The requirements of a job that do not depend on the position of the vise. A check that needs a
 * blank column is skipped and recorded as unchecked.
 */
final class JobChecks {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Job job;
  private final Interval heights;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final Set<Unchecked> unchecked = EnumSet.noneOf(Unchecked.class);
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

  List<Unchecked> unchecked() {
    return List.copyOf(unchecked);
  }

  /** See {@link JobOutcome}; empty if a column it needs is blank. */
  OptionalLong toolRoom() {
    return toolRoom;
  }

  Optional<BigDecimal> loadRoom() {
    return loadRoom;
  }

  private void jaws() {
    atLeast(vise.opening().hi() - settings.loadRoom() - job.width(), JobReason.TOO_WIDE);
    atLeast(job.width() - vise.opening().lo(), JobReason.TOO_NARROW);
    job.grip().ifPresent(grip -> atLeast(vise.jaws().tallestHeight() - grip, JobReason.GRIP));
  }

  private void longTool() {
    if (machine.noseMax().isKnown() && job.toolLength().isKnown()) {
      long room = machine.noseMax().length() - job.toolLength().length() - heights.hi();
      toolRoom = OptionalLong.of(room);
      atLeast(room - settings.clearance(), JobReason.LONG_TOOL);
    } else {
      unchecked.add(Unchecked.TOOL);
    }
  }

  private void shortTool() {
    if (settings.shortestTool().isEmpty()) {
      return;
    }
    if (machine.noseMin().isKnown()) {
      long tip = machine.noseMin().length() - settings.shortestTool().getAsLong();
      atLeast(heights.hi() - tip, JobReason.SHORT_TOOL);
    } else {
      unchecked.add(Unchecked.TOOL);
    }
  }

  /** A blank mass counts as 0 where something fails for certain even so. */
  private void load() {
    if (machine.maxLoad().isEmpty()) {
      unchecked.add(Unchecked.LOAD);
      return;
    }
    BigDecimal atBest =
        machine
            .maxLoad()
            .get()
            .subtract(vise.mass().orElse(BigDecimal.ZERO))
            .subtract(job.mass().orElse(BigDecimal.ZERO));
    if (atBest.signum() < 0) {
      shortfalls.add(Shortfall.ofLoad(atBest.negate()));
    }
    if (vise.mass().isEmpty()) {
      unchecked.add(Unchecked.LOAD);
      return;
    }
    BigDecimal room = job.mass().isPresent() ? atBest : atBest.subtract(JobPart.steelMass(job));
    if (room.signum() >= 0 || job.mass().isPresent()) {
      loadRoom = Optional.of(room);
    } else {
      unchecked.add(Unchecked.LOAD);
    }
  }

  private void atLeast(long spare, JobReason reason) {
    if (spare < 0) {
      shortfalls.add(Shortfall.of(reason, -spare));
    }
  }
}
