package org.jawroom.plan.model;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The value reached for one aim.
 *
 * @param value larger is better: pieces held, machines, lengths, vises; money spent and changes
 *     count as negative numbers; 0 for {@link Aim#ORDER}
 * @param proven whether no better value exists given the values of the earlier aims
 * @param ceiling no choice with the values of the earlier aims has a greater value; {@link
 *     Long#MAX_VALUE} if none is known
 */
public record Stage(Aim aim, long value, boolean proven, long ceiling) {
  public Stage {
    if (value > ceiling) {
      throw new IllegalArgumentException(aim + " at " + value + ", above " + ceiling);
    }
  }

  /**
   * The aim, and where a share can be stated, by how much more a better value could be at most: in
   * percent to 0.1, rounded up.
   */
  String notProven() {
    if (value <= 0 || ceiling == Long.MAX_VALUE) {
      return aim.toString();
    }
    BigDecimal more =
        BigDecimal.valueOf(ceiling - value)
            .movePointRight(2)
            .divide(BigDecimal.valueOf(value), 1, RoundingMode.CEILING);
    return aim + " (at most " + more.toPlainString() + " % more)";
  }
}
