package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefGuard.Block;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/** The guards of a machine in order of precedence: gap guards, rows, table. */
public final class RefMachine {
  private final Settings settings;
  private final Machine machine;
  private final long bedHeight;
  private final Stop stop;
  private final RefLevel level;
  private final Set<Column> missing;
  private final List<RefGuard> guards = new ArrayList<>();

  /**
   * A stop that cuts the travel while cutting.
   *
   * @param toward where the table stands at the end that is cut
   * @param by the length that is cut
   */
  public record Stop(Side toward, long by) {
    public static final Stop NONE = new Stop(Side.FRONT, 0);

    /** What it takes off the greatest spindle coordinate, where the table stands front or left. */
    long atGreatest(Axis axis) {
      return toward == (axis == Axis.X ? Side.LEFT : Side.FRONT) ? by : 0;
    }

    long atLeast(Axis axis) {
      return toward == (axis == Axis.X ? Side.RIGHT : Side.REAR) ? by : 0;
    }
  }

  private RefMachine(
      Settings settings,
      Machine machine,
      long bedHeight,
      Stop stop,
      RefLevel level,
      Set<Column> missing) {
    this.level = level;
    this.settings = settings;
    this.machine = machine;
    this.bedHeight = bedHeight;
    this.stop = stop;
    this.missing = missing;
  }

  /**
   * All guards at best, without those that need a blank column; the open readings that any of them
   * needs are added to {@code missing}.
   */
  public static List<RefGuard> guards(
      Settings settings, Machine machine, Vise vise, Set<Column> missing) {
    return guards(settings, machine, vise.base().bedHeight(), Stop.NONE, RefLevel.BEST, missing);
  }

  /** The same for a vise with that bed height and a shorter travel, at worst or at best. */
  public static List<RefGuard> guards(
      Settings settings,
      Machine machine,
      long bedHeight,
      Stop stop,
      RefLevel level,
      Set<Column> missing) {
    RefMachine reader = new RefMachine(settings, machine, bedHeight, stop, level, missing);
    reader.taped(Side.FRONT, "door", Column.FRONT_GAP);
    reader.taped(Side.REAR, "rear cover", Column.REAR_GAP);
    reader.taped(Side.LEFT, "left guard", Column.LEFT_GAP);
    reader.taped(Side.RIGHT, "right guard", Column.RIGHT_GAP);
    machine.guardRows().forEach(reader::row);
    reader.table();
    return reader.guards;
  }

  private void taped(Side side, String name, Column column) {
    Dimension gap = machine.gap(side);
    if (gap.isOpen()) {
      missing.add(column);
    }
    if (!gap.isNone() && counts(gap)) {
      Block everywhere = new Block(Span.ALL, Span.ALL, Span.ALL);
      Block cutting = faced(everywhere, side, gapOf(gap), Axes.NONE, true);
      Block loading = faced(everywhere, side, gapOf(gap), Axes.NONE, false);
      guards.add(
          new RefGuard(
              name,
              cutting,
              side == Side.FRONT ? null : loading,
              settings.clearance(),
              machine.provenance().tolerance(),
              null));
    }
  }

  /** Not what stands at no finite distance at best. */
  private boolean counts(Dimension gap) {
    return level == RefLevel.WORST || !gap.isBlank() && Length.isBounded(RefLevel.signed(gap).hi());
  }

  private long gapOf(Dimension gap) {
    Span values = RefLevel.signed(gap);
    return level == RefLevel.WORST ? values.lo() : values.hi();
  }

  private void row(Guard row) {
    boolean rises = row.carriedBy().z() != machine.tableMoves().z();
    Span z = new Span(row.limits().z().lo(), row.limits().z().hi());
    boolean needsNose = rises && z.limited();
    boolean cuts = row.when().countsWhileCutting();
    boolean loads = row.when().countsWhileLoading();
    boolean complete = true;
    if (row.gap().isOpen()) {
      missing.add(Column.GUARD_GAP);
    }
    if (row.side().isPresent() && !counts(row.gap())) {
      complete = false;
    }
    if (needsNose && cuts && settings.shortestTool().isEmpty()) {
      cuts = false;
    }
    if (needsNose && (cuts || loads) && machine.noseMax().isOpen()) {
      missing.add(Column.NOSE_MAX);
      complete &= level == RefLevel.WORST || !machine.noseMax().isBlank();
    }
    if (needsNose && cuts && machine.noseMin().isOpen()) {
      missing.add(Column.NOSE_MIN);
      cuts = level == RefLevel.WORST || !machine.noseMin().isBlank();
    }
    if (!complete) {
      return;
    }
    Block cutting = null;
    Block loading = null;
    Block rising = null;
    if (cuts) {
      cutting = plane(row, true);
      if (needsNose) {
        Span top = RefLevel.values(machine.noseMax(), 0);
        Span least = RefLevel.values(machine.noseMin(), 0);
        long wanted = bedHeight + settings.shortestTool().getAsLong();
        Span low =
            new Span(
                Math.min(top.lo(), Math.max(least.lo(), wanted)),
                Math.min(top.hi(), Math.max(least.hi(), wanted)));
        cutting = new Block(cutting.x(), cutting.y(), standing(z, low, top));
      }
    }
    if (loads) {
      loading = plane(row, false);
      if (needsNose) {
        Span top = RefLevel.values(machine.noseMax(), 0);
        loading = new Block(loading.x(), loading.y(), standing(z, top, top));
      }
    }
    if (needsNose && row.when().countsWhileCutting()) {
      rising = plane(row, true);
    }
    guards.add(
        new RefGuard(
            row.name(),
            cutting,
            loading,
            row.clearance().orElse(settings.clearance()),
            row.tolerance().orElse(machine.provenance().tolerance()),
            rising));
  }

