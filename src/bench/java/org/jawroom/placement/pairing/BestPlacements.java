package org.jawroom.placement.pairing;

import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.Shop;

/** Asks of the pairings of a shop where best to put the vise, and nothing besides. */
public final class BestPlacements {
  private final ShopPairings pairings;

  public BestPlacements(Shop shop) {
    this.pairings = ShopPairings.of(shop);
  }

  /**
   * The best margin, the recommended turn, mount and place, and the pair that limits it, as one sum
   * of them all; of a pairing that is clear over a part of the opening only if {@code
   * least_opening} has it asked for.
   */
  public long ask(int machine, int vise) {
    VerdictRule judgement = pairings.model(machine, vise).judgement();
    if (judgement.choice().isEmpty()) {
      return 0;
    }
    BestPlace.Choice choice = judgement.choice().get();
    Region region = choice.seat().region();
    Place place = choice.place();
    Optional<Limit> limit = choice.seat().space().limit(place, choice.margin());
    return judgement.bestMargin().orElse(0)
        + region.turn().ordinal()
        + region.fastening().index()
        + place.x()
        + place.y()
        + limit.map(Limit::gap).orElse(0L);
  }
}
