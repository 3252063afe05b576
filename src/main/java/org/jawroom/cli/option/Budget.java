package org.jawroom.cli.option;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.cell.ShopCell;
import org.jawroom.plan.model.Wishes;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Numerals;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * The amount that may be spent.
 *
 * @param most in hundredths; empty: no limit
 */
public record Budget(boolean buy, OptionalLong most) {
  private static final BigDecimal HIGHEST = new BigDecimal("10000000000");

  /**
   * The amount that options give.
   *
   * @param settings as given: they say how decimals are written
   */
  public static Budget of(
      CommandLine command, boolean buy, Optional<String> budget, Map<String, String> settings) {
    if (budget.isEmpty()) {
      return new Budget(buy, OptionalLong.empty());
    }
    if (!buy) {
      throw new ParameterException(
          command, "--budget goes with --buy: without it nothing is bought.");
    }
    try {
      boolean comma = "comma".equalsIgnoreCase(settings.get("decimal"));
      if (!comma) {
        Numerals.refuseThousands(budget.get(), true);
      }
      BigDecimal amount = Numerals.number(budget.get(), comma);
      if (amount.stripTrailingZeros().scale() > 2) {
        throw new BadCell("has more than two decimals");
      }
      // An amount above the largest possible price is no limit in effect, but would overflow sums.
      return new Budget(true, OptionalLong.of(ShopCell.coins(amount.min(HIGHEST))));
    } catch (BadCell wrong) {
      throw new ParameterException(
          command, "option --budget: \"" + budget.get() + "\" " + wrong.getMessage(), wrong);
    }
  }

  public Wishes of(Wishes wishes) {
    return buy ? wishes.withBuying(most) : wishes;
  }
}
