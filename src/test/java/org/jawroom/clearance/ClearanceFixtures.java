package org.jawroom.clearance;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.fixture.Guards;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.VisePart;

/** Builds parts, guards and limits from the names that reports use. */
public final class ClearanceFixtures {
  private ClearanceFixtures() {}

  /** A part from the vise's own columns if the name is one of theirs, else a row of vise_parts. */
  public static Part part(
      String name,
      int rank,
      boolean handle,
      Situation situation,
      OpeningInterval u,
      Interval v,
      Interval w,
      long tolerance) {
    Optional<PartRole> own =
        handle
            ? Optional.of(PartRole.HANDLE)
            : Arrays.stream(PartRole.values()).filter(r -> r.word().equals(name)).findFirst();
    Optional<VisePart> row =
        own.isPresent()
            ? Optional.empty()
            : Optional.of(
                new VisePart(
                    name,
                    When.ALWAYS,
                    Interval.of(u.closed().lo(), u.closed().hi()),
                    Interval.of(u.open().lo(), u.open().hi()),
                    v,
                    w,
                    OptionalLong.empty()));
    return new Part(
        own.orElse(PartRole.ROW),
        row,
        rank,
        situation,
        u,
        v,
        w,
        tolerance,
        java.util.Optional.empty());
  }

  /** A box carried by the frame, or the table. */
  public static SweptGuard guard(
      String name,
      int rank,
      boolean table,
      Situation situation,
      Box box,
      long clearance,
      long tolerance) {
    return new SweptGuard(
        table ? Optional.empty() : Optional.of(box(name, box)),
        rank,
        Axes.NONE,
        situation,
        box,
        clearance,
        tolerance);
  }

  /** A row of guards: a box carried by the frame. */
  public static Guard box(String name, Box box) {
    return Guards.box(name, box);
  }

  /** The same on a mill whose table moves along x and y. */
  public static Limit limit(
      long gap,
      long required,
      long tolerance,
      String guard,
      String part,
      Axis axis,
      Situation situation,
      JawEnd opening,
      Box partBox,
      Box guardBox) {
    Machine mill = Machine.builder("mill").build();
    return limit(
        mill, gap, required, tolerance, guard, part, axis, situation, opening, partBox, guardBox);
  }

  /**
   * A limit between a part and a guard by their names, of a machine that has the guard as a row, as
   * a taped gap, or as its table.
   */
  public static Limit limit(
      Machine machine,
      long gap,
      long required,
      long tolerance,
      String guard,
      String part,
      Axis axis,
      Situation situation,
      JawEnd opening,
      Box partBox,
      Box guardBox) {
    Optional<Guard> listed =
        machine.guards().stream().filter(one -> one.name().equals(guard)).findFirst();
    Optional<Guard> source =
        listed.isPresent() || guard.equals(SweptGuard.TABLE)
            ? listed
            : Optional.of(taped(guard).orElseGet(() -> box(guard, guardBox)));
    SweptGuard swept =
        new SweptGuard(
            source,
            listed.map(machine.guards()::indexOf).orElse(machine.guards().size()),
            source.map(machine::movesAgainstTable).orElse(Axes.NONE),
            situation,
            guardBox,
            required,
            0);
    OpeningInterval nowhere = OpeningInterval.constant(Interval.of(0, 0), Interval.of(0, 1));
    Interval point = Interval.of(0, 0);
    return new Limit(
        part(part, 0, part.equals(VisePart.HANDLE), situation, nowhere, point, point, tolerance),
        swept,
        gap,
        required,
        axis,
        opening,
        partBox);
  }

  private static Optional<Guard> taped(String name) {
    return Arrays.stream(Side.values())
        .filter(side -> Guard.tapedName(side).equals(name))
        .map(side -> Guard.taped(side, Dimension.of(50 * Length.MM)))
        .findFirst();
  }
}
