package org.jawroom.cli.option;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalLong;
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
   * Parses a condition. A bare length is in mm, as in {@code pairings.csv}.
   *
   * @throws BadCell with what would be right
   */
  public static Condition parse(String text) throws BadCell {
    int start = 0;
    while (start < text.length() && "!<>=".indexOf(text.charAt(start)) < 0) {
      start++;
    }
    String from = text.substring(start);
    // Of two signs that fit the longer one is meant: <= and not <.
    Optional<Relation> relation =
        Arrays.stream(Relation.values())
            .filter(one -> from.startsWith(one.sign()))
            .max(Comparator.comparingInt(one -> one.sign().length()));
    String column = text.substring(0, start).strip();
    if (relation.isEmpty() || column.isEmpty()) {
      throw new BadCell(
          "is no condition; write a column, one of "
              + Condition.signs()
              + ", and a value, as verdict=limited");
    }
    String value = from.substring(relation.get().sign().length()).strip();
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
}
