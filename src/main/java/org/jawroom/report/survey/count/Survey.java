package org.jawroom.report.survey.count;

import java.util.Optional;
import org.jawroom.report.limits.LimitTally;
import org.jawroom.report.limits.Margins;

/** What a report has, of the pairings chosen, and what moved since an earlier one. */
public final class Survey {
  private final Asked asked;
  private final SurveySide side;
  private final RowGroups groups;
  private final Margins margins = new Margins();
  private final LimitTally limits = new LimitTally();
  private final Coverage coverage;
  private final Optional<Moved> moved;
  private int comfortable;

  private Survey(SurveySide side, Optional<SurveySide> old, Asked asked) {
    this.asked = asked;
    this.side = side;
    SurveyRows rows = side.rows();
    for (int row : side.chosen()) {
      rows.margin(row).ifPresent(margins::add);
      comfortable += rows.comfortable().contains(row) ? 1 : 0;
      String guard = rows.text(SurveyRows.GUARD, row);
      if (!guard.isEmpty()) {
        limits.add(guard, rows.text(SurveyRows.PART, row), rows.margin(row).getAsLong());
      }
    }
    groups = RowGroups.of(rows, side.chosen(), asked.by());
    coverage = Coverage.of(rows, side.chosen());
    moved = old.map(before -> Moved.of(before, side));
  }

  /** Counts {@code side}, and what moved since {@code old}. */
  public static Survey of(SurveySide side, Optional<SurveySide> old, Asked asked) {
    return new Survey(side, old, asked);
  }

  public Asked asked() {
    return asked;
  }

  public String name() {
    return side.name();
  }

  /** All pairings of the report. */
  public int pairings() {
    return side.rows().size();
  }

  /** The machines of the report, as all below whether chosen or not. */
  public int machines() {
    return side.machines();
  }

  public int vises() {
    return side.vises();
  }

  /** The pairings chosen; all that follows is of them. */
  public int chosen() {
    return side.chosen().size();
  }

  /** Those that have a margin. */
  public Margins margins() {
    return margins;
  }

  /** How many have a comfortable vise. */
  public int comfortable() {
    return comfortable;
  }

  public RowGroups groups() {
    return groups;
  }

  public LimitTally limits() {
    return limits;
  }

  public Coverage coverage() {
    return coverage;
  }

  /** Empty for a single report. */
  public Optional<Moved> moved() {
    return moved;
  }
}
