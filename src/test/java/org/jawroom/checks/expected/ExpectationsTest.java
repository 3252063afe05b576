package org.jawroom.checks.expected;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.checks.exact.Rational;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.BoltParts;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Check;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** The sums of readings behind ends and faces against the boxes of the solver. */
class ExpectationsTest {
  private static final List<Profile> PROFILES =
      List.of(
          Profile.PLAIN,
          Profile.CLUTTERED,
          Profile.INCH,
          Profile.OTHER_MOVES,
          Profile.LOAD_GIVEN,
          Profile.BOTH_JAWS,
          Profile.SHAPE_PARTS,
          Profile.EXTRA_MOUNTS,
          Profile.SHORTEST_TOOL,
          Profile.ONE_OPENING,
          Profile.STRAPPED,
          Profile.HANDLED);

  private final Map<PartRole, Integer> met = new EnumMap<>(PartRole.class);
  private final Map<Axis, Integer> axes = new EnumMap<>(Axis.class);

  @Test
  void of_randomShops_isTheGapOfTheSolver() {
    for (Profile profile : PROFILES) {
      for (long seed = 0; seed < 40; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        check(shop, new Random(seed), profile + " seed " + seed + "\n" + ShopCsv.text(shop));
      }
    }
    for (PartRole role : PartRole.values()) {
      if (role != PartRole.WORK && role != PartRole.BODY) { // of a job; of a turned vise
        assertTrue(met.getOrDefault(role, 0) > 50, role + " " + met);
      }
    }
    assertTrue(axes.values().stream().allMatch(count -> count > 1000), axes.toString());
  }

  private void check(Shop shop, Random random, String input) {
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    Settings settings = shop.settings();
    Interval range = vise.opening();
    Check.Opening opening =
        switch (random.nextInt(3)) {
          case 0 -> Check.Opening.CLOSED;
          case 1 -> Check.Opening.OPEN;
          default -> Check.Opening.of(range.lo() + random.nextLong(range.length() + 1));
        };
    Orientation turn = Orientation.ALL.get(random.nextInt(4));
    long fromLeft = random.nextLong(Length.MM * 1000);
    long fromFront = random.nextLong(Length.MM * 500);
    long half = vise.isTapedFromBase() ? vise.base().width().length() / 2 : 0;
    long x = fromLeft - machine.tableLength() / 2 + (turn.uAxis() == Axis.Y ? half : 0);
    long y = fromFront - machine.tableWidth() / 2 + (turn.uAxis() == Axis.X ? half : 0);
    long s = opening.on(vise);
    for (SweptGuard guard :
        MachineGuards.of(
                settings,
                machine,
                Setup.PLAIN,
                vise.base().bedHeight(),
                Certainty.AT_WORST,
                new Blanks())
            .swept()) {
      for (String part :
          parts(settings, machine, vise).stream().map(Part::name).distinct().toList()) {
        List<Part> alike =
            parts(settings, machine, vise).stream()
                .filter(one -> one.name().equals(part) && one.situation() == guard.situation())
                .toList();
        List<Box> boxes =
            alike.stream().map(one -> one.over(Interval.of(s, s), turn).at(x, y)).toList();
        for (Axis axis : Axis.values()) {
          OptionalLong gap =
              boxes.stream().mapToLong(box -> box.along(axis).gapTo(guard.box().along(axis))).min();
          Terms terms = new Terms();
          Check check =
              new Check(
                  machine,
                  vise,
                  turn,
                  fromLeft,
                  fromFront,
                  part,
                  guard.guard(),
                  opening,
                  guard.situation() == Situation.CUTTING,
                  Optional.of(axis),
                  0,
                  new Provenance(0, false, "", ""));
          Optional<Rational> expected =
              new Expectations(settings, terms).of(check).map(one -> terms.nominal(one.form()));
          String where = part + " " + guard.name() + " " + axis + "\n" + input;
          if (gap.isPresent() && Length.isBounded(gap.getAsLong())) {
            // The solver rounds a share of an opening toward less clearance.
            assertEquals(gap.getAsLong(), expected.orElseThrow().floor(), where);
            met.merge(alike.get(0).role(), 1, Integer::sum);
            axes.merge(axis, 1, Integer::sum);
          } else {
            assertTrue(expected.isEmpty(), where);
          }
        }
      }
    }
  }

  private static List<Part> parts(Settings settings, Machine machine, Vise vise) {
    List<Part> parts = new ArrayList<>(ViseParts.of(vise, new Blanks()));
    List<Long> threads = PreparedMachine.of(settings, machine, Setup.PLAIN).threads();
    for (Mount mount : vise.mounts()) {
      long narrowest =
          mount.bolts().stream()
              .mapToLong(bolt -> Math.min(bolt.holeU().length(), bolt.holeV().length()))
              .min()
              .orElseThrow();
      Optional<Long> thread = threads.stream().filter(one -> one <= narrowest).findFirst();
      if (thread.isPresent()) {
        parts.addAll(BoltParts.of(vise, mount, thread.get()));
        break;
      }
    }
    if (vise.hasClampMount()) {
      parts.addAll(ClampParts.of(vise, settings.clampRoom(), Certainty.AT_WORST));
    }
    return parts;
  }
}
