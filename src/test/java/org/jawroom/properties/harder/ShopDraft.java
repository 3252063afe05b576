package org.jawroom.properties.harder;

import java.util.List;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Shop;

/**
 * A shop of one machine and one vise, to be changed. Its load position is always given outright.
 */
final class ShopDraft {
  final SettingsDraft settings;
  final MachineDraft mill;
  final ViseDraft vise;

  private ShopDraft(SettingsDraft settings, MachineDraft mill, ViseDraft vise) {
    this.settings = settings;
    this.mill = mill;
    this.vise = vise;
  }

  static ShopDraft of(Shop shop) {
    return new ShopDraft(
        SettingsDraft.of(shop.settings()),
        MachineDraft.of(shop.machines().get(0)),
        ViseDraft.of(shop.vises().get(0)));
  }

  /** A copy that shares nothing that can change. */
  ShopDraft copy() {
    return of(shop());
  }

  Shop shop() {
    return new Shop(settings.build(), List.of(mill.build()), List.of(vise.build()), List.of());
  }

  Outcome solve() {
    return Pairing.solve(settings.build(), mill.build(), vise.build());
  }
}
