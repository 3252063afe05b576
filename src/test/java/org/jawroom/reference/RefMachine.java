package org.jawroom.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.RefGuard.Block;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/** The guards of a machine in order of precedence: gap guards, rows, table. */
final class RefMachine {
  private final Settings settings;
  private final Machine machine;
  private final long bedHeight;
  private final Stop stop;
  private final Set<Column> missing;
  private final List<RefGuard> guards = new ArrayList<>();

  /**
   * A stop that cuts the travel while cutting.
   *
   * @param toward where the table stands at the end that is cut
   * @param by the length that is cut
   */
  record Stop(Side toward, long by) {
    static final Stop NONE = new Stop(Side.FRONT, 0);

    /** What it takes off the greatest spindle coordinate, where the table stands front or left. */
    long atGreatest(Axis axis) {
      return toward == (axis == Axis.X ? Side.LEFT : Side.FRONT) ? by : 0;
    }

    long atLeast(Axis axis) {
      return toward == (axis == Axis.X ? Side.RIGHT : Side.REAR) ? by : 0;
    }
  }

  private RefMachine(
      Settings settings, Machine machine, long bedHeight, Stop stop, Set<Column> missing) {
    this.settings = settings;
    this.machine = machine;
    this.bedHeight = bedHeight;
    this.stop = stop;
    this.missing = missing;
  }

  /**
   * All guards that need no blank column; the blank columns that the others need are added to
   * {@code missing}.
   */
  static List<RefGuard> guards(Settings settings, Machine machine, Vise vise, Set<Column> missing) {
    return guards(settings, machine, vise.base().bedHeight(), Stop.NONE, missing);
  }

  /** The same for a vise with that bed height and a shorter travel. */
  static List<RefGuard> guards(
      Settings settings, Machine machine, long bedHeight, Stop stop, Set<Column> missing) {
    RefMachine reader = new RefMachine(settings, machine, bedHeight, stop, missing);
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
    if (gap.isBlank()) {
      missing.add(column);
    } else if (gap.isKnown()) {
      Block everywhere = new Block(Span.ALL, Span.ALL, Span.ALL);
      Block cutting = faced(everywhere, side, gap.length(), Axes.NONE, true);
      Block loading = faced(everywhere, side, gap.length(), Axes.NONE, false);
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

  private void row(Guard row) {
    boolean rises = row.carriedBy().z() != machine.tableMoves().z();
    Span z = new Span(row.limits().z().lo(), row.limits().z().hi());
    boolean needsNose = rises && z.limited();
    boolean cuts = row.when().countsWhileCutting();
    boolean loads = row.when().countsWhileLoading();
    boolean complete = true;
    if (row.gap().isBlank()) {
      missing.add(Column.GUARD_GAP);
      complete = false;
    }
    if (needsNose && cuts && settings.shortestTool().isEmpty()) {
      cuts = false;
    }
    if (needsNose && (cuts || loads) && machine.noseMax().isBlank()) {
      missing.add(Column.NOSE_MAX);
      complete = false;
    }
    if (needsNose && cuts && machine.noseMin().isBlank()) {
      missing.add(Column.NOSE_MIN);
      cuts = false;
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
        long top = machine.noseMax().length();
        long wanted = bedHeight + settings.shortestTool().getAsLong();
        long low = Math.min(top, Math.max(machine.noseMin().length(), wanted));
        cutting = new Block(cutting.x(), cutting.y(), new Span(z.lo() + low, z.hi() + top));
      }
    }
    if (loads) {
      loading = plane(row, false);
      if (needsNose) {
        loading = new Block(loading.x(), loading.y(), z.shifted(machine.noseMax().length()));
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
        : faced(block, row.side().get(), row.gap().length(), row.carriedBy(), cutting);
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
