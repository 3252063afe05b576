package org.jawroom.reference.random;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;

/**
 * Makes one side of a shop mirror the other, so that positions, turns and mounts tie exactly and
 * only the last steps of the order of preference decide.
 */
final class RandomSymmetry {
  private RandomSymmetry() {}

  static void mirror(Dice dice, MachineDraft mill, ViseDraft vise) {
    mill(mill);
    vise(dice, vise);
    boolean inX = dice.chance(70);
    boolean inY = !inX || dice.chance(60);
    if (inX) {
      mirrorGuards(mill, true);
    }
    if (inY) {
      mirrorGuards(mill, false);
    }
  }

  private static void mill(MachineDraft mill) {
    mill.spindleX = 0;
    mill.spindleY = 0;
    mill.loadX = OptionalLong.empty();
    mill.loadY = OptionalLong.empty();
    mill.slotFirst = OptionalLong.empty();
    if (!mill.slotPositions.isEmpty()) {
      mill.slotPositions = List.of();
      mill.slotCount = 1;
    }
    mill.ledges = new Sides<>(0L, 0L, 0L, 0L);
    mill.rearGap = mill.frontGap;
    mill.leftGap = mill.rightGap;
    mill.turns = EnumSet.allOf(Orientation.class);
  }

  private static void vise(Dice dice, ViseDraft vise) {
    vise.turns = EnumSet.allOf(Orientation.class);
    vise.handleRadius = Dimension.NONE;
    if (dice.chance(70)) {
      vise.both = true;
      vise.rearReach = vise.frontReach;
      vise.rearClosed = vise.frontClosed;
      vise.rearOpen = vise.frontOpen;
      vise.boltU = Dimension.of(0);
    }
    if (dice.chance(60) && vise.boltSpacing.isKnown()) {
      Dimension half = Dimension.of(vise.boltSpacing.length() / 2);
      Dimension back = Dimension.of(-half.length());
      List<Bolt> pair =
          List.of(
              new Bolt(vise.boltU, back, vise.holeU, vise.holeV),
              new Bolt(vise.boltU, half, vise.holeU, vise.holeV));
      vise.mounts.add(new Mount("twin", false, pair));
    }
  }

  private static void mirrorGuards(MachineDraft mill, boolean inX) {
    List<Guard> all = new ArrayList<>();
    for (Guard guard : mill.guards) {
      Box limits = guard.limits();
      Interval x = inX ? negated(limits.x()) : limits.x();
      Interval y = inX ? limits.y() : negated(limits.y());
      if (guard.side().isEmpty()) {
        all.add(guard);
        all.add(
            new Guard(
                guard.name() + (inX ? " across" : " beyond"),
                guard.kind(),
                guard.carriedBy(),
                guard.when(),
                guard.side(),
                guard.gap(),
                new Box(x, y, limits.z()),
                guard.clearance(),
                guard.tolerance()));
      }
    }
    mill.guards.clear();
    mill.guards.addAll(all);
  }

  private static Interval negated(Interval interval) {
    return new Interval(-interval.hi(), -interval.lo());
  }
}
