package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/**
 * The requirements of a job that do not depend on the position of the vise. A check that needs a
 * blank column is skipped and recorded as unchecked.
 */
final class JobChecks {
  private final Certainty certainty;
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final List<Vise> others;
  private final Job job;
  private final Interval heights;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final Set<Column> open = EnumSet.noneOf(Column.class);
  private final Set<Unchecked> unchecked = EnumSet.noneOf(Unchecked.class);
  private OptionalLong toolRoom = OptionalLong.empty();
  private Optional<BigDecimal> loadRoom = Optional.empty();

  private JobChecks(
      Settings settings,
      Machine machine,
      Vise vise,
      List<Vise> others,
      Job job,
      Certainty certainty) {
    this.certainty = certainty;
    this.others = others;
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.job = job;
    this.heights = JobPart.heights(vise, job);
  }

  /**
   * Checks a job.
   *
   * @param others other vises on the table, which it bears, too
   */
  static JobChecks of(
      Settings settings,
      Machine machine,
      Vise vise,
      List<Vise> others,
      Job job,
      Certainty certainty) {
    JobChecks checks = new JobChecks(settings, machine, vise, others, job, certainty);
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

  /** The columns of readings known within bounds that tools need. */
  Set<Column> open() {
    return open;
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
    if (given(machine.noseMax(), Column.NOSE_MAX) & given(job.toolLength(), Column.TOOL_LENGTH)) {
      Interval nose = machine.noseMax().values(0);
      Interval tool = job.toolLength().values(0);
      long room = (isWorst() ? nose.lo() - tool.hi() : nose.hi() - tool.lo()) - heights.hi();
      toolRoom = Length.isBounded(room) ? OptionalLong.of(room) : OptionalLong.empty();
      atLeast(room - settings.clearance(), JobReason.LONG_TOOL);
    } else {
      unchecked.add(Unchecked.TOOL);
    }
  }

  private void shortTool() {
    if (settings.shortestTool().isEmpty()) {
      return;
    }
    if (given(machine.noseMin(), Column.NOSE_MIN)) {
      Interval nose = machine.noseMin().values(0);
      long tip = (isWorst() ? nose.hi() : nose.lo()) - settings.shortestTool().getAsLong();
      atLeast(heights.hi() - tip, JobReason.SHORT_TOOL);
    } else {
      unchecked.add(Unchecked.TOOL);
    }
  }

  private boolean isWorst() {
    return certainty == Certainty.AT_WORST;
  }

  /** Whether a reading is not blank; notes its column if it is known within bounds only. */
  private boolean given(Dimension dimension, Column column) {
    if (dimension.isOpen() && !dimension.isBlank()) {
      open.add(column);
    }
    return !dimension.isBlank();
  }

  /** A blank mass counts as 0 where something fails for certain even so. */
  private void load() {
    if (machine.maxLoad().isEmpty()) {
      unchecked.add(Unchecked.LOAD);
      return;
    }
    List<BigDecimal> masses =
        Stream.concat(Stream.of(vise), others.stream())
            .flatMap(one -> one.mass().stream())
            .toList();
    BigDecimal atBest =
        machine
            .maxLoad()
            .get()
            .subtract(masses.stream().reduce(BigDecimal.ZERO, BigDecimal::add))
            .subtract(job.mass().orElse(BigDecimal.ZERO));
    if (atBest.signum() < 0) {
      shortfalls.add(Shortfall.ofLoad(atBest.negate()));
    }
    if (masses.size() < 1 + others.size()) {
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
