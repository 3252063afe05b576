package org.jawroom.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;

/**
 * A part to be held.
 *
 * @param length along the jaws, {@code width} gripped between them
 * @param grip how deep it sits below the jaw tops; empty: it rests on the bed
 * @param mass kg; empty if blank
 * @param toolLength the longest tool, nose to tip; may be blank
 * @param jawsAlong which way the program wants the jaws; empty: any
 * @param machines the names of those that may run it; empty: all
 */
public record Job(
    String name,
    long length,
    long width,
    long height,
    OptionalLong grip,
    Optional<BigDecimal> mass,
    Dimension toolLength,
    Optional<Axis> jawsAlong,
    List<String> machines,
    int quantity) {
  public Job {
    Check.named("job", name);
    machines = List.copyOf(machines);
    Check.notNegative("part", Math.min(length, Math.min(width, height)));
    Check.notNegative("quantity", quantity);
  }
}
