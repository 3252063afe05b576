package org.jawroom.report.card;

import java.util.List;
import java.util.Optional;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.card.statement.CardSubject;

/**
 * The cards of one table.
 *
 * @param set several kinds that stand there together, which get a page of the whole table first
 * @param cards of the vises, those of a set from left to right
 */
public record CardStack(Optional<SetOutcome> set, List<CardSubject> cards) {
  public CardStack {
    cards = List.copyOf(cards);
  }

  /** Cards of vises that do not stand together. */
  public static CardStack of(List<CardSubject> cards) {
    return new CardStack(Optional.empty(), cards);
  }

  /**
   * The cards of a set.
   *
   * @param set one that fits
   */
  public static CardStack of(SetOutcome set, List<CardSubject> cards) {
    return new CardStack(Optional.of(set), cards);
  }
}
