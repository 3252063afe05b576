package org.jawroom.tables.row;

import java.util.List;
import java.util.Optional;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.Fault;

/** Reads cells that hold words of a fixed list; case and separators of words do not matter. */
final class WordCells {
  private final Ledger ledger;

  WordCells(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * The word of a cell, in its standard spelling. Boolean cells of a workbook count as the words
   * yes and no if the column has those words.
   */
  String word(ColumnSpec spec, Cell cell) throws BadCell {
    if (cell.kind() != Cell.Kind.TRUTH) {
      return known(cell.text(), spec.words(), true);
    }
    if (spec.words().contains("yes")) {
      return cell.text().equals("TRUE") ? "yes" : "no";
    }
    throw new BadCell("is a truth value; write one of " + String.join(", ", spec.words()));
  }

  /**
   * The one of {@code words} that is written.
   *
   * @param alone whether it is the whole content of the cell
   */
  String known(String written, List<String> words, boolean alone) throws BadCell {
    String wanted = ColumnSpec.normal(written);
    Optional<String> word =
        words.stream().filter(known -> ColumnSpec.normal(known).equals(wanted)).findFirst();
    if (word.isPresent()) {
      return word.get();
    }
    throw new BadCell(
        (alone ? "" : inside(written))
            + "is not one of "
            + String.join(", ", words)
            + ledger.hint(written, () -> words));
  }

  /** The beginning of a message about one item of a cell that holds several. */
  static String inside(String item) {
    return "has " + Fault.shortened(item) + ", which ";
  }
}
