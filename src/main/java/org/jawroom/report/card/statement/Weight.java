package org.jawroom.report.card.statement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;

/** The weight of the vise and how to lift it. */
public record Weight(PeopleUnit unit, Outcome outcome) {

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
        + (mass.get().compareTo(ONE_PERSON) >= 0
            ? ": two people or a hoist."
            : ": one person can lift it.");
  }

  /** By how much it exceeds what the table carries. */
  public Optional<String> tooHeavy() {
    return outcome
        .loadLeft()
        .filter(left -> left.signum() < 0)
        .map(
            left ->
                "Too heavy for this table by " + figure(left.negate()) + ": do not set it down.");
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
