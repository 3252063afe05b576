package org.jawroom.cli.option;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jawroom.report.rows.PairingCells.Columns;
import org.jawroom.report.survey.count.Condition;
import org.jawroom.report.survey.count.Condition.Relation;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;

/** How a condition is written: {@code verdict=limited}, {@code margin_mm<1/4in}. */
public final class WhereText {
  private WhereText() {}

  /**
   * Parses a condition. A bare length is in mm, as in {@code pairings.csv}. A value that begins
   * with a letter of a sign needs a space before it.
   *
   * @throws BadCell with what would be right
   */
  public static Condition parse(String text) throws BadCell {
    int start = 0;
    while (start < text.length() && !isSign(text.charAt(start))) {
      start++;
    }
    int end = start;
    while (end < text.length() && isSign(text.charAt(end))) {
      end++;
    }
    String column = text.substring(0, start).strip();
    String sign = text.substring(start, end);
    if (sign.isEmpty() || column.isEmpty()) {
      throw new BadCell(
          "is no condition; write a column, one of "
              + Condition.signs()
              + ", and a value, as verdict=limited");
    }
    String value = text.substring(end).strip();
    Optional<Relation> relation = relation(one -> one.equals(sign));
    if (relation.isEmpty()) {
      throw new BadCell(notOneOf(column, sign, value));
    }
    if (Columns.isLength(column) && !value.isEmpty()) {
      long length = Lengths.parse(value, Unit.MM, false).value();
      return new Condition(column, relation.get(), value, OptionalLong.of(length));
    }
    if (relation.get().isOrder()) {
      throw new BadCell(
          value.isEmpty()
              ? "compares with nothing; write a length after " + relation.get().sign()
              : "asks for an order, which only lengths have (columns in _mm); write = or !=");
    }
    return new Condition(column, relation.get(), value, OptionalLong.empty());
  }

  private static boolean isSign(int letter) {
    return "!<>=".indexOf(letter) >= 0;
  }

  private static Optional<Relation> relation(Predicate<String> sign) {
    return Arrays.stream(Relation.values()).filter(one -> sign.test(one.sign())).findFirst();
  }

  /** Suggests the sign of the same letters: {@code =} for {@code ==}, {@code <=} for {@code =<}. */
  private static String notOneOf(String column, String sign, String value) {
    Set<Integer> letters = letters(sign);
    return relation(one -> letters(one).equals(letters))
        .map(one -> "has the sign " + sign + "; write " + column + one.sign() + value)
        .orElse("has the sign " + sign + ", which is none of " + Condition.signs());
  }

  private static Set<Integer> letters(String sign) {
    return sign.chars().boxed().collect(Collectors.toSet());
  }
}
