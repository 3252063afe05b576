package org.jawroom.tables.machine;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.tables.row.Row;

/** Parses one row of {@code guards}. */
public final class GuardReader {

  /** The names of guards that the model adds itself. */
  public static final List<String> OWN_NAMES =
      Stream.concat(Arrays.stream(Side.values()).map(Guard::tapedName), Stream.of("table"))
          .toList();

  private static final List<String> LIMITS =
      List.of("x_min", "x_max", "y_min", "y_max", "z_min", "z_max");

  private final Row row;
  private final String name;
  private final Optional<Axes> table;

  /**
   * Reads a row of a machine.
   *
   * @param table the axes that carry the machine's table; empty if unknown
   */
  public GuardReader(Row row, String name, Optional<Axes> table) {
    this.row = row;
    this.name = name;
    this.table = table;
  }

  /** Empty if the row is unsound or says that there is {@code none}. */
  public Optional<Guard> read() {
    Optional<String> kind = row.word("kind");
    Optional<Axes> carriedBy = AxesCell.carriedBy(row, table);
    Optional<When> when = row.word("when").map(word -> When.valueOf(word.toUpperCase(Locale.ROOT)));
    Optional<Side> side = row.word("side").map(word -> Side.valueOf(word.toUpperCase(Locale.ROOT)));
    Dimension gap = row.dimension("gap");
    Optional<Interval> x = between("x_min", "x_max");
    Optional<Interval> y = between("y_min", "y_max");
    Optional<Interval> z = between("z_min", "z_max");
    OptionalLong clearance = row.length("clearance");
    OptionalLong tolerance = row.length("tolerance");
    row.unit();
    refuseUnclear(side);
    if (!row.isSound() || carriedBy.isEmpty() || (side.isPresent() && gap.isNone())) {
      return Optional.empty();
    }
    return Optional.of(
        new Guard(
            name,
            kind.orElse(""),
            carriedBy.get(),
            when.orElseThrow(),
            side,
            side.isPresent() ? gap : Dimension.NONE,
            new Box(x.orElseThrow(), y.orElseThrow(), z.orElseThrow()),
            clearance,
            tolerance));
  }

  /** The limits along one axis, unbounded where blank; empty, with a fault, if min exceeds max. */
  private Optional<Interval> between(String min, String max) {
    long lo = row.length(min).orElse(-org.jawroom.geometry.Length.ENDLESS);
    long hi = row.length(max).orElse(org.jawroom.geometry.Length.ENDLESS);
    if (lo > hi) {
      row.fault(min, "is above " + max + ", " + row.raw(max));
      return Optional.empty();
    }
    return Optional.of(new Interval(lo, hi));
  }

  private void refuseUnclear(Optional<Side> side) {
    if (row.isBlank("side")) {
      if (!row.isBlank("gap")) {
        row.fault("gap", "is a gap without side; write front, rear, left or right into side");
      } else if (LIMITS.stream().allMatch(row::isBlank)) {
        row.fault("has neither side nor limits, so it would fill the whole room");
      }
      return;
    }
    Stream<String> along = side.map(GuardReader::limitsToward).orElse(Stream.empty());
    along
        .filter(column -> !row.isBlank(column))
        .forEach(
            column ->
                row.fault(
                    column,
                    "must stay blank where side is "
                        + side.get().word()
                        + "; the gap gives that limit"));
  }

  private static Stream<String> limitsToward(Side side) {
    Axis axis = side == Side.FRONT || side == Side.REAR ? Axis.Y : Axis.X;
    return Arrays.stream(new String[] {axis.letter() + "_min", axis.letter() + "_max"});
  }
}
