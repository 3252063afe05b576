package org.jawroom.properties;

import java.util.OptionalLong;
import org.jawroom.shop.Settings;

/** Settings to be changed: those that a verdict depends on. */
final class SettingsDraft {
  private final Settings given;
  long clearance;
  long handRoom;
  long leastOpening;
  OptionalLong shortestTool;
  OptionalLong maxOverhang;

  private SettingsDraft(Settings given) {
    this.given = given;
  }

  static SettingsDraft of(Settings given) {
    SettingsDraft draft = new SettingsDraft(given);
    draft.clearance = given.clearance();
    draft.handRoom = given.handRoom();
    draft.leastOpening = given.leastOpening();
    draft.shortestTool = given.shortestTool();
    draft.maxOverhang = given.maxOverhang();
    return draft;
  }

  Settings build() {
    return new Settings(
        given.inches(),
        given.decimalComma(),
        clearance,
        handRoom,
        given.spacing(),
        given.clampRoom(),
        shortestTool,
        given.jawPlay(),
        leastOpening,
        maxOverhang);
  }
}
