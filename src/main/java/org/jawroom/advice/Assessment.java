package org.jawroom.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * Machines that might be bought beside what the shop owns.
 *
 * @param candidates those asked for, in the order asked
 * @param owned the owned machines that are not among them, each likewise beside the others
 * @param homeless the owned vises that fit on no owned machine other than those asked for, in input
 *     order
 * @param kinds how many kinds of vise are owned; {@code jobs} how many jobs there are
 * @param pattern the owned vise that reaches highest, whose height room is told for; empty if none
 *     is known
 * @param tool the longest tool, nose to tip; empty: none told
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
