package org.jawroom.reference.random;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.random.RandomShops.Feature;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;

/** Random mills with their guards. */
final class RandomMachines {
  private static final List<When> WHENS =
      List.of(When.ALWAYS, When.ALWAYS, When.CUTTING, When.LOADING);

  private final Dice dice;
  private final Set<Feature> features;
  private final MachineDraft mill;

  private RandomMachines(Dice dice, Set<Feature> features, MachineDraft mill) {
    this.dice = dice;
    this.features = features;
    this.mill = mill;
  }

  static MachineDraft draft(Dice dice, Set<Feature> features) {
    RandomMachines random = new RandomMachines(dice, features, new MachineDraft());
    random.body();
    random.slots();
    random.guards();
    return random.mill;
  }

  /** Adds {@code count} boxes: every second one around the table, the others on it. */
  static void addBoxes(Dice dice, Set<Feature> features, MachineDraft mill, int count) {
    RandomMachines random = new RandomMachines(dice, features, mill);
    for (int i = 0; i < count; i++) {
      String name = "box " + (i + 1);
      mill.guards.add(i % 2 == 1 ? random.onTable(name) : random.around(name, i / 2));
    }
  }

  private boolean has(Feature feature) {
    return features.contains(feature);
  }

  private void body() {
    if (has(Feature.OTHER_MOVES)) {
      mill.tableMoves =
          dice.among(
              List.of(
                  Axes.NONE,
                  new Axes(true, true, true),
                  new Axes(true, false, false),
                  new Axes(false, true, false),
                  new Axes(false, false, true)));
    }
    if (has(Feature.FIXED_TABLE)) {
      mill.tableMoves = Axes.NONE;
    }
    mill.tableLength = dice.mm(350, 800);
    mill.tableWidth = dice.mm(180, 350);
    mill.travelX = 2 * dice.mm(80, 250);
    mill.travelY = 2 * dice.mm(60, 180);
    if (dice.chance(30)) {
      mill.spindleX = dice.mm(-60, 60);
      mill.spindleY = dice.mm(-60, 60);
    }
    if (has(Feature.LOAD_GIVEN)) {
      long x = dice.mm(-250, 250);
      long y = dice.mm(-180, 180);
      mill.loadX = OptionalLong.of(mill.spindleX + clamp(x, mill.travelX / 2));
      if (dice.chance(70)) {
        mill.loadY = OptionalLong.of(mill.spindleY + clamp(y, mill.travelY / 2));
      }
    }
    if (dice.chance(30)) {
      mill.ledges = new Sides<>(dice.mm(0, 60), dice.mm(0, 60), dice.mm(0, 60), dice.mm(0, 60));
    }
    mill.frontGap = gap();
    mill.rearGap = gap();
    mill.leftGap = gap();
    mill.rightGap = gap();
    mill.noseMin = dice.dimension(50, 200);
    mill.noseMax = Dimension.of(mill.noseMin.length() + dice.mm(0, 300));
    mill.maxLoad = dice.chance(70) ? Optional.of(BigDecimal.valueOf(200)) : Optional.empty();
    if (dice.chance(15)) {
      mill.turns = someTurns(dice);
    }
    if (has(Feature.TOLERANCES)) {
      mill.tolerance = tolerance();
    }
  }

  /** At least one turn: a table cannot express none. */
  static Set<Orientation> someTurns(Dice dice) {
    Set<Orientation> turns = EnumSet.noneOf(Orientation.class);
    for (Orientation turn : Orientation.values()) {
      if (dice.chance(60)) {
        turns.add(turn);
      }
    }
    if (turns.isEmpty()) {
      turns.add(dice.among(List.of(Orientation.values())));
    }
    return turns;
  }

  private static long clamp(long value, long most) {
    return Math.max(-most, Math.min(most, value));
  }

  private long tolerance() {
    return dice.among(List.of(0L, Length.MM / 2, Length.MM, 3 * Length.MM / 2, 5 * Length.MM));
  }

