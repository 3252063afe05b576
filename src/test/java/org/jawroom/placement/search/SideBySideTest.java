package org.jawroom.placement.search;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Counts against exhaustive search on small tables whose every number is a whole millimetre, so
 * that the most vises stand at whole millimetres too.
 */
class SideBySideTest {

  @Test
  void most_smallTables_isAsManyAsTryingEveryRowFinds() {
    int several = 0;
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      Machine machine = machine(random);
      Vise vise = vise(random);
      SideBySide found = most(machine, vise);
      int expected = tried(machine, vise);
      assertEquals(expected, found.count(), "seed " + seed + " " + found);
      several += expected > 1 ? 1 : 0;
      for (int i = 1; i < found.count(); i++) {
        long pitch = found.positions().get(i) - found.positions().get(i - 1);
        assertTrue(pitch >= vise.base().width().length() + 6 * MM, "seed " + seed + " " + found);
      }
      for (long x : found.positions()) {
        assertTrue(clearAnywhereAcross(machine, vise, x), "seed " + seed + " " + found);
      }
      assertEquals(found.positions(), found.places().stream().map(Place::x).toList());
      for (Place place : found.places()) {
        Window point = new Window(place.x(), place.x(), place.y(), place.y());
        assertTrue(clear(machine, vise, point), "seed " + seed + " " + found);
      }
    }
    assertTrue(several > 50, "only " + several);
  }

  /** Without obstacles the row extends from end to end of the slot, a single vise to its middle. */
  @Test
  void most_freeTable_isSpreadEvenlyAboutTheMiddle() {
    int alone = 0;
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      MachineDraft draft = draft();
      draft.leftGap = Dimension.of(500 * MM);
      draft.rightGap = Dimension.of(500 * MM);
      draft.tableLength = (60 + 2 * random.nextInt(300)) * MM;
      Vise vise = vise(random);
      List<Long> row = most(draft.build(), vise).positions();
      long end = draft.tableLength / 2;
      long pitch = row.size() == 1 ? 0 : row.get(1) - row.get(0);
      for (int i = 0; i < row.size(); i++) {
        assertEquals(pitch == 0 ? 0 : row.get(0) + i * pitch, row.get(i), "seed " + seed);
      }
      // The two bolts (M12 in holes of 14), 20 apart, leave 12 to the slot's ends; shares are
      // rounded.
      long left = row.size() == 1 ? 0 : end - 21 * MM - row.get(row.size() - 1);
      assertTrue(0 <= left && left < row.size(), "seed " + seed + " " + row);
      alone += row.size() == 1 ? 1 : 0;
    }
    assertTrue(alone > 0 && alone < 100, "alone " + alone);
  }

  /** Whatever the spindle reaches. */
  private static SideBySide most(Machine machine, Vise vise) {
    PreparedMachine prepared = PreparedMachine.of(Settings.DEFAULTS, machine, Setup.PLAIN);
    PreparedVise on = PreparedVise.on(prepared, vise);
    return new SideBySideSearch(prepared, on)
        .most(Model.of(prepared, on).regions(), Length.ENDLESS);
  }

  /** Dynamic programming over every millimetre: one more than the maximum a pitch before it. */
  private static int tried(Machine machine, Vise vise) {
    int half = (int) (machine.tableLength() / 2 / MM) + 60;
    int pitch = (int) (vise.base().width().length() / MM) + 6;
    int[] most = new int[2 * half + 1];
    for (int i = 0; i < most.length; i++) {
      int before = i == 0 ? 0 : most[i - 1];
      boolean clear = clearAnywhereAcross(machine, vise, (i - half) * MM);
      most[i] = clear ? Math.max(before, 1 + (i >= pitch ? most[i - pitch] : 0)) : before;
    }
    return most[most.length - 1];
  }

  /** One slot, one bolt line: asks the solver whether the vise is clear with its origin at x. */
  private static boolean clearAnywhereAcross(Machine machine, Vise vise, long x) {
    return clear(machine, vise, new Window(x, x, Window.EVERYWHERE.yLo(), Window.EVERYWHERE.yHi()));
  }

  private static boolean clear(Machine machine, Vise vise, Window window) {
    return Model.of(Settings.DEFAULTS, machine, vise, Setup.PLAIN).regions().stream()
        .anyMatch(region -> region.space(vise.opening()).isClear(0, window));
  }

  /** Of five, the middle three, two or four; of those that there are, all. */
  @Test
  void middle_ofFewer_leavesOutTheEnds() {
    List<Place> five = LongStream.range(0, 5).mapToObj(x -> new Place(x, 7)).toList();
    SideBySide row =
        new SideBySide(
            five.stream().map(Place::x).toList(), five, Optional.of(Orientation.FRONT), "m", 0);
    assertEquals(five.subList(1, 4), row.middle(3));
    assertEquals(five.subList(1, 3), row.middle(2));
    assertEquals(five.subList(0, 4), row.middle(4));
    assertEquals(five, row.middle(5));
    assertEquals(five, row.middle(9));
  }

  private static MachineDraft draft() {
    MachineDraft draft = new MachineDraft();
    draft.tableWidth = 200 * MM;
    draft.travelX = 20 * MM;
    draft.travelY = 20 * MM;
    draft.slotCount = 1;
    draft.slotWidth = Dimension.of(14 * MM);
    return draft;
  }

  private static Machine machine(Random random) {
    MachineDraft draft = draft();
    draft.tableLength = (300 + 2 * random.nextInt(150)) * MM;
    draft.leftGap = Dimension.of((random.nextInt(80) - 60) * MM);
    draft.rightGap = Dimension.of((random.nextInt(80) - 60) * MM);
    for (int i = random.nextInt(3); i > 0; i--) {
      long x = (random.nextInt(300) - 150) * MM;
      Interval across = Interval.of(-20 * MM, 20 * MM);
      Box box =
          new Box(Interval.of(x, x + random.nextInt(30) * MM), across, Interval.of(0, 90 * MM));
      draft.guards.add(Guards.box("post " + i, "", new Axes(true, true, false), When.ALWAYS, box));
    }
    return draft.build();
  }

  private static Vise vise(Random random) {
    ViseDraft draft = new ViseDraft();
    draft.turns = EnumSet.of(Orientation.FRONT);
    draft.jawWidth = 40 * MM;
    draft.jawHeight = 20 * MM;
    draft.bedHeight = 30 * MM;
    draft.openingMax = 50 * MM;
    draft.baseWidth = Dimension.of((60 + 2 * random.nextInt(40)) * MM);
    draft.rearReach = Dimension.of(30 * MM);
    draft.frontReach = Dimension.of(70 * MM);
    draft.fixedJaw = Dimension.of(10 * MM);
    draft.movingJaw = Dimension.of(10 * MM);
    draft.boltSpacing = Dimension.of(20 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(14 * MM);
    draft.holeV = Dimension.of(14 * MM);
    return draft.build();
  }
}
