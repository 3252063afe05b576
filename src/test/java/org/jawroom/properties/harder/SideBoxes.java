package org.jawroom.properties.harder;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jawroom.fixture.GuardDraft;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;

/** Writes gaps as rows of guards, and rows measured from a side as boxes. */
final class SideBoxes {
  private SideBoxes() {}

  /** Writes a machine's gaps as rows of guards, in their order before the others. */
  static void gapsAsRows(MachineDraft mill) {
    Map<Side, Dimension> gaps = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      gaps.put(side, mill.build().gap(side));
      MachineHardenings.setGap(mill, side, Dimension.NONE);
    }
    int at = 0;
    for (Map.Entry<Side, Dimension> gap : gaps.entrySet()) {
      if (!gap.getValue().isNone()) {
        GuardDraft row = new GuardDraft(gap.getKey().word() + " row");
        row.side = Optional.of(gap.getKey());
        row.gap = gap.getValue();
        // The door is open while loading.
        row.when = gap.getKey() == Side.FRONT ? When.CUTTING : When.ALWAYS;
        mill.guards.add(at++, row.build());
      }
    }
  }

  /** Writes every row of known gap as the box that it fills at mid-travel. */
  static void rowsAsBoxes(MachineDraft mill) {
    mill.guards.replaceAll(
        ShopChange.guard(
            guard -> {
              if (guard.side.isPresent() && guard.gap.isKnown()) {
                asBox(mill, guard, guard.side.get());
              }
            }));
  }

  private static void asBox(MachineDraft mill, GuardDraft guard, Side side) {
    boolean alongX = across(side) == Axis.X;
    long face = (alongX ? mill.tableLength : mill.tableWidth) / 2 + guard.gap.length();
    if (moves(mill, guard.carriedBy, across(side))) {
      face += (alongX ? mill.travelX : mill.travelY) / 2;
    }
    boolean low = side == Side.FRONT || side == Side.LEFT;
    Interval beyond =
        low ? new Interval(-Length.ENDLESS, -face) : new Interval(face, Length.ENDLESS);
    if (alongX) {
      guard.x = beyond;
    } else {
      guard.y = beyond;
    }
    guard.side = Optional.empty();
    guard.gap = Dimension.NONE;
  }

  /** The axis along which a gap on that side is taped. */
  static Axis across(Side side) {
    return side == Side.FRONT || side == Side.REAR ? Axis.Y : Axis.X;
  }

  static boolean moves(MachineDraft mill, Axes carriedBy, Axis axis) {
    return mill.tableMoves.has(axis) != carriedBy.has(axis);
  }
}
