package org.jawroom.properties.harder;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.GuardDraft;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;

/** What makes a machine harder to place a vise on. */
final class MachineHardenings {
  private MachineHardenings() {}

  static List<Hardening> all() {
    return List.of(
        Hardening.of(
            "more travel along x, every guard as it stands at mid-travel",
            (shop, by, pick) -> {
              shop.mill.travelX += 2 * by;
              holdAtMidTravel(shop.mill, Axis.X, by);
            }),
        Hardening.of(
            "more travel along y, every guard as it stands at mid-travel",
            (shop, by, pick) -> {
              shop.mill.travelY += 2 * by;
              holdAtMidTravel(shop.mill, Axis.Y, by);
            }),
        Hardening.prepared(
            "more travel, gaps as taped",
            (shop, by, pick) -> dropWhatCountsOnlyWhileLoading(shop),
            (shop, by, pick) -> {
              shop.mill.travelX += 2 * by;
              shop.mill.travelY += 2 * by;
            }),
        Hardening.of(
            "a narrower gap", (shop, by, pick) -> narrow(shop.mill, Side.values()[pick % 4], by)),
        Hardening.prepared(
            "a gap that was none",
            (shop, by, pick) -> setGap(shop.mill, Side.values()[pick % 4], Dimension.NONE),
            (shop, by, pick) -> setGap(shop.mill, Side.values()[pick % 4], Dimension.of(by))),
        Hardening.relieved(
            "a guard less",
            (shop, by, pick) -> {
              if (!shop.mill.guards.isEmpty()) {
                shop.mill.guards.remove(pick % shop.mill.guards.size());
              }
            }),
        Hardening.relieved(
            "a gap given as none",
            (shop, by, pick) -> setGap(shop.mill, Side.values()[pick % 4], Dimension.NONE)),
        Hardening.of(
            "larger guards",
            (shop, by, pick) ->
                shop.mill.guards.replaceAll(ShopChange.guard(guard -> grow(guard, by)))),
        Hardening.of(
            "guards that count always",
            (shop, by, pick) ->
                shop.mill.guards.replaceAll(ShopChange.guard(guard -> guard.when = When.ALWAYS))),
        Hardening.of(
            "wider ledges",
            (shop, by, pick) -> {
              Sides<Long> old = shop.mill.ledges;
              shop.mill.ledges =
                  new Sides<>(old.front() + by, old.rear() + by, old.left() + by, old.right() + by);
            }),
        Hardening.prepared(
            "a nose that goes lower, down to the bed",
            (shop, by, pick) -> shop.settings.shortestTool = OptionalLong.of(0),
            (shop, by, pick) -> shop.mill.noseMin = ShopChange.plus(shop.mill.noseMin, -by)),
        Hardening.of(
            "a turn less", (shop, by, pick) -> shop.mill.turns = without(shop.mill.turns, pick)),
        Hardening.prepared(
            "a slot less",
            (shop, by, pick) -> SlotList.list(shop.mill),
            (shop, by, pick) -> dropSlot(shop.mill, pick)),
        Hardening.of(
            "shorter slots",
            (shop, by, pick) -> {
              long whole =
                  shop.mill.slotDirection == Axis.X ? shop.mill.tableLength : shop.mill.tableWidth;
              long old = shop.mill.slotLength.orElse(whole);
              shop.mill.slotLength = OptionalLong.of(Math.max(0, old - by));
            }));
  }

  /** The turns without one of them; without change if there are none. */
  static Set<Orientation> without(Set<Orientation> turns, int pick) {
    Set<Orientation> left = EnumSet.allOf(Orientation.class);
    left.retainAll(turns);
    left.remove(Orientation.values()[pick % 4]);
    return left;
  }

  /** Taped gaps less what half the travel grew by, so that the faces at mid-travel stay. */
  private static void holdAtMidTravel(MachineDraft mill, Axis axis, long by) {
    for (Side side : Side.values()) {
      if (SideBoxes.across(side) == axis && SideBoxes.moves(mill, Axes.NONE, axis)) {
        narrow(mill, side, by);
      }
    }
    mill.guards.replaceAll(
        ShopChange.guard(
            guard -> {
              if (guard.side.map(SideBoxes::across).filter(axis::equals).isPresent()
                  && SideBoxes.moves(mill, guard.carriedBy, axis)) {
                guard.gap = ShopChange.plus(guard.gap, -by);
              }
            }));
  }

  /**
   * While loading at one place a taped guard stands the farther off, the more travel there is, so
   * that the margin of what counts only then would grow.
   */
  private static void dropWhatCountsOnlyWhileLoading(ShopDraft shop) {
    shop.vise.handleRadius = Dimension.NONE;
    shop.vise.parts.removeIf(part -> part.when() == When.LOADING || part.name().equals("handle"));
    // One that follows the nose is left out while cutting if there is no shortest tool.
    Machine mill = shop.mill.build();
    shop.mill.guards.removeIf(
        guard ->
            guard.side().isPresent()
                && (guard.when() == When.LOADING || mill.movesAgainstTable(guard).z()));
  }

  private static void narrow(MachineDraft mill, Side side, long by) {
    setGap(mill, side, ShopChange.plus(mill.build().gap(side), -by));
  }

  static void setGap(MachineDraft mill, Side side, Dimension gap) {
    switch (side) {
      case FRONT -> mill.frontGap = gap;
      case REAR -> mill.rearGap = gap;
      case LEFT -> mill.leftGap = gap;
      case RIGHT -> mill.rightGap = gap;
    }
  }

  private static void grow(GuardDraft guard, long by) {
    guard.gap = ShopChange.plus(guard.gap, -by);
    guard.x = ShopChange.grown(guard.x, by);
    guard.y = ShopChange.grown(guard.y, by);
    guard.z = ShopChange.grown(guard.z, by);
  }

  private static void dropSlot(MachineDraft mill, int pick) {
    if (!mill.slotPositions.isEmpty()) {
      List<Long> left = new ArrayList<>(mill.slotPositions);
      left.remove(pick % left.size());
      mill.slotPositions = left;
      mill.slotCount = left.size();
    }
  }
}
