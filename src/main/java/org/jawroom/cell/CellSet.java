package org.jawroom.cell;

import java.util.List;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;

/**
 * One vise each of several kinds that stand side by side on a machine.
 *
 * @param pick the kinds, as indices in the cell
 * @param row where they stand
 * @param held the jobs that each of them holds there, from left to right
 */
public record CellSet(Pick pick, SetOutcome row, List<List<JobOutcome>> held) {
  public CellSet {
    held = held.stream().map(List::copyOf).toList();
    if (row.fits() != SetOutcome.Fits.YES || held.size() != row.stands().size()) {
      throw new IllegalArgumentException("no row of vises with its jobs: " + pick);
    }
  }

  /** The outcomes of a job on those vises that hold it, from left to right. */
  List<JobOutcome> holding(Job job) {
    return held.stream()
        .flatMap(List::stream)
        .filter(outcome -> outcome.job().equals(job))
        .toList();
  }

  /** What the plan weighs. */
  Fit fit(Settings settings) {
    long opening = 0;
    long jaw = 0;
    for (SetOutcome.Stand stand : row.stands()) {
      opening += stand.vise().opening().length();
      jaw += stand.vise().jaws().width();
    }
    return new Fit(pick, isGood(settings), 1, opening, jaw);
  }

  /**
   * Whether every vise has a margin of at least {@code comfort} in a settable place, and every gap
   * to a neighbour exceeds the spacing by as much, and by the tap room.
   */
  private boolean isGood(Settings settings) {
    long spare = settings.spacing() + Math.max(settings.comfort(), settings.tapRoom());
    return row.stands().stream()
        .allMatch(
            stand ->
                stand.place().settable()
                    && stand.place().margin().orElse(-1) >= settings.comfort()
                    && stand.nextGap().orElse(Long.MAX_VALUE) >= spare);
  }

  /** The number of a vise in the row from left to right, 0 the leftmost. */
  public int placeOf(String vise) {
    for (int at = 0; at < row.stands().size(); at++) {
      if (row.stands().get(at).vise().name().equals(vise)) {
        return at;
      }
    }
    throw new IllegalArgumentException("not of the row: " + vise);
  }
}
