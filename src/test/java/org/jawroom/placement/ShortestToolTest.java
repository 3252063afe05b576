package org.jawroom.placement;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;
import org.junit.jupiter.api.Test;

/** The nose goes up to 300, the bed stands at 60: a tool of 240 just touches it. */
class ShortestToolTest {
  @Test
  void solve_toolBelowAtAndAboveWhatTheNoseLeaves() {
    assertEquals(false, isTooShort(240 * MM - Length.NANOMETRE));
    assertEquals(false, isTooShort(240 * MM));
    assertEquals(true, isTooShort(240 * MM + Length.NANOMETRE));
  }

  private static boolean isTooShort(long tool) {
    SettingsDraft settings = SettingsDraft.of(Settings.DEFAULTS);
    settings.shortestTool = OptionalLong.of(tool);
    MachineDraft machine = new MachineDraft();
    machine.tableLength = 600 * MM;
    machine.tableWidth = 300 * MM;
    // Without slots there is no mount, whatever else is blank.
    machine.slotCount = 0;
    machine.noseMin = Dimension.of(100 * MM);
    machine.noseMax = Dimension.of(300 * MM);
    ViseDraft vise = new ViseDraft();
    vise.bedHeight = 60 * MM;
    return Pairing.solve(settings.build(), machine.build(), vise.build()).shortestToolTooShort();
  }
}