  private Dimension gap() {
    return dice.chance(25) ? Dimension.NONE : dice.dimension(-20, 110);
  }

  private void slots() {
    if (has(Feature.SLOTS_ALONG_Y)) {
      mill.slotDirection = Axis.Y;
    }
    long across = has(Feature.SLOTS_ALONG_Y) ? mill.tableLength : mill.tableWidth;
    mill.slotCount = dice.among(List.of(1, 2, 3, 3, 3, 4, 5));
    mill.slotWidth =
        Dimension.of(dice.among(List.of(10L, 12L, 14L, 14L, 16L, 18L, 22L)) * Length.MM);
    if (has(Feature.INCH)) {
      mill.slotWidth = Dimension.of(Length.INCH * 5 / 8);
    }
    if (dice.chance(2)) {
      mill.slotWidth = Dimension.of(4 * Length.MM);
    }
    mill.slotPitch = dice.dimension(40, 100);
    if (dice.chance(has(Feature.KEYED) ? 40 : 15)) {
      mill.slotFirst = OptionalLong.of(dice.mm(20, 80));
    } else if (dice.chance(has(Feature.KEYED) ? 40 : 10)) {
      List<Long> positions = new ArrayList<>();
      long at = dice.mm(10, 60);
      for (int i = 0; i < mill.slotCount && at < across; i++) {
        positions.add(at);
        at += dice.mm(40, 100);
      }
      mill.slotPositions = positions;
      mill.slotCount = positions.size();
      mill.slotPitch = Dimension.BLANK;
    }
    if (dice.chance(3)) {
      mill.slotCount = 0;
      mill.slotPositions = List.of();
    }
    mill.slotLength = dice.perhaps(20, 150, 400);
  }

  private void guards() {
    int count = dice.chance(30) ? 1 : 0;
    if (has(Feature.FEW_GUARDS)) {
      count = 1 + dice.pick(4);
    }
    if (has(Feature.CLUTTER)) {
      count = 6 + dice.pick(11);
    }
    if (has(Feature.SIXTEEN_BOXES)) {
      addBoxes(dice, features, mill, 16);
    }
    for (int i = 0; i < count; i++) {
      String name = "guard " + (i + 1);
      mill.guards.add(!has(Feature.CLUTTER) && dice.chance(25) ? taped(name) : box(name));
    }
  }

  private Axes carriedBy() {
    return switch (dice.pick(6)) {
      case 0, 1 -> mill.tableMoves;
      case 2 -> Axes.NONE;
      case 3 -> new Axes(false, true, false);
      case 4 -> mill.tableMoves.z() ? Axes.NONE : new Axes(false, false, true);
      default -> new Axes(dice.chance(50), dice.chance(50), dice.chance(30));
    };
  }

  private Guard guard(String name, Axes carried, Optional<Side> side, Dimension gap, Box limits) {
    return new Guard(
        name,
        "other",
        carried,
        dice.among(WHENS),
        side,
        gap,
        limits,
        has(Feature.TOUCHING)
            ? OptionalLong.empty()
            : dice.perhaps(has(Feature.OWN_CLEARANCES) ? 80 : 25, 0, 15),
        has(Feature.TOLERANCES) && dice.chance(40)
            ? OptionalLong.of(tolerance())
            : OptionalLong.empty());
  }

  private Guard taped(String name) {
    Side side = dice.among(List.of(Side.values()));
    boolean alongX = side == Side.FRONT || side == Side.REAR;
    Interval edge = dice.chance(40) ? span(-250, 250, 40, 200) : Interval.ALL;
    Box limits =
        new Box(
            alongX ? edge : Interval.ALL,
            alongX ? Interval.ALL : edge,
            dice.chance(60) ? heights() : Interval.ALL);
    return guard(name, carriedBy(), Optional.of(side), dice.dimension(-30, 70), limits);
  }

