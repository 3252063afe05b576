package org.jawroom.report.card;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** A low and a tall vise side by side under one head. */
class SetNoseTest {

  /** Beds 30 and 60, jaws 20 above them, and 6 to clear: 56 over one, 86 over the other. */
  @Test
  void nose_onEachCardOfASet_clearsAllItsVises() {
    MachineDraft machine = new MachineDraft();
    machine.tableLength = 400 * MM;
    machine.tableWidth = 300 * MM;
    machine.slotCount = 1;
    machine.slotWidth = Dimension.of(14 * MM);
    machine.noseMin = Dimension.of(0);
    machine.noseMax = Dimension.of(500 * MM);
    Box above = new Box(Interval.ALL, Interval.ALL, Interval.of(0, Length.ENDLESS));
    machine.guards.add(Guards.box("head", "", new Axes(false, false, true), When.CUTTING, above));
    SetOutcome set =
        SetPairing.solve(
            Settings.DEFAULTS,
            machine.build(),
            new ViseSet(
                "set",
                List.of(
                    new ViseSet.Member(vise("low", 30 * MM), 1),
                    new ViseSet.Member(vise("tall", 60 * MM), 1)),
                List.of()));
    assertEquals(SetOutcome.Fits.YES, set.fits());
    assertEquals("low", set.stands().get(0).vise().name());
    assertEquals(nose("56"), limit(set, 0));
    assertEquals(nose("26"), limit(set, 1));
  }

  private static Item nose(String stickOut) {
    return new Item(
        "Nose:",
        "not below 86 mm above the table top, for all vises here; a tool that touches the vise's bed"
            + " sticks out "
            + stickOut
            + " at least.");
  }

  private static Item limit(SetOutcome set, int at) {
    CardSubject card = CardSubject.ofSet(Settings.DEFAULTS, set, at, List.of());
    return CardFacts.of(card, Explained.run(PeopleUnit.MM)).limits().stream()
        .filter(item -> item.label().equals("Nose:"))
        .findFirst()
        .orElseThrow();
  }

  private static Vise vise(String name, long bed) {
    ViseDraft draft = new ViseDraft();
    draft.name = name;
    draft.jawWidth = 40 * MM;
    draft.jawHeight = 20 * MM;
    draft.bedHeight = bed;
    draft.boltGrip = OptionalLong.of(10 * MM);
    draft.openingMax = 40 * MM;
    draft.baseWidth = Dimension.of(60 * MM);
    draft.rearReach = Dimension.of(30 * MM);
    draft.frontReach = Dimension.of(70 * MM);
    draft.fixedJaw = Dimension.of(10 * MM);
    draft.movingJaw = Dimension.of(10 * MM);
    draft.boltSpacing = Dimension.of(20 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(14 * MM);
    draft.holeV = Dimension.of(14 * MM);
    draft.turns = EnumSet.of(Orientation.FRONT);
    return draft.build();
  }
}
