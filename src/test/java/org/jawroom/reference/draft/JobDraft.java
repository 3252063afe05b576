package org.jawroom.reference.draft;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Dimension;

/** A mutable draft of a job. */
public final class JobDraft {
  public String name = "job";
  public long length;
  public long width;
  public long height;
  public OptionalLong grip = OptionalLong.empty();
  public Optional<BigDecimal> mass = Optional.empty();
  public Dimension tool = Dimension.BLANK;
  public Optional<Axis> jawsAlong = Optional.empty();
  public List<String> machines = List.of();

  /** Builds the job. */
  public Job build() {
    return new Job(name, length, width, height, grip, mass, tool, jawsAlong, machines, 1);
  }
}
