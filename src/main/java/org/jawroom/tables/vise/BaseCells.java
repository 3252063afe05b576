package org.jawroom.tables.vise;

import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.row.Row;

/** The base casting of a vise's row; one reach may follow from the other and the overall length. */
final class BaseCells {
  private BaseCells() {}

  static Base read(Row row) {
    OptionalLong bedHeight = row.length("bed_height");
    Dimension width = row.dimension("base_width");
    Dimension rear = row.dimension("rear_reach");
    Dimension front = row.dimension("front_reach");
    OptionalLong overall = row.length("base_length");
    if (overall.isPresent()) {
      refuseSumOff(row, rear, front, overall.getAsLong());
      if (row.isBlank("rear_reach")) {
        rear = rest(row, overall.getAsLong(), front, "front_reach");
      } else if (row.isBlank("front_reach")) {
        front = rest(row, overall.getAsLong(), rear, "rear_reach");
      }
    }
    return new Base(bedHeight.orElse(0), width, rear, front);
  }

  private static void refuseSumOff(Row row, Dimension rear, Dimension front, long overall) {
    if (rear.isBlank() || front.isBlank()) {
      return;
    }
    Interval rears = rear.values(0);
    Interval fronts = front.values(0);
    if (overall < rears.lo() + fronts.lo() || rears.hi() + fronts.hi() < overall) {
      row.fault(
          "base_length",
          "is not rear_reach and front_reach together, "
              + (rear.isKnown() && front.isKnown()
                  ? Lengths.inMillimetres(rear.length() + front.length())
                  : "whatever they are within their ranges"));
    }
  }

  /** The overall length minus the given reach; blank if that reach is blank too. */
  private static Dimension rest(Row row, long overall, Dimension reach, String reachColumn) {
    if (reach.isBlank()) {
      return Dimension.BLANK;
    }
    Interval reaches = reach.values(0);
    if (reaches.lo() > overall) {
      row.fault("base_length", "is less than " + reachColumn + ", " + row.raw(reachColumn));
      return Dimension.BLANK;
    }
    return Dimension.within(overall - Math.min(overall, reaches.hi()), overall - reaches.lo());
  }
}
