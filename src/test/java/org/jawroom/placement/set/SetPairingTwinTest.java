package org.jawroom.placement.set;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Sets against trying every order, turn, slot and place on a comb of whole millimetres. Every size
 * is a whole millimetre, so that whether a row with a whole least exists shows on the comb.
 */
class SetPairingTwinTest {
  private static final int CASES = 250;

  @Test
  void solve_smallTables_asTryingEveryRowOnACombDoes() {
    int fits = 0;
    int refused = 0;
    int whole = 0;
    int turned = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Random random = new Random(seed);
      Machine machine = machine(random);
      ViseSet set = set(random);
      SetOutcome found = SetPairing.solve(Settings.DEFAULTS, machine, set);
      Comb comb = new Comb(machine, set);
      String paste = "seed " + seed + "\n" + machine + "\n" + set + "\n" + found;
      if (!comb.exists(0)) {
        assertEquals(SetOutcome.Fits.NO, found.fits(), paste);
        refused += alone(found) ? 0 : 1;
        continue;
      }
      assertEquals(SetOutcome.Fits.YES, found.fits(), paste);
      long least = found.least().getAsLong();
      long millimetres = Math.floorDiv(least, MM);
      assertTrue(comb.exists(millimetres), paste);
      assertTrue(!comb.exists(millimetres + 1), paste);
      assertEquals(least, leastOf(found), paste);
      List<Integer> kinds = kinds(found);
      if (least % MM == 0) {
        assertEquals(comb.first(millimetres).orElseThrow(), kinds, paste);
        whole++;
      }
      fits++;
      turned +=
          found.stands().stream().map(stand -> stand.place().handleTo()).distinct().count() > 1
              ? 1
              : 0;
    }
    assertTrue(
        fits > 60 && refused > 20 && whole > 20 && turned > 5,
        fits + " " + refused + " " + whole + " " + turned);
  }

  private static boolean alone(SetOutcome found) {
    return found.hindrances().get(0).kind() != SetOutcome.Hindrance.Kind.SIDE_BY_SIDE;
  }

  private static List<Integer> kinds(SetOutcome found) {
    List<Vise> vises = found.set().members().stream().map(ViseSet.Member::vise).toList();
    return found.stands().stream().map(stand -> vises.indexOf(stand.vise())).toList();
  }

  /** The least margin and gap less spacing, part by part, of every two vises. */
  private static long leastOf(SetOutcome found) {
    Axis along = found.machine().slots().direction();
    long least = Length.ENDLESS;
    List<SetOutcome.Stand> stands = found.stands();
    for (int i = 0; i < stands.size(); i++) {
      Recommendation place = stands.get(i).place();
      least = Math.min(least, place.margin().orElse(Length.ENDLESS));
      for (int j = i + 1; j < stands.size(); j++) {
        long gap = Length.ENDLESS;
        for (Part left : parts(stands.get(i))) {
          for (Part right : parts(stands.get(j))) {
            if (!(left.handle() && right.handle())) {
              gap =
                  Math.min(
                      gap,
                      swept(right, stands.get(j)).along(along).lo()
                          - swept(left, stands.get(i)).along(along).hi());
            }
          }
        }
        least = Math.min(least, gap - Settings.DEFAULTS.spacing());
        if (j == i + 1) {
          assertEquals(gap, stands.get(i).nextGap().getAsLong());
        }
      }
    }
    return least;
  }

  private static List<Part> parts(SetOutcome.Stand stand) {
    return stand.pairing().model().regions().stream()
        .filter(region -> region.turn() == stand.place().handleTo())
        .filter(region -> region.fastening().name().equals(stand.place().mount()))
        .findFirst()
        .orElseThrow()
        .parts();
  }

  private static Box swept(Part part, SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    return part.over(stand.vise().opening(), place.handleTo()).at(place.x(), place.y());
  }

  /** A footing on the comb. */
  private record Tried(int kind, Vise vise, Region region, long[] best) {}

  private static final class Comb {
    private final ViseSet set;
    private final Axis along;
    private final int half;
    private final List<Tried> tried = new ArrayList<>();

    Comb(Machine machine, ViseSet set) {
      this.set = set;
      this.along = machine.slots().direction();
      this.half = (int) (Math.max(machine.tableLength(), machine.tableWidth()) / 2 / MM) + 40;
      for (int kind = 0; kind < set.members().size(); kind++) {
        Vise vise = set.members().get(kind).vise();
        for (Region region : Model.of(Settings.DEFAULTS, machine, vise, Setup.PLAIN).regions()) {
          tried.add(new Tried(kind, vise, region, best(region, vise)));
        }
      }
    }

    /**
     * The best margin at each whole millimetre along the slots; less than 0 where it is not held.
     */
    private long[] best(Region region, Vise vise) {
      long[] best = new long[2 * half + 1];
      Arrays.fill(best, -1);
      MarginField field = region.field(vise.opening());
      for (Rectangle held : region.places().rectangles()) {
        Interval across = held.along(along.across());
        for (int i = 0; i < best.length; i++) {
          long at = (i - half) * MM;
          for (long q = across.lo(); held.along(along).contains(at) && q <= across.hi(); q += MM) {
            long x = along == Axis.X ? at : q;
            long y = along == Axis.X ? q : at;
            long margin =
                field.limits(x, y).stream().mapToLong(Limit::margin).min().orElse(Length.ENDLESS);
            best[i] = Math.max(best[i], margin);
          }
        }
      }
      return best;
    }

    boolean exists(long millimetres) {
      return first(millimetres).isPresent();
    }

    /** The first order of kinds, in the order of the rows, with that least. */
    Optional<List<Integer>> first(long millimetres) {
      int[] left = set.members().stream().mapToInt(ViseSet.Member::count).toArray();
      return orders(left, new ArrayList<>(), new ArrayList<>()).stream()
          .filter(order -> stands(order, 0, new ArrayList<>(), new ArrayList<>(), millimetres * MM))
          .findFirst();
    }

    private List<List<Integer>> orders(int[] left, List<Integer> so, List<List<Integer>> all) {
      boolean some = false;
      for (int kind = 0; kind < left.length; kind++) {
        if (left[kind] > 0) {
          some = true;
          left[kind]--;
          so.add(kind);
          orders(left, so, all);
          so.remove(so.size() - 1);
          left[kind]++;
        }
      }
      if (!some) {
        all.add(List.copyOf(so));
      }
      return all;
    }

    /** Tries every footing of the next vise at its first place right of all that stand. */
    private boolean stands(
        List<Integer> order, int at, List<Tried> standing, List<Integer> places, long least) {
      if (at == order.size()) {
        return true;
      }
      for (Tried next : tried) {
        if (next.kind() != order.get(at)) {
          continue;
        }
        for (int i = 0; i < next.best().length; i++) {
          if (next.best()[i] >= Math.max(0, least) && isApart(next, i, standing, places, least)) {
            standing.add(next);
            places.add(i);
            boolean rest = stands(order, at + 1, standing, places, least);
            standing.remove(at);
            places.remove(at);
            if (rest) {
              return true;
            }
            break;
          }
        }
      }
      return false;
    }

    private boolean isApart(
        Tried next, int place, List<Tried> standing, List<Integer> places, long least) {
      for (int i = 0; i < standing.size(); i++) {
        for (Part left : standing.get(i).region().parts()) {
          for (Part right : next.region().parts()) {
            long from =
                left.over(standing.get(i).vise().opening(), standing.get(i).region().turn())
                        .along(along)
                        .hi()
                    + places.get(i) * MM;
            long to =
                right.over(next.vise().opening(), next.region().turn()).along(along).lo()
                    + place * MM;
            if (!(left.handle() && right.handle())
                && to - from < Settings.DEFAULTS.spacing() + least) {
              return false;
            }
          }
        }
      }
      return true;
    }
  }

  private static ViseSet set(Random random) {
    List<ViseSet.Member> members = new ArrayList<>();
    int most = 3;
    for (int kind = 0; kind <= random.nextInt(3) && most > 0; kind++) {
      int count = 1 + random.nextInt(Math.min(2, most));
      members.add(new ViseSet.Member(vise("v" + kind, random), count));
      most -= count;
    }
    return new ViseSet("set", members, List.of());
  }

  private static Machine machine(Random random) {
    MachineDraft draft = new MachineDraft();
    boolean alongX = random.nextInt(4) > 0;
    long across = 140 * MM;
    long along = (160 + 2 * random.nextInt(130)) * MM;
    draft.tableLength = alongX ? along : across;
    draft.tableWidth = alongX ? across : along;
    draft.slotDirection = alongX ? Axis.X : Axis.Y;
    draft.travelX = 20 * MM;
    draft.travelY = 20 * MM;
    draft.slotCount = 1 + random.nextInt(2);
    draft.slotPitch = Dimension.of(50 * MM);
    draft.slotWidth = Dimension.of(14 * MM);
    draft.leftGap = Dimension.of((random.nextInt(80) - 40) * MM);
    draft.rightGap = Dimension.of((random.nextInt(80) - 40) * MM);
    draft.rearGap = Dimension.of((random.nextInt(80) - 20) * MM);
    for (int i = random.nextInt(3); i > 0; i--) {
      long x = (random.nextInt(200) - 100) * MM;
      long y = (random.nextInt(100) - 50) * MM;
      Box box =
          new Box(
              Interval.of(x, x + random.nextInt(30) * MM),
              Interval.of(y, y + random.nextInt(30) * MM),
              Interval.of(0, (30 + random.nextInt(60)) * MM));
      draft.guards.add(Guards.box("post " + i, "", new Axes(true, true, false), When.ALWAYS, box));
    }
    return draft.build();
  }

  private static Vise vise(String name, Random random) {
    ViseDraft draft = new ViseDraft();
    draft.name = name;
    draft.turns =
        random.nextBoolean()
            ? EnumSet.of(Orientation.FRONT, Orientation.RIGHT)
            : EnumSet.allOf(Orientation.class);
    draft.jawWidth = (20 + 2 * random.nextInt(15)) * MM;
    draft.jawHeight = 20 * MM;
    draft.bedHeight = 30 * MM;
    draft.openingMax = 40 * MM;
    draft.baseWidth = Dimension.of((30 + 2 * random.nextInt(30)) * MM);
    draft.rearReach = Dimension.of((20 + random.nextInt(20)) * MM);
    draft.frontReach = Dimension.of((50 + random.nextInt(30)) * MM);
    draft.fixedJaw = Dimension.of(10 * MM);
    draft.movingJaw = Dimension.of(10 * MM);
    draft.boltSpacing = Dimension.of(20 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(14 * MM);
    draft.holeV = Dimension.of((14 + 2 * random.nextInt(3)) * MM);
    draft.strapFlange = random.nextInt(3) == 0;
    if (random.nextBoolean()) {
      draft.handleRadius = Dimension.of((10 + random.nextInt(60)) * MM);
      draft.handleDepth = Dimension.of(random.nextInt(40) * MM);
      draft.screwHeight = Dimension.of(40 * MM);
      draft.screwDiameter = Dimension.of(10 * MM);
    }
    return draft.build();
  }
}
