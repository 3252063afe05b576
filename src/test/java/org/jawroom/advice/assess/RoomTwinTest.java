package org.jawroom.advice.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.Test;

/**
 * The longest vise for which a random machine has room fits according to both solvers; one 0.05 mm
 * longer does not.
 *
 * <p>The holes of its bolts are left blank, so that it may stand anywhere: the verdict is then
 * {@code unknown} if it fits and {@code no place} if not. Blanks are judged with every tolerance as
 * 0, so the machine's tolerance is added to the clearance instead, which is equivalent.
 */
class RoomTwinTest {
  private static final long MORE = Length.MM / 20;
  private static final List<Long> WIDTHS = List.of(150 * Length.MM, 1100 * Length.MM);

  private int limited;
  private int never;

  @Test
  void longest_randomMachines_goesAndNotLonger() {
    for (Profile profile : Profile.values()) {
      for (int seed = 0; seed < WIDTHS.size(); seed++) {
        Shop shop = withoutHandRoom(RandomShops.shop(profile, seed));
        Optional<ViseSize> size = ViseSize.of(RandomShops.vise(shop));
        if (size.isPresent()) {
          check(shop, size.get(), WIDTHS.get(seed), profile + " seed " + seed);
        }
      }
    }
    assertTrue(limited > 20, "only " + limited);
    assertTrue(never > 0, "only " + never);
  }

  /** Room is asked for the hand, too, which an unknown vise may do without: it may be awkward. */
  private static Shop withoutHandRoom(Shop shop) {
    Settings plain = shop.settings().toBuilder().handRoom(0).build();
    return new Shop(plain, shop.machines(), shop.vises(), shop.jobs());
  }

  private void check(Shop shop, ViseSize size, long width, String name) {
    Machine machine = withoutOwnTolerances(RandomShops.machine(shop));
    for (Room room :
        new RoomSearch(shop.settings(), machine, size).rooms(List.of(width), List.of())) {
      RoomLimit limit = room.longest().get(0);
      Orientation turn = room.turns().get(0);
      switch (limit.relation()) {
        case AT_MOST -> {
          limited++;
          long most = limit.most().getAsLong();
          assertEquals("unknown unknown", verdicts(shop, machine, size, turn, most, width), name);
          assertEquals(
              "no place no place", verdicts(shop, machine, size, turn, most + MORE, width), name);
        }
        case NEVER -> {
          never++;
          assertEquals("no place no place", verdicts(shop, machine, size, turn, 0, width), name);
        }
        default ->
            assertEquals(
                "unknown unknown",
                verdicts(shop, machine, size, turn, 10_000 * Length.MM, width),
                name);
      }
    }
  }

  /** The verdicts of the solver and of the reference. */
  private String verdicts(
      Shop shop, Machine machine, ViseSize size, Orientation turn, long length, long width) {
    long tolerance = machine.provenance().tolerance();
    Settings asking = withMore(shop.settings(), tolerance);
    Machine exact =
        machine
            .withProvenance(machine.provenance().withTolerance(0))
            .withGuardRows(
                machine.guardRows().stream()
                    .map(
                        guard ->
                            guard.clearance().isEmpty()
                                ? guard
                                : guard.withClearance(
                                    OptionalLong.of(guard.clearance().getAsLong() + tolerance)))
                    .toList());
    Vise block = block(size, turn, length, width, Math.max(asking.clearance(), asking.handRoom()));
    Verdict ours = Pairing.solve(asking, exact, block).verdict();
    Verdict theirs = ReferencePairing.solve(asking, exact, block).verdict();
    return ours.code() + " " + theirs.code();
  }

  /** A body and the room of its handle only. */
  private static Vise block(ViseSize size, Orientation turn, long length, long width, long hand) {
    ViseDraft block = new ViseDraft();
    block.bedHeight = size.bedHeight();
    block.baseWidth = Dimension.of(0);
    block.rearReach = Dimension.of(0);
    block.frontReach = Dimension.of(0);
    block.fixedJaw = Dimension.of(0);
    block.movingJaw = Dimension.of(0);
    block.boltSpacing = Dimension.of(0);
    block.boltU = Dimension.of(0);
    block.turns = Set.of(turn);
    Interval along = around(length);
    Interval across = around(width);
    Interval cutting = new Interval(0, size.topCutting());
    Interval loading = new Interval(hand, Math.max(hand, size.topLoading()));
    block.parts.add(part("body", When.ALWAYS, along, across, cutting));
    block.parts.add(part(VisePart.HANDLE, When.LOADING, along, across, loading));
    return block.build();
  }

  private static VisePart part(String name, When when, Interval u, Interval v, Interval w) {
    return new VisePart(name, when, u, u, v, w, OptionalLong.empty());
  }

  private static Machine withoutOwnTolerances(Machine machine) {
    return machine.withGuardRows(
        machine.guardRows().stream()
            .map(
                guard ->
                    new Guard(
                        guard.name(),
                        guard.kind(),
                        guard.carriedBy(),
                        guard.when(),
                        guard.side(),
                        guard.gap(),
                        guard.limits(),
                        guard.clearance(),
                        OptionalLong.empty()))
            .toList());
  }

  private static Settings withMore(Settings now, long more) {
    SettingsDraft draft = SettingsDraft.of(now);
    draft.clearance += more;
    draft.handRoom += more;
    return draft.build();
  }

  private static Interval around(long length) {
    return new Interval(-length / 2, length / 2);
  }
}
