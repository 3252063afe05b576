package org.jawroom.report.card.statement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.vise.Vise;

/**
 * The weight of the vise and how to lift it.
 *
 * @param others the other vises on the table
 */
public record Weight(PeopleUnit unit, Outcome outcome, List<Vise> others) {

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
        + (isOneOfMany() ? " each" : "")
        + (mass.get().compareTo(ONE_PERSON) >= 0
            ? ": two people or a hoist."
            : ": one person can lift it.");
  }

  private boolean isOneOfMany() {
    return !others.isEmpty() && others.stream().allMatch(outcome.vise()::equals);
  }

  /** By how much the table carries more than the vises whose mass is known. */
  private Optional<BigDecimal> loadLeft() {
    BigDecimal beside =
        others.stream()
            .flatMap(vise -> vise.mass().stream())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return outcome
        .loadLeft()
        .or(() -> outcome.machine().maxLoad())
        .map(left -> left.subtract(beside));
  }

  /** By how much they exceed what the table carries; a blank mass is left out. */
  public Optional<String> tooHeavy() {
    return loadLeft()
        .filter(left -> left.signum() < 0)
        .map(
            left ->
                (others.isEmpty()
                        ? "Too heavy"
                        : "All " + (others.size() + 1) + " together are too heavy")
                    + " for this table by "
                    + figure(left.negate())
                    + (others.isEmpty() ? ": do not set it down." : ": do not set them down."));
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
