package org.jawroom.tables.row.size;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.schema.TableSpec;

/**
 * Refuses implausible masses and forces: they come from a wrong unit or a misread thousands
 * separator. The limits are common practice, no source, and wide.
 */
public final class KnownAmounts {
  private KnownAmounts() {}

  /** From {@code least} to {@code most}, both included. */
  private record Range(String thing, String unit, BigDecimal least, BigDecimal most) {
    Range(String thing, String unit, String least, String most) {
      this(thing, unit, new BigDecimal(least), new BigDecimal(most));
    }

    boolean holds(BigDecimal amount) {
      return least.compareTo(amount) <= 0 && amount.compareTo(most) <= 0;
    }
  }

  private static final Map<TableSpec, Map<String, Range>> RANGES =
      Map.of(
          TableSpec.MACHINES, Map.of("max_load", new Range("machine", "kg", "1", "500000")),
          TableSpec.VISES,
              Map.of(
                  "mass", new Range("vise", "kg", "0.1", "2000"),
                  "clamp_force", new Range("vise", "kN", "0", "1000")),
          TableSpec.JOBS, Map.of("mass", new Range("job", "kg", "0", "20000")));

  /** Returns {@code amount}, in kg or kN, if it is plausible in this column. */
  public static BigDecimal checked(TableSpec table, String column, BigDecimal amount)
      throws BadCell {
    Range range = RANGES.getOrDefault(table, Map.of()).get(column);
    if (range == null || range.holds(amount)) {
      return amount;
    }
    Optional<BigDecimal> guess =
        Stream.of(amount.movePointLeft(3), amount.movePointRight(3))
            .filter(range::holds)
            .findFirst();
    throw new BadCell(
        "as "
            + column
            + " "
            + text(amount, range)
            + " is no "
            + range.thing()
            + "'s"
            + guess
                .map(likely -> ": is it " + text(likely.round(new MathContext(3)), range) + "?")
                .orElse("; check the number and its unit"));
  }

  private static String text(BigDecimal amount, Range range) {
    return (amount.signum() == 0 ? "0" : amount.stripTrailingZeros().toPlainString())
        + " "
        + range.unit();
  }
}
