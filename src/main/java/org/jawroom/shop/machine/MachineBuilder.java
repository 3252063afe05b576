package org.jawroom.shop.machine;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;

/**
 * Builds a {@link Machine}; whatever is not set takes the default of its column. All lengths in
 * half-nanometres, in the table frame.
 */
public final class MachineBuilder {
  private String name;
  private String description = "";
  private boolean candidate;
  private Axes tableMoves = new Axes(true, true, false);
  private long tableLength;
  private long tableWidth;
  private long travelX;
  private long travelY;
  private long spindleX;
  private long spindleY;
  private Slots slots = Slots.centred(Axis.X, 0, Dimension.BLANK, Dimension.BLANK);
  private Sides<Long> ledges = Sides.all(0L);
  private final Map<Side, Guard> taped = new EnumMap<>(Side.class);
  private Dimension noseMin = Dimension.BLANK;
  private Dimension noseMax = Dimension.BLANK;
  private Optional<BigDecimal> maxLoad = Optional.empty();
  private OptionalLong loadX = OptionalLong.empty();
  private OptionalLong loadY = OptionalLong.empty();
  private Set<Orientation> turns = EnumSet.allOf(Orientation.class);
  private List<String> lookedFor = List.of();
  private Provenance provenance = new Provenance(0, true, "", "");
  private Optional<BigDecimal> price = Optional.empty();
  private List<Guard> rows = List.of();

  MachineBuilder(String name) {
    this.name = name;
    gaps(Sides.all(Dimension.BLANK));
  }

  MachineBuilder(Machine machine) {
    this.name = machine.name();
    this.description = machine.description();
    this.candidate = machine.candidate();
    this.tableMoves = machine.tableMoves();
    this.tableLength = machine.tableLength();
    this.tableWidth = machine.tableWidth();
    this.travelX = machine.travelX();
    this.travelY = machine.travelY();
    this.spindleX = machine.spindleX();
    this.spindleY = machine.spindleY();
    this.slots = machine.slots();
    this.ledges = machine.ledges();
    this.noseMin = machine.noseMin();
    this.noseMax = machine.noseMax();
    this.maxLoad = machine.maxLoad();
    this.loadX = OptionalLong.of(machine.loadX());
    this.loadY = OptionalLong.of(machine.loadY());
    this.turns = machine.turns();
    this.lookedFor = machine.lookedFor();
    this.provenance = machine.provenance();
    this.price = machine.price();
    guards(machine.guards());
  }

  public MachineBuilder name(String name) {
    this.name = name;
    return this;
  }

  public MachineBuilder description(String description) {
    this.description = description;
    return this;
  }

  public MachineBuilder candidate(boolean candidate) {
    this.candidate = candidate;
    return this;
  }

  /** The axes that carry the table; x and y unless set. */
  public MachineBuilder tableMoves(Axes tableMoves) {
    this.tableMoves = tableMoves;
    return this;
  }

  /** The flat top: {@code length} along x, {@code width} along y. */
  public MachineBuilder table(long length, long width) {
    this.tableLength = length;
    this.tableWidth = width;
    return this;
  }

  /** The whole travel along x and y. */
  public MachineBuilder travel(long x, long y) {
    this.travelX = x;
    this.travelY = y;
    return this;
  }

  /** Spindle position over the table at mid-travel; (0, 0) unless set. */
  public MachineBuilder spindle(long x, long y) {
    this.spindleX = x;
    this.spindleY = y;
    return this;
  }

  public MachineBuilder slots(Slots slots) {
    this.slots = slots;
    return this;
  }

  /** What protrudes from the table's sides below the top; 0 unless set. */
  public MachineBuilder ledges(Sides<Long> ledges) {
    this.ledges = ledges;
    return this;
  }

  /** The four taped gaps; blank unless set. */
  public MachineBuilder gaps(Sides<Dimension> gaps) {
    for (Side side : Side.values()) {
      gap(side, gaps.get(side));
    }
    return this;
  }

  /** One taped gap: known, blank, or none. */
  public MachineBuilder gap(Side side, Dimension gap) {
    if (gap.isNone()) {
      taped.remove(side);
    } else {
      taped.merge(side, Guard.taped(side, gap), (before, now) -> before.withGap(gap));
    }
    return this;
  }

  /** Lowest and highest spindle nose above the table top; blank unless set. */
  public MachineBuilder nose(Dimension min, Dimension max) {
    this.noseMin = min;
    this.noseMax = max;
    return this;
  }

  /** Load capacity of the table, kg; blank unless set. */
  public MachineBuilder maxLoad(Optional<BigDecimal> maxLoad) {
    this.maxLoad = maxLoad;
    return this;
  }

  /**
   * Spindle position over the table while loading. Unless set: x at {@code spindle_x}, y at the end
   * of travel that brings the table nearest the operator.
   */
  public MachineBuilder load(OptionalLong x, OptionalLong y) {
    this.loadX = x;
    this.loadY = y;
    return this;
  }

  /** Turns in which a handle can be worked; all unless set. */
  public MachineBuilder turns(Set<Orientation> turns) {
    this.turns = turns;
    return this;
  }

  public MachineBuilder lookedFor(List<String> lookedFor) {
    this.lookedFor = lookedFor;
    return this;
  }

  /** Tolerance 0, marked as assumed, unless set. */
  public MachineBuilder provenance(Provenance provenance) {
    this.provenance = provenance;
    return this;
  }

  public MachineBuilder price(Optional<BigDecimal> price) {
    this.price = price;
    return this;
  }

  /** The rows of {@code guards}, in input order; none unless set. */
  public MachineBuilder guardRows(List<Guard> rows) {
    this.rows = rows;
    return this;
  }

  /** Replaces all taped gaps and all rows. */
  final MachineBuilder guards(List<Guard> guards) {
    taped.clear();
    guards.stream()
        .filter(guard -> !guard.isRow())
        .forEach(guard -> taped.put(guard.side().get(), guard));
    this.rows = guards.stream().filter(Guard::isRow).toList();
    return this;
  }

  /**
   * Builds the machine.
   *
   * @throws IllegalArgumentException if a rule of {@link Machine} is violated
   */
  public Machine build() {
    List<Guard> guards = new ArrayList<>(taped.values());
    guards.addAll(rows);
    return new Machine(
        name,
        description,
        candidate,
        tableMoves,
        tableLength,
        tableWidth,
        travelX,
        travelY,
        spindleX,
        spindleY,
        slots,
        ledges,
        noseMin,
        noseMax,
        maxLoad,
        loadX.orElse(spindleX),
        loadY.orElse(spindleY + travelY / 2),
        turns,
        lookedFor,
        provenance,
        price,
        guards);
  }
}
