package org.jawroom.tables.row.size;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.geometry.Length;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.schema.TableSpec;

/**
 * Refuses lengths that no machine, vise or shop has: they come from a wrong unit. The limits are
 * wide: what merely looks odd gets a warning (plausibility.SizeWarnings). Where no source is named
 * they are common practice, no source.
 */
public final class KnownSizes {
  private KnownSizes() {}

  /** From {@code least} to {@code most} half-nanometres, both included. */
  private record Range(long least, long most) {
    static Range mm(long least, long most) {
      return new Range(least * Length.MM, most * Length.MM);
    }

    boolean holds(long length) {
      return least <= length && length <= most;
    }
  }

  private static final Range TOLERANCE = Range.mm(0, 100);

  /**
   * Much less than that of a machine, where more is safer: a check that may be off by more than the
   * coarsest source twice over would agree with anything and mark a pairing as checked.
   */
  private static final Range CHECK_TOLERANCE = Range.mm(0, 10);

  /** The largest gap against crushing, for the whole body, is 500 mm (ISO 13854, table 1). */
  private static final Range GAP = Range.mm(0, 500);

  /** A length of the settings without a range of its own. */
  private static final Range SETTING = Range.mm(0, 1_000);

  private static final Map<TableSpec, Map<String, Range>> RANGES =
      Map.of(
          TableSpec.MACHINES,
          Map.of(
              "table_length", Range.mm(100, 40_000),
              "table_width", Range.mm(100, 40_000),
              "travel_x", Range.mm(0, 40_000),
              "travel_y", Range.mm(0, 40_000),
              "slot_width", Range.mm(0, 80),
              "tolerance", TOLERANCE),
          TableSpec.GUARDS,
          Map.of("clearance", GAP, "tolerance", TOLERANCE),
          TableSpec.VISES,
          Map.of(
              "jaw_width", Range.mm(10, 2_000),
              "opening_max", Range.mm(0, 3_000),
              "bed_height", Range.mm(0, 1_000),
              "tolerance", TOLERANCE),
          TableSpec.VISE_PARTS,
          Map.of("tolerance", TOLERANCE),
          TableSpec.JOBS,
          Map.of("tool_length", Range.mm(0, 2_000)),
          TableSpec.CHECKS,
          Map.of("tolerance", CHECK_TOLERANCE),
          TableSpec.SETTINGS,
          Map.of(
              "clearance", GAP,
              "hand_room", GAP,
              "clamp_room", Range.mm(0, 500),
              "least_opening", Range.mm(0, 3_000),
              "max_overhang", Range.mm(0, 2_000)));

  private static final Map<TableSpec, String> THINGS =
      Map.of(
          TableSpec.MACHINES, "machine",
          TableSpec.GUARDS, "guard",
          TableSpec.VISES, "vise",
          TableSpec.VISE_PARTS, "vise",
          TableSpec.JOBS, "job",
          TableSpec.CHECKS, "check",
          TableSpec.SETTINGS, "shop");

  /**
   * Returns normally if the length is plausible in this column.
   *
   * @param comma whether the decimal sign of that cell is a comma
   * @throws BadCell names the unit in which the number would be plausible
   */
  public static void check(TableSpec table, String column, Lengths.Read read, boolean comma)
      throws BadCell {
    Range range =
        RANGES
            .getOrDefault(table, Map.of())
            .getOrDefault(column, table == TableSpec.SETTINGS ? SETTING : null);
    if (range == null || range.holds(read.value())) {
      return;
    }
    String written = read.number() + " " + read.unit().sign();
    String mm = Lengths.inMillimetres(read.value());
    throw new BadCell(
        "as "
            + column
            + " "
            + (written.equals(mm) ? written : written + " (" + mm + ")")
            + " is no "
            + THINGS.get(table)
            + "'s"
            + guess(range, read, comma)
                .map(unit -> ": is it " + read.number() + " " + unit.sign() + "?")
                .orElse("; check the number and its unit"));
  }

  /** The unit in which the same number would be plausible, the likeliest first. */
  private static Optional<Unit> guess(Range range, Lengths.Read read, boolean comma) {
    return Stream.of(Unit.MM, Unit.IN, Unit.CM, Unit.M)
        .filter(unit -> unit != read.unit())
        .filter(unit -> isIn(range, read.number(), unit, comma))
        .findFirst();
  }

  /** Fractions are read as inches only. */
  private static boolean isIn(Range range, String number, Unit unit, boolean comma) {
    if (number.contains("/") && unit != Unit.IN) {
      return false;
    }
    try {
      return range.holds(Lengths.parse(number, unit, comma).value());
    } catch (BadCell notIn) {
      return false;
    }
  }
}
