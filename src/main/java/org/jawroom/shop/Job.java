package org.jawroom.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * A workpiece to hold. Lengths in half-nanometres.
 *
 * @param length along the jaws, {@code width} the size gripped between them
 * @param grip depth below the jaw tops; empty: it rests on the bed
 * @param mass kg; empty if blank
 * @param toolLength longest tool, spindle nose to tip; may be blank
 * @param jawsAlong table axis along which the program needs the jaws; empty: either
 * @param machines names of the machines that may run it; empty: all
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
    Require.named("job", name);
    machines = List.copyOf(machines);
    Require.notNegative("part", Math.min(length, Math.min(width, height)));
    Require.notNegative("quantity", quantity);
  }
}
