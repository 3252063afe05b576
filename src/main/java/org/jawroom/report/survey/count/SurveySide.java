package org.jawroom.report.survey.count;

import org.jawroom.report.rows.UnreadablePairings;
import tech.tablesaw.selection.Selection;

/** The rows of one report, and which of them the conditions choose. */
public final class SurveySide {
  private final String name;
  private final SurveyRows rows;
  private final PairingIndex index;
  private final Selection chosen;

  /**
   * Chooses the rows.
   *
   * @param name of the report, for people
   * @throws UnreadablePairings if a pairing occurs twice
   */
  public SurveySide(String name, SurveyRows rows, Asked asked) throws UnreadablePairings {
    this.name = name;
    this.rows = rows;
    index = new PairingIndex(rows);
    chosen = rows.chosen(asked.where());
  }

  public String name() {
    return name;
  }

  SurveyRows rows() {
    return rows;
  }

  Selection chosen() {
    return chosen;
  }

  int machines() {
    return index.machines();
  }

  int vises() {
    return index.vises();
  }

  /** The row of that row of {@code other}, or −1. */
  int rowOf(SurveySide other, int row) {
    return index.row(other.rows.machine(row), other.rows.vise(row));
  }

  boolean isChosen(int row) {
    return row >= 0 && chosen.contains(row);
  }
}
