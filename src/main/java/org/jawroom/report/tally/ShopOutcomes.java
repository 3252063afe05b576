package org.jawroom.report.tally;

import java.util.List;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.standing.StandingOutcome;

/**
 * What is worked out for a whole shop beside its pairings and their jobs.
 *
 * @param standing one outcome for each vise that stands on a machine, in input order
 * @param sets one outcome for each set and machine on which it is to stand: sets, then machines
 */
public record ShopOutcomes(List<StandingOutcome> standing, List<SetOutcome> sets) {

  /** Those of a shop without standing vises and sets. */
  public static final ShopOutcomes NONE = new ShopOutcomes(List.of(), List.of());

  public ShopOutcomes {
    standing = List.copyOf(standing);
    sets = List.copyOf(sets);
  }
}
