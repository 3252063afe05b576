package org.jawroom.advice.tape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.ToTape;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;
import org.junit.jupiter.api.Test;

/**
 * Readings of random shops are opened, and what they decide is held against the second solver,
 * which gets known values alone.
 */
class DecidingReadingsTest {
  private static final long[] OFF = {0, 1, 2, 5, 9, 14, 20};
  private static final List<Side> SIDES = List.of(Side.REAR, Side.LEFT);
  private static final List<Column> OF_VISES =
      List.of(Column.REAR_REACH, Column.REAR_PROJECTION_CLOSED, Column.HANDLE_RADIUS);

  private final Map<Decides, Integer> seen = new EnumMap<>(Decides.class);
  private int silent;

  /** A pairing with ranges in place of some readings, and how to fill each in. */
  private static final class Opened {
    private final Settings settings;
    private final Map<String, Dimension> ranges = new LinkedHashMap<>();
    private Machine machine;
    private Vise vise;

    Opened(Shop shop, long seed) {
      settings = shop.settings();
      machine = RandomShops.machine(shop);
      vise = RandomShops.vise(shop);
      for (Side side : SIDES) {
        if (machine.gap(side).isKnown() && (seed + side.ordinal()) % 2 == 0) {
          long known = machine.gap(side).length();
          open(side.word() + "_gap", known - 12 * Length.MM, known + 8 * Length.MM);
        }
      }
      for (Column column : OF_VISES) {
        Dimension known = ViseReadings.of(vise, column);
        if (known.isKnown() && (seed / 2 + column.ordinal()) % 3 == 0) {
          open(
              column.column(),
              Math.max(0, known.length() - 9 * Length.MM),
              Math.max(0, known.length() - 9 * Length.MM) + 20 * Length.MM);
        }
      }
    }

    private void open(String reading, long lo, long hi) {
      Dimension range = Dimension.within(lo, hi);
      ranges.put(reading, range);
      put(reading, range);
    }

    private void put(String reading, Dimension value) {
      for (Side side : SIDES) {
        if (reading.equals(side.word() + "_gap")) {
          machine = machine.withGap(side, value);
        }
      }
      for (Column column : OF_VISES) {
        if (reading.equals(column.column())) {
          vise = ViseReadings.with(vise, column, value);
        }
      }
    }

    /** Whether it fits with one reading at a value and every other at its best end. */
    boolean fits(String reading, long value) {
      Machine openMachine = machine;
      Vise openVise = vise;
      ranges.forEach(
          (name, range) ->
              put(
                  name,
                  Dimension.of(
                      name.equals(reading)
                          ? value
                          : name.endsWith("_gap") ? range.hi() : range.lo())));
      boolean fits = ReferencePairing.solve(settings, machine, vise).verdict() == Verdict.FITS;
      machine = openMachine;
      vise = openVise;
      return fits;
    }
  }

