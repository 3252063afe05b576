package org.jawroom.report.card.statement;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A statement on a card.
 *
 * @param label its subject, bold, before the text; may be empty
 */
public record Item(String label, String text) {

  public static Item of(String text) {
    return new Item("", text);
  }

  public static List<Item> all(List<Item> items, UnaryOperator<String> change) {
    return items.stream()
        .map(item -> new Item(change.apply(item.label), change.apply(item.text)))
        .toList();
  }
}
