package org.jawroom.placement.bolting;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.Standard;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Settings;
import org.junit.jupiter.api.Test;

class TappedTest {
  private final PreparedMachine two = machine(2);
  private final PreparedMachine three = machine(3);
  private final Tapped tapped = new Tapped();
  private int workedOut;

  @Test
  void on_theSameMachine_worksOutOnce() {
    Optional<Strips> places = places(1);
    assertSame(places, tapped.on(two, working(places)));
    assertSame(places, tapped.on(two, working(places(2))));
    assertEquals(1, workedOut);
  }

  @Test
  void on_noPlace_isRememberedToo() {
    assertEquals(Optional.empty(), tapped.on(two, working(Optional.empty())));
    assertEquals(Optional.empty(), tapped.on(two, working(places(1))));
    assertEquals(1, workedOut);
  }

  @Test
  void on_anotherMachine_worksOutAnew() {
    Optional<Strips> places = places(1);
    Optional<Strips> others = places(2);
    assertSame(places, tapped.on(two, working(places)));
    assertSame(others, tapped.on(three, working(others)));
    assertSame(places, tapped.on(two, working(places)));
    assertEquals(3, workedOut);
  }

  @Test
  void on_aFailure_remembersNothing() {
    assertThrows(
        ArithmeticException.class,
        () ->
            tapped.on(
                two,
                () -> {
                  throw new ArithmeticException("overflow");
                }));
    Optional<Strips> places = places(1);
    assertSame(places, tapped.on(two, working(places)));
  }

  /** Each thread asks for both machines in turn and must never get the other's places. */
  @Test
  void on_twoThreads_givesEachMachineItsOwn() throws Exception {
    Optional<Strips> places = places(1);
    Optional<Strips> others = places(2);
    Callable<Integer> asking =
        () -> {
          int wrong = 0;
          for (int i = 0; i < 200_000; i++) {
            wrong += tapped.on(two, () -> places) == places ? 0 : 1;
            wrong += tapped.on(three, () -> others) == others ? 0 : 1;
          }
          return wrong;
        };
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      int wrong = 0;
      for (Future<Integer> one : threads.invokeAll(List.of(asking, asking))) {
        wrong += one.get();
      }
      assertEquals(0, wrong);
    } finally {
      threads.shutdownNow();
    }
  }

  /**
   * Section 6 of the model, worked by hand: M12 bolts 180 apart in holes of 52 × 18 leave 20 across
   * the slots and 3 along them; slots at y = −100, 0 and 100 end at x = ± 300, half a nut stays
   * within. So it holds at |x| ≤ 288 + 3 − 90 and 20 either way of y = −30, 70 and 170, and can be
   * tapped that much less the room.
   */
  @Test
  void settable_askedOfTwoMachines_isWorkedOutForEach() {
    Region region =
        Model.of(two, PreparedVise.on(two, Standard.vise().build())).regions().stream()
            .filter(one -> one.turn() == Orientation.FRONT)
            .findFirst()
            .orElseThrow();
    List<Rectangle> withTwo = tappedBy(2);
    List<Rectangle> withThree = tappedBy(3);
    assertEquals(withTwo, rectangles(region.settable(two)));
    assertEquals(withThree, rectangles(region.settable(three)));
    assertEquals(withTwo, rectangles(region.settable(two)));
    assertEquals(withTwo, rectangles(region.settable(two)));
  }

  private static List<Rectangle> tappedBy(long room) {
    Interval x = Interval.of((-201 + room) * MM, (201 - room) * MM);
    List<Rectangle> all = new ArrayList<>();
    for (long y : List.of(-30L, 70L, 170L)) {
      all.add(new Rectangle(x, Interval.of((y - 20 + room) * MM, (y + 20 - room) * MM)));
    }
    return all;
  }

  private static List<Rectangle> rectangles(Optional<Strips> places) {
    return places.orElseThrow().rectangles();
  }

  private static PreparedMachine machine(long room) {
    Settings settings = Settings.builder().tapRoom(room * MM).build();
    return PreparedMachine.of(settings, Standard.mill().build(), Setup.PLAIN);
  }

  private static Optional<Strips> places(long end) {
    Interval side = Interval.of(0, end);
    return Optional.of(Strips.of(Axis.X, new Rectangle(side, side)));
  }

  private Supplier<Optional<Strips>> working(Optional<Strips> places) {
    return () -> {
      workedOut++;
      return places;
    };
  }
}