  @Test
  void of_readingsWithinBounds_areThoseOfWhichSomeValuesFitAndSomeDoNot() {
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 16; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Opened opened = new Opened(shop, seed);
        Advice advice = Advisor.advise(shop.settings(), opened.machine, opened.vise);
        if (advice.outcome().verdict() == Verdict.UNKNOWN && isOnlyOf(advice, opened)) {
          check(advice, opened, profile + " seed " + seed + "\n" + ShopCsv.text(shop));
        }
      }
    }
    assertTrue(seen.getOrDefault(Decides.FROM, 0) > 10, "" + seen);
    assertTrue(seen.getOrDefault(Decides.UP_TO, 0) > 5, "" + seen);
    assertTrue(silent > 2, "" + silent);
  }

  private static boolean isOnlyOf(Advice advice, Opened opened) {
    return advice.outcome().missing().stream()
        .allMatch(column -> opened.ranges.containsKey(column.column()));
  }

  private void check(Advice advice, Opened opened, String input) {
    List<String> deciding = new ArrayList<>();
    boolean fitsAtBest = false;
    for (Column column : advice.outcome().missing()) {
      String reading = column.column();
      Dimension range = opened.ranges.get(reading);
      int fits = 0;
      for (long off : OFF) {
        fits += opened.fits(reading, range.lo() + off * Length.MM) ? 1 : 0;
      }
      fitsAtBest |= fits > 0;
      if (fits > 0 && fits < OFF.length) {
        deciding.add(reading);
      }
    }
    List<String> together =
        fitsAtBest ? advice.outcome().missing().stream().map(Column::column).toList() : List.of();
    assertEquals(
        deciding.isEmpty() ? together : deciding,
        advice.deciding().stream().map(one -> one.reading().reading()).toList(),
        input);
    silent += fitsAtBest ? 0 : 1;
    for (Deciding one : advice.deciding()) {
      seen.merge(one.how(), 1, Integer::sum);
      assertEquals(deciding.isEmpty(), one.how() == Decides.TOGETHER, input);
      if (one.matters()) {
        atTheLimit(one, opened, input);
      }
    }
  }

  /** Fits at the limit; not 0.05 mm on the other side, unless the range ends before. */
  private static void atTheLimit(Deciding one, Opened opened, String input) {
    String reading = one.reading().reading();
    long limit = one.limit().getAsLong();
    long less = one.how() == Decides.FROM ? limit - Length.MM / 20 : limit + Length.MM / 20;
    Dimension range = opened.ranges.get(reading);
    assertTrue(range.lo() <= limit && limit <= range.hi(), input);
    assertTrue(opened.fits(reading, limit), input);
    assertFalse(
        range.lo() <= less && less <= range.hi() && opened.fits(reading, less),
        reading + " " + input);
  }

  /** A vise whose bolts need the one pitch of the table. */
  @Test
  void of_slotPitchWithinBounds_decidesWithoutALimit() {
    int found = 0;
    for (long seed = 0; seed < 150; seed++) {
      Shop shop = RandomShops.shop(Profile.PLAIN, seed);
      Machine machine = RandomShops.machine(shop);
      Vise vise = RandomShops.vise(shop);
      Slots slots = machine.slots();
      if (slots.needsPitch() && slots.pitch().isKnown()) {
        Machine open =
            pitched(
                machine,
                Dimension.within(
                    slots.pitch().length() - 30 * Length.MM,
                    slots.pitch().length() + 30 * Length.MM));
        Advice advice = Advisor.advise(shop.settings(), open, vise);
        for (Deciding one : advice.deciding()) {
          assertEquals("slot_pitch", one.reading().reading());
          assertEquals(Decides.SOME, one.how());
          assertEquals(Optional.of(true), Optional.of(one.settles()));
          found += someFail(shop.settings(), machine, vise, one.bounds()) ? 1 : 0;
        }
      }
    }
    assertTrue(found > 5, "" + found);
  }

  private static Machine pitched(Machine machine, Dimension pitch) {
    Slots slots = machine.slots();
    return machine.toBuilder()
        .slots(
            new Slots(
                slots.direction(),
                slots.count(),
                slots.width(),
                pitch,
                slots.first(),
                slots.positions(),
                slots.length()))
        .build();
  }

  private static boolean someFail(Settings settings, Machine machine, Vise vise, Dimension range) {
    for (long at = range.lo(); at <= range.hi(); at += Length.MM / 2) {
      if (ReferencePairing.solve(settings, pitched(machine, Dimension.of(at)), vise).verdict()
          != Verdict.FITS) {
        return true;
      }
    }
    return false;
  }

  @Test
  void within_toleranceAndRange_isTheLesser() {
    Dimension range = Dimension.within(50 * Length.MM, 58 * Length.MM);
    assertEquals(OptionalLong.of(Length.MM), DecidingReadings.within(range, 0));
    assertEquals(OptionalLong.of(Length.MM / 2), DecidingReadings.within(range, Length.MM / 2));
    assertEquals(OptionalLong.of(Length.MM), DecidingReadings.within(range, 5 * Length.MM));
    assertEquals(
        OptionalLong.of(5 * Length.MM), DecidingReadings.within(Dimension.BLANK, 5 * Length.MM));
    assertEquals(OptionalLong.empty(), DecidingReadings.within(Dimension.BLANK, 0));
    assertEquals(
        OptionalLong.empty(),
        DecidingReadings.within(Dimension.within(50 * Length.MM, Length.ENDLESS), 0));
  }

  @Test
  void of_shop_putsFirstWhatSettlesMost() {
    for (long seed = 0; seed < 20; seed++) {
      List<Advice> advice = new ArrayList<>();
      Shop shop = RandomShops.shop(Profile.BLANKS, seed);
      for (Machine machine : shop.machines()) {
        for (Vise vise : shop.vises()) {
          advice.add(Advisor.advise(shop.settings(), machine, vise));
        }
      }
      List<ToTape> order = ToTape.of(shop, advice);
      for (int i = 1; i < order.size(); i++) {
        ToTape before = order.get(i - 1);
        assertTrue(before.settled().size() >= order.get(i).settled().size());
      }
      long named =
          order.stream()
              .flatMap(one -> one.decided().stream())
              .map(ToTape.Decided::outcome)
              .distinct()
              .count();
      long unknown =
          advice.stream().filter(one -> one.outcome().verdict() == Verdict.UNKNOWN).count();
      assertEquals(unknown, named + ToTape.hopeless(advice), ShopCsv.text(shop));
    }
  }
}
