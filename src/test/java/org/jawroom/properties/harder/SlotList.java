package org.jawroom.properties.harder;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.value.Dimension;

/** Slots given by the place of each rather than by count, pitch and first. */
final class SlotList {
  private SlotList() {}

  /** Lists the slots one by one; leaves them alone if a blank pitch leaves their places open. */
  static void list(MachineDraft mill) {
    boolean placed = mill.slotPitch.isKnown() || mill.slotCount == 1;
    if (!mill.slotPositions.isEmpty() || mill.slotCount == 0 || !placed) {
      return;
    }
    long pitch = mill.slotPitch.isKnown() ? mill.slotPitch.length() : 0;
    // Halved once at the end: a middle may lie on a half nanometre, a centre line of whole ones
    // need not.
    long twiceFirst =
        mill.slotFirst.isPresent()
            ? 2 * mill.slotFirst.getAsLong()
            : across(mill) - (mill.slotCount - 1) * pitch;
    List<Long> positions = new ArrayList<>();
    for (int i = 0; i < mill.slotCount; i++) {
      positions.add((twiceFirst + 2 * i * pitch) / 2);
    }
    mill.slotPositions = positions;
    mill.slotFirst = OptionalLong.empty();
    mill.slotPitch = Dimension.BLANK;
  }

  /** The side of the table that the slots are counted along. */
  static long across(MachineDraft mill) {
    return mill.slotDirection == Axis.X ? mill.tableWidth : mill.tableLength;
  }

  /** Measures the same slots from the table's other edge. */
  static void fromOtherEdge(MachineDraft mill) {
    long across = across(mill);
    List<Long> positions = new ArrayList<>();
    mill.slotPositions.forEach(position -> positions.add(0, across - position));
    mill.slotPositions = positions;
    if (mill.slotFirst.isPresent() && (mill.slotPitch.isKnown() || mill.slotCount == 1)) {
      long pitch = mill.slotCount == 1 ? 0 : mill.slotPitch.length();
      long last = mill.slotFirst.getAsLong() + (mill.slotCount - 1) * pitch;
      mill.slotFirst = OptionalLong.of(across - last);
    }
  }
}
