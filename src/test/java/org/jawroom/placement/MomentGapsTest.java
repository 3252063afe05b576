package org.jawroom.placement;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.MachineState;
import org.jawroom.clearance.gap.MomentGaps;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.GuardStance;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link MomentGaps} against the margins over the whole travel and opening range, pair by pair. */
class MomentGapsTest {
  /**
   * These fill everything beyond a face, so the largest overlap with them occurs at a single
   * moment.
   */
  private static final Set<String> FACES =
      Set.of("door", "rear cover", "left guard", "right guard");

  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"BLANKS", "BLANKS_OF_ALL_KINDS", "BLANKS_WITHOUT_TOOL"})
  void leastGap_overTravelAndOpening_isTheSolvers(Profile profile) {
    int equal = 0;
    for (long seed = 0; seed < 12; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine = RandomShops.machine(shop);
      Vise vise = RandomShops.vise(shop);
      Outcome outcome = Pairing.solve(shop.settings(), machine, vise);
      if (outcome.recommended().isPresent()) {
        // Only the numbers of a fits include hand room.
        Settings asked =
            outcome.verdict() == Verdict.FITS
                ? shop.settings()
                : shop.settings().toBuilder().handRoom(0).build();
        equal += compare(asked, outcome, profile + " " + seed);
      }
    }
    assertTrue(
        profile == Profile.ANYTHING || profile.name().contains("BLANKS") || equal > 5,
        () -> profile + ": too little compared");
  }

  private static int compare(Settings settings, Outcome outcome, String which) {
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    Recommendation place = outcome.recommended().orElseThrow();
    Model model = Model.of(settings, machine, vise, Setup.PLAIN);
    Region region =
        model.regions().stream()
            .filter(r -> r.turn() == place.handleTo())
            .filter(r -> r.fastening().equals(place.fastening()))
            .findFirst()
            .orElseThrow();
    // Only the numbers of a fits include hand room.
    long handRoom = outcome.verdict() == Verdict.FITS ? settings.handRoom() : 0;
    MomentGaps gaps =
        MomentGaps.of(
            settings.toBuilder().handRoom(handRoom).build(),
            machine,
            vise.base().bedHeight(),
            region.parts());
    Map<String, Long> least = new HashMap<>();
    for (MachineState moment : moments(settings, machine, vise, region, place)) {
      for (Limit limit : gaps.at(moment, place.handleTo(), place.x(), place.y())) {
        least.merge(key(limit), limit.margin(), Math::min);
      }
    }
    Map<String, Long> swept = new HashMap<>();
    Map<String, Long> sweptGap = new HashMap<>();
    for (Limit limit : Pairing.solved(settings, machine, vise).inspection().orElseThrow().pairs()) {
      swept.merge(key(limit), limit.margin(), Math::min);
      sweptGap.merge(key(limit), limit.gap(), Math::min);
    }
    assertEquals(swept.keySet(), least.keySet(), which);
    int equal = 0;
    for (String key : swept.keySet()) {
      String message = which + " " + key + " of " + vise.name() + " on " + machine.name();
      assertTrue(least.get(key) >= swept.get(key), message);
      if (sweptGap.get(key) >= 0 || FACES.contains(key.split(":")[0])) {
        assertEquals(swept.get(key), least.get(key), message);
        equal++;
      }
    }
    return equal;
  }

  /** Bolts share one name, so the least of them is compared. */
  private static String key(Limit limit) {
    return limit.guard().name() + ":" + limit.part().name() + ":" + limit.situation();
  }

  /**
   * The moments at which each pair is nearest. Along an axis the signed distance is the maximum of
   * two functions that are linear in spindle and opening, so its minimum lies at their ends or
   * where both are equal, with the centres aligned.
   */
  private static List<MachineState> moments(
      Settings settings, Machine machine, Vise vise, Region region, Recommendation place) {
    Interval openings = place.openings();
    List<MachineState> moments = new ArrayList<>();
    for (Pair pair : region.pairs()) {
      GuardStance stance =
          GuardStance.all(settings, machine, vise.base().bedHeight()).stream()
              .filter(s -> s.swept().equals(pair.guard()))
              .findFirst()
              .orElseThrow();
      boolean loading = pair.guard().situation() == Situation.LOADING;
      for (long x : spots(machine, stance, pair, place, Axis.X)) {
        for (long y : spots(machine, stance, pair, place, Axis.Y)) {
          long[] all = {
            openings.lo(), openings.hi(), alignedOpening(machine, stance, pair, place, x, y)
          };
          for (long opening : all) {
            moments.add(
                loading
                    ? MachineState.loading(machine, opening)
                    : MachineState.cutting(x, y, opening));
          }
        }
      }
    }
    return moments.stream().distinct().toList();
  }

  private static List<Long> spots(
      Machine machine, GuardStance stance, Pair pair, Recommendation place, Axis axis) {
    long middle = axis == Axis.X ? machine.spindleX() : machine.spindleY();
    long reach = axis == Axis.X ? machine.reachX() : machine.reachY();
    List<Long> spots = new ArrayList<>(List.of(middle - reach, middle + reach));
    for (long opening : new long[] {place.openings().lo(), place.openings().hi()}) {
      Interval part = part(pair, place, opening, axis);
      Interval guard = stance.middle().along(axis);
      long shift = (part.lo() + part.hi() - guard.lo() - guard.hi()) / 2;
      spots.add(middle + Math.max(-reach, Math.min(reach, shift)));
    }
    return spots;
  }

  private static long alignedOpening(
      Machine machine, GuardStance stance, Pair pair, Recommendation place, long x, long y) {
    Axis axis = place.handleTo().uAxis();
    long shift =
        axis == Axis.X
            ? (stance.swept().moves().x() ? x - machine.spindleX() : 0)
            : (stance.swept().moves().y() ? y - machine.spindleY() : 0);
    Interval closed = part(pair, place, place.openings().lo(), axis);
    Interval open = part(pair, place, place.openings().hi(), axis);
    Interval guard = stance.middle().along(axis).plus(shift);
    double from = closed.lo() + closed.hi();
    double to = open.lo() + open.hi();
    double share = from == to ? 0 : (guard.lo() + (double) guard.hi() - from) / (to - from);
    return place.openings().lo()
        + (long) (Math.max(0, Math.min(1, share)) * place.openings().length());
  }

  private static Interval part(Pair pair, Recommendation place, long opening, Axis axis) {
    return pair.part()
        .over(Interval.of(opening, opening), place.handleTo())
        .at(place.x(), place.y())
        .along(axis);
  }

  @Test
  void gaps_toTheDoor_growAsTheTableGoesBack() {
    // Taped where the table is farthest forward; with the spindle 40 short of that end the gap is
    // 40 larger.
    Shop shop = RandomShops.shop(Profile.PLAIN, 3);
    Machine any = RandomShops.machine(shop);
    Machine machine = any.withGap(Side.FRONT, Dimension.of(70 * MM));
    Vise vise = RandomShops.vise(shop);
    List<Part> parts =
        Model.of(shop.settings(), machine, vise, Setup.PLAIN).bolted().get(0).parts();
    MomentGaps gaps = MomentGaps.of(shop.settings(), machine, vise.base().bedHeight(), parts);
    long front = machine.spindleY() + machine.reachY();
    long opening = vise.opening().hi();
    long atTheEnd = doorToBase(gaps, MachineState.cutting(machine.spindleX(), front, opening));
    long before =
        doorToBase(gaps, MachineState.cutting(machine.spindleX(), front - 40 * MM, opening));

    assertEquals(machine.tableMoves().y() ? 40 * MM : 0, before - atTheEnd);
    assertEquals(machine.tableWidth() / 2 + 70 * MM - vise.base().frontReach().length(), atTheEnd);
  }

  private static long doorToBase(MomentGaps gaps, MachineState moment) {
    return gaps.at(moment, Orientation.FRONT, 0, 0).stream()
        .filter(limit -> limit.guard().name().equals("door") && limit.part().name().equals("base"))
        .findFirst()
        .orElseThrow()
        .gap();
  }

  @Test
  void gaps_spindleBeyondItsReach_areRefused() {
    Shop shop = RandomShops.shop(Profile.PLAIN, 3);
    Machine machine = RandomShops.machine(shop);
    MomentGaps gaps = MomentGaps.of(shop.settings(), machine, 0, List.of());
    long beyond = machine.spindleX() + machine.reachX() + 1;

    assertThrows(
        IllegalArgumentException.class,
        () ->
            gaps.at(MachineState.cutting(beyond, machine.spindleY(), 0), Orientation.FRONT, 0, 0));
  }
}
