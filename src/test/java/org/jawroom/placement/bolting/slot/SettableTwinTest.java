package org.jawroom.placement.bolting.slot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.junit.jupiter.api.Test;

/**
 * {@link Slotted#places} and {@link Slotted#settable} against their definitions, tried at every
 * position of tables a few dozen half-nanometres wide.
 */
class SettableTwinTest {
  private static final int FAR = 40;

  private int held;
  private int tapped;
  private int middles;
  private int severalSlots;

  @Test
  void settable_smallTables_isWhereTheDefinitionHolds() {
    for (int seed = 0; seed < 200; seed++) {
      check(seed);
    }
    assertTrue(held > 10_000, "held " + held);
    assertTrue(tapped > 2_000, "tapped " + tapped);
    assertTrue(middles > 100, "in the middle of little " + middles);
    assertTrue(severalSlots > 20, "several combinations of slots " + severalSlots);
  }

  private void check(int seed) {
    Random random = new Random(seed);
    Machine machine = machine(random);
    Anchors anchors = anchors(random);
    Orientation turn = Orientation.values()[random.nextInt(4)];
    long tap = 1 + random.nextInt(4);
    Rectangle within =
        random.nextInt(3) == 0
            ? new Rectangle(interval(random), interval(random))
            : Region.EVERYWHERE;
    Slotted slotted = Slotted.of(machine);
    Strips places = slotted.places(anchors, turn).orElse(null);
    Strips settable = slotted.settable(anchors, turn, tap, within).orElse(null);
    List<List<Integer>> combinations = combinations(slotted.centres().size(), anchors.all().size());
    String input =
        "seed " + seed + " " + anchors + " " + turn + " tap " + tap + " within " + within;
    for (long x = -FAR; x <= FAR; x++) {
      for (long y = -FAR; y <= FAR; y++) {
        long atX = x;
        long atY = y;
        List<List<Integer>> holding =
            combinations.stream()
                .filter(slots -> holds(machine, slotted, anchors, turn, slots, atX, atY))
                .toList();
        assertEquals(!holding.isEmpty(), isIn(places, x, y), input + " at " + x + " " + y);
        boolean expected =
            within.contains(x, y)
                && holding.stream()
                    .anyMatch(
                        slots ->
                            isSettable(
                                machine, slotted, anchors, turn, slots, within, tap, atX, atY));
        assertEquals(expected, isIn(settable, x, y), input + " settable at " + x + " " + y);
        held += holding.isEmpty() ? 0 : 1;
        tapped += expected ? 1 : 0;
        severalSlots += holding.size() > 1 ? 1 : 0;
      }
    }
  }

  /** Section 6 of the model, axis by axis, by walking. */
  private boolean isSettable(
      Machine machine,
      Slotted slotted,
      Anchors anchors,
      Orientation turn,
      List<Integer> slots,
      Rectangle within,
      long tap,
      long x,
      long y) {
    for (Axis axis : List.of(Axis.X, Axis.Y)) {
      long back = walk(machine, slotted, anchors, turn, slots, within, axis, -1, x, y);
      long ahead = walk(machine, slotted, anchors, turn, slots, within, axis, 1, x, y);
      boolean little = back + ahead < 2 * tap;
      if (little ? Math.abs(back - ahead) > 1 : back < tap || ahead < tap) {
        return false;
      }
      middles += little ? 1 : 0;
    }
    return true;
  }

  private static long walk(
      Machine machine,
      Slotted slotted,
      Anchors anchors,
      Orientation turn,
      List<Integer> slots,
      Rectangle within,
      Axis axis,
      int step,
      long x,
      long y) {
    long steps = 0;
    while (steps < 4 * FAR) {
      long nextX = axis == Axis.X ? x + step * (steps + 1) : x;
      long nextY = axis == Axis.Y ? y + step * (steps + 1) : y;
      if (!within.contains(nextX, nextY)
          || !holds(machine, slotted, anchors, turn, slots, nextX, nextY)) {
        return steps;
      }
      steps++;
    }
    return steps;
  }

  /** Every anchor over its slot: |y + by − y_j| ≤ hy and |x + bx| ≤ length/2 − d + hx. */
  private static boolean holds(
      Machine machine,
      Slotted slotted,
      Anchors anchors,
      Orientation turn,
      List<Integer> slots,
      long x,
      long y) {
    boolean alongX = machine.slots().direction() == Axis.X;
    long half = machine.slots().length().getAsLong() / 2 - anchors.nutRoom();
    for (int i = 0; i < slots.size(); i++) {
      Anchor anchor = anchors.all().get(i);
      long u = (anchor.u().lo() + anchor.u().hi()) / 2;
      long v = (anchor.v().lo() + anchor.v().hi()) / 2;
      long atX = x + turn.x(u, v);
      long atY = y + turn.y(u, v);
      boolean alongU = (turn.uAxis() == Axis.X) == alongX;
      long playAlong = (alongU ? anchor.u() : anchor.v()).hi() - (alongU ? u : v);
      long playAcross = (alongU ? anchor.v() : anchor.u()).hi() - (alongU ? v : u);
      long along = alongX ? atX : atY;
      long across = alongX ? atY : atX;
      if (Math.abs(along) > half + playAlong
          || Math.abs(across - slotted.centres().get(slots.get(i) - 1)) > playAcross) {
        return false;
      }
    }
    return true;
  }

  private static boolean isIn(Strips strips, long x, long y) {
    return strips != null
        && strips.rectangles().stream().anyMatch(rectangle -> rectangle.contains(x, y));
  }

  private static List<List<Integer>> combinations(int slots, int anchors) {
    List<List<Integer>> all = List.of(List.of());
    for (int i = 0; i < anchors; i++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> one : all) {
        for (int slot = 1; slot <= slots; slot++) {
          List<Integer> next = new ArrayList<>(one);
          next.add(slot);
          longer.add(next);
        }
      }
      all = longer;
    }
    return all;
  }

  private static Machine machine(Random random) {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 60;
    draft.tableWidth = 60;
    draft.slotDirection = random.nextBoolean() ? Axis.X : Axis.Y;
    draft.slotCount = 1 + random.nextInt(4);
    draft.slotWidth = Dimension.of(2);
    draft.slotPitch = Dimension.of(2L * (2 + random.nextInt(5)));
    draft.slotLength = OptionalLong.of(2L * (4 + random.nextInt(15)));
    return draft.build();
  }

  private static Anchors anchors(Random random) {
    List<Anchor> anchors =
        IntStream.range(0, 1 + random.nextInt(3))
            .mapToObj(i -> new Anchor(ends(random), ends(random)))
            .toList();
    return new Anchors(anchors, random.nextInt(4));
  }

  private static Ends ends(Random random) {
    int middle = random.nextInt(13) - 6;
    int play = random.nextInt(8);
    return new Ends(middle - play, middle + play);
  }

  private static Interval interval(Random random) {
    int lo = random.nextInt(30) - 20;
    return Interval.of(lo, lo + random.nextInt(30));
  }
}
