package org.jawroom.reference.draft;

import java.util.OptionalLong;
import org.jawroom.shop.Settings;

/** A mutable draft of the settings that a verdict depends on. */
public final class SettingsDraft {
  private final Settings given;
  public long clearance;
  public long handRoom;
  public long tapRoom;
  public long leastOpening;
  public OptionalLong shortestTool;
  public OptionalLong maxOverhang;

  private SettingsDraft(Settings given) {
    this.given = given;
  }

  public static SettingsDraft of(Settings given) {
    SettingsDraft draft = new SettingsDraft(given);
    draft.clearance = given.clearance();
    draft.handRoom = given.handRoom();
    draft.tapRoom = given.tapRoom();
    draft.leastOpening = given.leastOpening();
    draft.shortestTool = given.shortestTool();
    draft.maxOverhang = given.maxOverhang();
    return draft;
  }

  public Settings build() {
    return given.toBuilder()
        .clearance(clearance)
        .handRoom(handRoom)
        .tapRoom(tapRoom)
        .shortestTool(shortestTool)
        .leastOpening(leastOpening)
        .maxOverhang(maxOverhang)
        .build();
  }
}
