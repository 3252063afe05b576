package org.jawroom.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** Inputs changed by hand as a remedy describes, in ways a planner can type into the tables. */
public record Applied(Settings settings, Machine machine, Vise vise) {

  /** The remedy with its amount smaller by {@code less}. */
  public static Applied of(
      Settings settings, Machine machine, Vise vise, Remedy remedy, long less) {
    long amount = remedy.amount().orElse(0) - less;
    return switch (remedy.kind()) {
      case HANDLE_OFF -> new Applied(settings, machine, handleOff(vise));
      case UPPER_SWING ->
          new Applied(
              settings,
              machine,
              vise.withHandle(
                  new Handle(
                      vise.handle().radius(),
                      vise.handle().depth(),
                      vise.handle().onWhileCutting(),
                      false)));
      case TURN -> {
        EnumSet<Orientation> turn = EnumSet.of(remedy.turn());
        yield new Applied(settings, machine.withTurns(turn), vise.withTurns(turn));
      }
      case TRAVEL_FRONT -> new Applied(settings, cut(machine, Side.FRONT, amount), vise);
      case TRAVEL_BACK -> new Applied(settings, cut(machine, Side.REAR, amount), vise);
      case TRAVEL_LEFT -> new Applied(settings, cut(machine, Side.LEFT, amount), vise);
      case TRAVEL_RIGHT -> new Applied(settings, cut(machine, Side.RIGHT, amount), vise);
      case MOVE -> new Applied(settings, moved(machine, remedy, amount), vise);
      case CLEARANCE ->
          new Applied(
              settings.toBuilder().clearance(settings.clearance() - amount).build(),
              machine.withGuardRows(
                  machine.guardRows().stream().map(g -> asking(g, amount)).toList()),
              vise);
      case RAISE -> throw new IllegalArgumentException("no table says " + remedy.name());
    };
  }

  public Outcome solve() {
    return Pairing.solve(settings, machine, vise);
  }

  private static Vise handleOff(Vise vise) {
    List<VisePart> parts = new ArrayList<>();
    for (VisePart part : vise.parts()) {
      boolean handle = part.name().equals("handle");
      if (!handle || part.when() == When.LOADING) {
        parts.add(part);
      } else if (part.when() == When.ALWAYS) {
        parts.add(part.withWhen(When.LOADING));
      }
    }
    Handle handle = vise.handle();
    return vise.withParts(parts)
        .withHandle(new Handle(handle.radius(), handle.depth(), false, handle.fullSwing()));
  }

  /**
   * A machine that is the same while loading and has less travel at one end while cutting. Every
   * guard that moves along the axis becomes two rows, one per situation, so that only the tables
   * are used. The cutting row is given at a mid-travel shifted by half the cut, within a travel
   * shorter by the cut. A shorter travel of the whole machine would also move the load position, so
   * the loading rows are given at the load position and move with the table.
   */
  private static Machine cut(Machine machine, Side tableToward, long by) {
    Axis axis = tableToward == Side.LEFT || tableToward == Side.RIGHT ? Axis.X : Axis.Y;
    // The table stands toward the front or left at the spindle's greatest y or x. Cutting there
    // moves the middle of the travel down.
    long shift = tableToward == Side.FRONT || tableToward == Side.LEFT ? -by / 2 : by / 2;
    List<Guard> guards = new ArrayList<>();
    for (Guard guard : AsBoxes.all(machine)) {
      boolean moves = machine.tableMoves().has(axis) != guard.carriedBy().has(axis);
      if (guard.when().countsWhileCutting()) {
        Box at = moves ? AsBoxes.shifted(guard.limits(), axis, shift) : guard.limits();
        guards.add(AsBoxes.row(guard, guard.name(), guard.carriedBy(), When.CUTTING, at));
      }
      if (guard.when().countsWhileLoading()) {
        guards.add(AsBoxes.loading(machine, guard));
      }
    }
    long travelX = machine.travelX() - (axis == Axis.X ? by : 0);
    long travelY = machine.travelY() - (axis == Axis.Y ? by : 0);
    long spindleX = machine.spindleX() + (axis == Axis.X ? shift : 0);
    long spindleY = machine.spindleY() + (axis == Axis.Y ? shift : 0);
    Dimension none = Dimension.NONE;
    return machine.toBuilder()
        .travel(travelX, travelY)
        .spindle(spindleX, spindleY)
        .gaps(new Sides<>(none, none, none, none))
        .load(OptionalLong.of(spindleX), OptionalLong.of(spindleY))
        .guardRows(guards)
        .build();
  }

  private static Machine moved(Machine machine, Remedy remedy, long by) {
    String name = remedy.guard().orElseThrow().name();
    for (Side side : Side.values()) {
      if (name.equals(
          List.of("door", "rear cover", "left guard", "right guard").get(side.ordinal()))) {
        Dimension gap = machine.gap(side);
        return machine.withGap(side, Dimension.of(gap.length() + by));
      }
    }
    List<Guard> guards = new ArrayList<>();
    for (Guard guard : machine.guardRows()) {
      if (!guard.name().equals(name)) {
        guards.add(guard);
      } else if (guard.side().isPresent()) {
        guards.add(guard.withGap(Dimension.of(guard.gap().length() + by)));
      } else {
        Box box = guard.limits();
        guards.add(
            guard.withLimits(
                switch (remedy.way().orElseThrow()) {
                  case LEFT -> AsBoxes.shifted(box, Axis.X, -by);
                  case RIGHT -> AsBoxes.shifted(box, Axis.X, by);
                  case FRONT -> AsBoxes.shifted(box, Axis.Y, -by);
                  case REAR -> AsBoxes.shifted(box, Axis.Y, by);
                  case UP -> AsBoxes.shifted(box, Axis.Z, by);
                }));
      }
    }
    return machine.withGuardRows(guards);
  }

  private static Guard asking(Guard guard, long less) {
    return guard.clearance().isPresent()
        ? guard.withClearance(OptionalLong.of(guard.clearance().getAsLong() - less))
        : guard;
  }
}
