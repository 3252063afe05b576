package org.jawroom.tables.vise;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.row.Row;

/** Parses one row of {@code vise_parts}. */
public final class PartReader {
  private PartReader() {}

  /** The names of the model's own parts, except the handle, which a row may extend. */
  public static final List<String> OWN_NAMES =
      List.of(
          "base",
          "fixed jaw",
          "moving jaw",
          "rear jaw",
          "front jaw",
          "screw rear",
          "screw front",
          "bolts",
          "clamps");

  /** Empty, with faults, if the row is unsound. */
  public static Optional<VisePart> read(Row row, String name) {
    Optional<When> when = row.word("when").map(word -> When.valueOf(word.toUpperCase(Locale.ROOT)));
    OptionalLong minClosed = row.length("u_min_closed");
    OptionalLong maxClosed = row.length("u_max_closed");
    OptionalLong minOpen = orElse(row, "u_min_open", minClosed);
    OptionalLong maxOpen = orElse(row, "u_max_open", maxClosed);
    Optional<Interval> closed = between(row, "u_min_closed", minClosed, "u_max_closed", maxClosed);
    boolean asClosed = row.isBlank("u_min_open") && row.isBlank("u_max_open");
    Optional<Interval> open =
        asClosed ? closed : between(row, "u_min_open", minOpen, "u_max_open", maxOpen);
    Optional<Interval> v = between(row, "v_min", "v_max");
    Optional<Interval> w = between(row, "w_min", "w_max");
    OptionalLong tolerance = row.length("tolerance");
    row.unit();
    if (!row.isSound()) {
      return Optional.empty();
    }
    // Case does not matter for the handle.
    String spelled = name.equalsIgnoreCase(VisePart.HANDLE) ? VisePart.HANDLE : name;
    return Optional.of(
        new VisePart(
            spelled,
            when.orElseThrow(),
            closed.orElseThrow(),
            open.orElseThrow(),
            v.orElseThrow(),
            w.orElseThrow(),
            tolerance));
  }

  private static OptionalLong orElse(Row row, String column, OptionalLong otherwise) {
    OptionalLong length = row.length(column);
    return row.isBlank(column) ? otherwise : length;
  }

  private static Optional<Interval> between(Row row, String min, String max) {
    return between(row, min, row.length(min), max, row.length(max));
  }

  private static Optional<Interval> between(
      Row row, String min, OptionalLong lo, String max, OptionalLong hi) {
    if (lo.isEmpty() || hi.isEmpty()) {
      return Optional.empty();
    }
    if (lo.getAsLong() > hi.getAsLong()) {
      row.fault(
          row.isBlank(min) ? max : min,
          row.isBlank(min)
              ? "is below " + min + ", which is as closed"
              : "is above "
                  + max
                  + (row.isBlank(max) ? ", which is as closed" : ", " + row.raw(max)));
      return Optional.empty();
    }
    return Optional.of(new Interval(lo.getAsLong(), hi.getAsLong()));
  }
}