  /** The z limits of a guard whose nose stands at these heights: its lower end, its upper end. */
  private Span standing(Span z, Span low, Span high) {
    return level.box(new Span(z.lo(), z.lo()).plus(low), new Span(z.hi(), z.hi()).plus(high));
  }

  private void table() {
    long length = machine.tableLength();
    long width = machine.tableWidth();
    Block block =
        new Block(
            new Span(-length / 2 - machine.ledges().left(), length / 2 + machine.ledges().right()),
            new Span(-width / 2 - machine.ledges().front(), width / 2 + machine.ledges().rear()),
            new Span(-Length.ENDLESS, 0));
    guards.add(
        new RefGuard(
            "table", block, block, settings.clearance(), machine.provenance().tolerance(), null));
  }

  /** The limits of a row in the table plane, swept over the motion; z as given. */
  private Block plane(Guard row, boolean cutting) {
    Span x = new Span(row.limits().x().lo(), row.limits().x().hi());
    Span y = new Span(row.limits().y().lo(), row.limits().y().hi());
    Span z = new Span(row.limits().z().lo(), row.limits().z().hi());
    Block block =
        new Block(
            shifted(x, Axis.X, row.carriedBy(), cutting),
            shifted(y, Axis.Y, row.carriedBy(), cutting),
            z);
    return row.side().isEmpty()
        ? block
        : faced(block, row.side().get(), gapOf(row.gap()), row.carriedBy(), cutting);
  }

  private boolean moves(Axis axis, Axes carriedBy) {
    return carriedBy.has(axis) != machine.tableMoves().has(axis);
  }

  /** Spindle position less mid-travel position at the load position. */
  private long loadShift(Axis axis) {
    return axis == Axis.X
        ? machine.loadX() - machine.spindleX()
        : machine.loadY() - machine.spindleY();
  }

  private long travel(Axis axis) {
    return axis == Axis.X ? machine.travelX() : machine.travelY();
  }

  private Span shifted(Span at, Axis axis, Axes carriedBy, boolean cutting) {
    if (!moves(axis, carriedBy)) {
      return at;
    }
    long half = travel(axis) / 2;
    return cutting
        ? new Span(at.lo() - half + stop.atLeast(axis), at.hi() + half - stop.atGreatest(axis))
        : at.shifted(loadShift(axis));
  }

  /** The block extended to fill everything beyond a face taped at its nearest. */
  private Block faced(Block block, Side side, long gap, Axes carriedBy, boolean cutting) {
    Axis axis = side == Side.FRONT || side == Side.REAR ? Axis.Y : Axis.X;
    long edge = (axis == Axis.Y ? machine.tableWidth() : machine.tableLength()) / 2;
    boolean low = side == Side.FRONT || side == Side.LEFT;
    // A guard on the low side is nearest with the spindle at its greatest coordinate, one on the
    // high side at its least; elsewhere it is farther off by the difference.
    long more = 0;
    if (cutting && moves(axis, carriedBy)) {
      more = low ? stop.atGreatest(axis) : stop.atLeast(axis);
    } else if (moves(axis, carriedBy)) {
      long half = travel(axis) / 2;
      more = low ? half - loadShift(axis) : loadShift(axis) + half;
    }
    Span beyond =
        low
            ? new Span(-Length.ENDLESS, -edge - gap - more)
            : new Span(edge + gap + more, Length.ENDLESS);
    return axis == Axis.Y
        ? new Block(block.x(), beyond, block.z())
        : new Block(beyond, block.y(), block.z());
  }
}
