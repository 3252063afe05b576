package org.jawroom.advice.assess;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.shop.Settings;
import org.jawroom.shop.vise.Vise;

/**
 * A comparison of machines that might be bought with what the shop owns.
 *
 * @param candidates the machines asked for, in the order given
 * @param owned the owned machines that are not among them, each compared with the others likewise
 * @param homeless the owned vises that neither fit nor are awkward on any owned machine other than
 *     those asked for, in input order
 * @param kinds number of kinds of vise owned; {@code jobs} the number of jobs
 * @param pattern the tallest owned vise, whose height the room refers to; empty if no size is known
 * @param tool the longest tool, nose to tip; empty if none is known
 */
public record Assessment(
    Settings settings,
    List<Assessed> candidates,
    List<Assessed> owned,
    List<Vise> homeless,
    int kinds,
    int jobs,
    Optional<ViseSize> pattern,
    OptionalLong tool,
    BetterBuy better) {
  public Assessment {
    candidates = List.copyOf(candidates);
    owned = List.copyOf(owned);
    homeless = List.copyOf(homeless);
  }
}
