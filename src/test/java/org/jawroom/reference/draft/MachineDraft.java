package org.jawroom.reference.draft;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;

/** A mutable draft of a machine, preset with the numbers of a small bed mill. */
public final class MachineDraft {
  public String name = "mill";
  public Axes tableMoves = new Axes(true, true, false);
  public long tableLength;
  public long tableWidth;
  public long travelX;
  public long travelY;
  public long spindleX;
  public long spindleY;
  public Axis slotDirection = Axis.X;
  public int slotCount = 3;
  public Dimension slotWidth = Dimension.BLANK;
  public Dimension slotPitch = Dimension.BLANK;
  public OptionalLong slotFirst = OptionalLong.empty();
  public List<Long> slotPositions = List.of();
  public OptionalLong slotLength = OptionalLong.empty();
  public Sides<Long> ledges = new Sides<>(0L, 0L, 0L, 0L);
  public Dimension frontGap = Dimension.NONE;
  public Dimension rearGap = Dimension.NONE;
  public Dimension leftGap = Dimension.NONE;
  public Dimension rightGap = Dimension.NONE;
  public Dimension noseMin = Dimension.BLANK;
  public Dimension noseMax = Dimension.BLANK;
  public Optional<BigDecimal> maxLoad = Optional.empty();
  public OptionalLong loadX = OptionalLong.empty();
  public OptionalLong loadY = OptionalLong.empty();
  public Set<Orientation> turns = EnumSet.allOf(Orientation.class);
  public long tolerance;
  public final List<Guard> guards = new ArrayList<>();

  /** Builds the machine; a missing load position takes the reader's default. */
  public Machine build() {
    return Machine.builder(name)
        .tableMoves(tableMoves)
        .table(tableLength, tableWidth)
        .travel(travelX, travelY)
        .spindle(spindleX, spindleY)
        .slots(
            new Slots(
                slotDirection,
                slotCount,
                slotWidth,
                slotPitch,
                slotFirst,
                slotPositions,
                slotLength))
        .ledges(ledges)
        .gaps(new Sides<>(frontGap, rearGap, leftGap, rightGap))
        .nose(noseMin, noseMax)
        .maxLoad(maxLoad)
        .load(loadX, loadY)
        .turns(turns)
        .provenance(new Provenance(tolerance, false, "", ""))
        .guardRows(guards)
        .build();
  }
}