  /** A box, mostly beside the table, sometimes over or on it. */
  private Guard box(String name) {
    Axes carried = has(Feature.CLUTTER) && dice.chance(70) ? mill.tableMoves : carriedBy();
    long halfX = dice.inMm(mill.tableLength / 2);
    long halfY = dice.inMm(mill.tableWidth / 2);
    Interval x = span(-halfX - 100, halfX + 100, 10, 160);
    Interval y = span(-halfY - 100, halfY + 100, 10, 160);
    if (dice.chance(60)) {
      int sign = dice.chance(50) ? 1 : -1;
      if (dice.chance(50)) {
        long near = sign * (halfX + 10);
        x = sign > 0 ? span(near, near + 100, 10, 100) : span(near - 150, near - 50, 10, 50);
      } else {
        long near = sign * (halfY + 10);
        y = sign > 0 ? span(near, near + 100, 10, 100) : span(near - 150, near - 50, 10, 50);
      }
    }
    Interval z = dice.chance(75) ? heights() : Interval.ALL;
    Box limits = new Box(opened(x, 20), opened(y, 20), z);
    return guard(name, carried, Optional.empty(), Dimension.NONE, limits);
  }

  /** A stop, a chuck, a tool setter: a small box that stands on the table and moves with it. */
  private Guard onTable(String name) {
    long halfX = dice.inMm(mill.tableLength / 2);
    long halfY = dice.inMm(mill.tableWidth / 2);
    Box limits =
        new Box(
            span(-halfX, halfX, 5, 40),
            span(-halfY, halfY, 5, 40),
            new Interval(0, dice.mm(10, 120)));
    return guard(name, mill.tableMoves, Optional.empty(), Dimension.NONE, limits);
  }

  /** A box beside the table, seldom farther along one side than half its length. */
  private Guard around(String name, int number) {
    Side side = Side.values()[number % 4];
    Axes carried = dice.chance(40) ? mill.tableMoves : Axes.NONE;
    boolean ahead = side == Side.FRONT || side == Side.REAR;
    long halfX = dice.inMm(mill.tableLength / 2);
    long halfY = dice.inMm(mill.tableWidth / 2);
    long edge = (ahead ? mill.tableWidth : mill.tableLength) / 2;
    if (carried.has(ahead ? Axis.Y : Axis.X) != mill.tableMoves.has(ahead ? Axis.Y : Axis.X)) {
      edge += (ahead ? mill.travelY : mill.travelX) / 2;
    }
    long near = edge / Length.NANOMETRE * Length.NANOMETRE + dice.mm(-40, 80);
    Interval off = new Interval(near, near + dice.mm(10, 60));
    if (side == Side.FRONT || side == Side.LEFT) {
      off = new Interval(-off.hi(), -off.lo());
    }
    Interval beside = ahead ? span(-halfX, halfX, 20, 200) : span(-halfY, halfY, 20, 100);
    Box limits =
        new Box(
            ahead ? beside : off, ahead ? off : beside, dice.chance(50) ? heights() : Interval.ALL);
    return guard(name, carried, Optional.empty(), Dimension.NONE, limits);
  }

  private Interval heights() {
    Interval z = dice.chance(60) ? span(60, 200, 10, 200) : span(-80, 100, 10, 80);
    if (dice.chance(8)) {
      // Below the table even at the highest nose, if measured from the nose.
      z = span(-900, -500, 10, 200);
    }
    return opened(z, 40);
  }

  private Interval span(long low, long high, long least, long most) {
    long from = dice.mm(low, high);
    return new Interval(from, from + dice.mm(least, most));
  }

  /** The interval, occasionally unbounded in one direction. */
  private Interval opened(Interval interval, int percent) {
    if (!dice.chance(percent)) {
      return interval;
    }
    return dice.chance(50)
        ? new Interval(interval.lo(), Length.ENDLESS)
        : new Interval(-Length.ENDLESS, interval.hi());
  }
}
