package org.jawroom.report.card.statement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;

/**
 * The weight of the vise and how to lift it.
 *
 * @param count the number of vises on the table
 */
public record Weight(PeopleUnit unit, Outcome outcome, int count) {

  /** From this weight (kg) on nobody lifts it alone: common practice, no source. */
  static final BigDecimal ONE_PERSON = BigDecimal.valueOf(25);

  private static final BigDecimal KILOGRAMS_A_POUND = new BigDecimal("0.45359237");

  public Item item() {
    return new Item("Mass:", words());
  }

  private String words() {
    Optional<BigDecimal> mass = outcome.vise().mass();
    if (mass.isEmpty()) {
      return "not given. Weigh it, or take two people or a hoist.";
    }
    return figure(mass.get())
        + (count > 1 ? " each" : "")
        + (mass.get().compareTo(ONE_PERSON) >= 0
            ? ": two people or a hoist."
            : ": one person can lift it.");
  }

  private Optional<BigDecimal> loadLeft() {
    BigDecimal others = BigDecimal.valueOf(count - 1);
    BigDecimal more =
        outcome.vise().mass().map(mass -> mass.multiply(others)).orElse(BigDecimal.ZERO);
    return outcome.loadLeft().map(left -> left.subtract(more));
  }

  /** By how much they exceed what the table carries. */
  public Optional<String> tooHeavy() {
    return loadLeft()
        .filter(left -> left.signum() < 0)
        .map(
            left ->
                (count > 1 ? "All " + count + " together are too heavy" : "Too heavy")
                    + " for this table by "
                    + figure(left.negate())
                    + (count > 1 ? ": do not set them down." : ": do not set it down."));
  }

  /** Rounded up. */
  private String figure(BigDecimal mass) {
    String kilograms =
        mass.setScale(1, RoundingMode.CEILING).stripTrailingZeros().toPlainString() + " kg";
    return unit == PeopleUnit.MM
        ? kilograms
        : mass.divide(KILOGRAMS_A_POUND, 0, RoundingMode.CEILING).toPlainString()
            + " lb ("
            + kilograms
            + ")";
  }
}
