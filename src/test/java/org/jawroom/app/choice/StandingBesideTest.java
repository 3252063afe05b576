package org.jawroom.app.choice;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** Vises with jaws 100 mm wide, the handle to the front. */
class StandingBesideTest {
  private final Machine mill = machine("mill");
  private final Machine other = machine("other");

  @Test
  void of_twoOfTheKindAndNoMore_isTheFartherOne() {
    Standing left = at(mill, 100, 2);
    Standing right = at(mill, 500, 2);
    assertEquals(List.of(right), StandingBeside.of(at(mill, 120, 2), List.of(left, right)));
    assertEquals(List.of(left), StandingBeside.of(at(mill, 320, 2), List.of(left, right)));
    assertEquals(List.of(left), StandingBeside.of(right, List.of(left, right)));
  }

  /** Work areas overlap below 100 mm. */
  @Test
  void of_oneOfTheKindAndASpareOne_isItUnlessTheyOverlap() {
    Standing stands = at(mill, 100, 2);
    assertEquals(List.of(), StandingBeside.of(stands, List.of(stands)));
    assertEquals(List.of(), StandingBeside.of(at(mill, 199, 2), List.of(stands)));
    assertEquals(List.of(stands), StandingBeside.of(at(mill, 200, 2), List.of(stands)));
  }

  @Test
  void of_theOnlyOne_isNothingWhereverItStands() {
    assertEquals(List.of(), StandingBeside.of(at(mill, 700, 1), List.of(at(mill, 100, 1))));
  }

  @Test
  void of_oneOfTheKindOnAnotherMachine_isThat() {
    Standing elsewhere = at(other, 100, 1);
    assertEquals(List.of(elsewhere), StandingBeside.of(at(mill, 100, 1), List.of(elsewhere)));
  }

  private static Standing at(Machine machine, long fromLeft, int quantity) {
    return new Standing(
        machine,
        vise(quantity),
        new TapedPlace(Orientation.FRONT, fromLeft * MM, 200 * MM),
        "base bolts",
        new Provenance(MM, false, "", ""));
  }

  private static Machine machine(String name) {
    MachineDraft draft = new MachineDraft();
    draft.name = name;
    return draft.build();
  }

  private static Vise vise(int quantity) {
    ViseDraft draft = new ViseDraft();
    draft.jawWidth = 100 * MM;
    draft.openingMax = 80 * MM;
    return draft.build().toBuilder().quantity(quantity).build();
  }
}
