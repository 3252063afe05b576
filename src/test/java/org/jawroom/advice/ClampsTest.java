package org.jawroom.advice;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.reference.MachineDraft;
import org.jawroom.reference.ViseDraft;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;
import org.junit.jupiter.api.Test;

/**
 * Base 120 wide and 200 long, clamps 60 to either side: 240 × 200 must lie over the table top, by
 * hand.
 */
class ClampsTest {

  @Test
  void clamps_tableBelowAtAndAboveTheirWidth() {
    assertEquals(List.of(), remedies(239, 200, true));
    assertEquals(List.of("clamps"), remedies(240, 200, true));
    assertEquals(List.of("clamps"), remedies(241, 200, true));
    assertEquals(List.of(), remedies(240, 199, true));
  }

  @Test
  void clamps_withoutAStrapFlange_areNoRemedy() {
    assertEquals(List.of(), remedies(400, 400, false));
  }

  @Test
  void clamps_turnThatMachineOrViseForbids_areNoRemedy() {
    MachineDraft machine = mill(400, 400);
    machine.turns = EnumSet.of(Orientation.RIGHT, Orientation.REAR);
    assertEquals(List.of(), remedies(machine, vise(true)));
    machine.turns = EnumSet.of(Orientation.FRONT);
    assertEquals(List.of("clamps"), remedies(machine, vise(true)));
  }

  @Test
  void clamped_hasNoBoltedPlaces() {
    Model model =
        Model.of(Settings.DEFAULTS, mill(400, 400).build(), vise(true), Setup.PLAIN).clamped();
    assertTrue(model.hasPlaces());
    assertEquals(List.of(), model.bolted());
  }

  private static List<String> remedies(long tableLength, long tableWidth, boolean flange) {
    return remedies(mill(tableLength, tableWidth), vise(flange));
  }

  private static MachineDraft mill(long tableLength, long tableWidth) {
    MachineDraft machine = new MachineDraft();
    machine.tableLength = tableLength * MM;
    machine.tableWidth = tableWidth * MM;
    machine.slotCount = 1;
    machine.slotWidth = Dimension.of(14 * MM);
    return machine;
  }

  private static List<String> remedies(MachineDraft machine, Vise vise) {
    Machine mill = machine.build();
    return Advisor.advise(Settings.DEFAULTS, Pairing.solve(Settings.DEFAULTS, mill, vise))
        .remedies()
        .stream()
        .map(Remedy::name)
        .toList();
  }

  /** Its holes are too small for the slot's bolts in every turn. */
  private static Vise vise(boolean flange) {
    ViseDraft draft = new ViseDraft();
    draft.turns = EnumSet.of(Orientation.FRONT);
    draft.jawWidth = 100 * MM;
    draft.jawHeight = 40 * MM;
    draft.bedHeight = 60 * MM;
    draft.openingMax = 100 * MM;
    draft.baseWidth = Dimension.of(120 * MM);
    draft.rearReach = Dimension.of(50 * MM);
    draft.frontReach = Dimension.of(150 * MM);
    draft.fixedJaw = Dimension.of(20 * MM);
    draft.movingJaw = Dimension.of(30 * MM);
    draft.boltSpacing = Dimension.of(100 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(10 * MM);
    draft.holeV = Dimension.of(10 * MM);
    Vise v = draft.build();
    return v.toBuilder().strapFlange(flange).build();
  }
}
